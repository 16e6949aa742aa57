package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Accessory;
import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.DemandCondition;
import io.axiswright.engine.catalogue.DemandRule;
import io.axiswright.engine.catalogue.Exclusion;
import io.axiswright.engine.catalogue.FootKit;
import io.axiswright.engine.catalogue.Need;
import io.axiswright.engine.catalogue.NeedKind;
import io.axiswright.engine.catalogue.SaleTerms;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Small invented catalogues for the tests of this package. */
final class Shop {

    private final String currency;
    private final List<CableAssembly> spurs = new ArrayList<>();
    private final List<BulkCable> cables = new ArrayList<>();
    private final List<FootKit> feet = new ArrayList<>();
    private final List<Accessory> accessories = new ArrayList<>();
    private final List<SaleTerms> terms = new ArrayList<>();
    private final List<DemandRule> rules = new ArrayList<>();
    private final List<Exclusion> exclusions = new ArrayList<>();

    Shop(String currency) {
        this.currency = currency;
    }

    Shop accessory(String id, @Nullable String price, Need... needs) {
        accessories.add(new Accessory(id, "accessory " + id, money(price), List.of(needs)));
        return this;
    }

    Shop foot(String id, @Nullable String price, Need... needs) {
        feet.add(new FootKit(id, "feet " + id, money(price), List.of(needs), "frame-80", new Length(0.08)));
        return this;
    }

    Shop cable(String id, @Nullable String price, Need... needs) {
        var size = new ConductorSize("2.5 mm2");
        cables.add(new BulkCable(
                id, "cable " + id, money(price), List.of(needs), size, 4, Insulation.PVC_70, new Length(0.012), false));
        return this;
    }

    /** Cable on reels of that length, with that allowance for each cut, m. */
    Shop reeled(String id, @Nullable String price, double reel, double allowance) {
        cables.add(new BulkCable(
                id,
                "cable " + id,
                money(price),
                List.of(),
                new ConductorSize("2.5 mm2"),
                4,
                Insulation.PVC_70,
                new Length(0.012),
                false,
                new Length(reel),
                new Length(allowance),
                null));
        return this;
    }

    Shop spur(String id) {
        spurs.add(new CableAssembly(
                id, "spur " + id, null, List.of(), CableUse.SPUR, new Length(5), null, null, new Length(0.01)));
        return this;
    }

    Shop rule(DemandRule rule) {
        rules.add(rule);
        return this;
    }

    Shop exclude(String item, String other) {
        exclusions.add(new Exclusion(item, other, "they collide"));
        return this;
    }

    Shop terms(SaleTerms sold) {
        terms.add(sold);
        return this;
    }

    Catalogue catalogue() {
        return new Catalogue(
                "invented",
                currency,
                null,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.copyOf(spurs),
                List.copyOf(cables),
                List.of(),
                List.of(),
                List.of(),
                List.copyOf(feet),
                List.of(),
                List.copyOf(accessories),
                null,
                null,
                null,
                null,
                null,
                terms.isEmpty() ? null : List.copyOf(terms),
                rules.isEmpty() ? null : List.copyOf(rules),
                exclusions.isEmpty() ? null : List.copyOf(exclusions));
    }

    private @Nullable Money money(@Nullable String price) {
        return price == null ? null : new Money(new BigDecimal(price), currency);
    }

    static Need need(String item, double quantity, NeedKind kind) {
        return new Need(item, quantity, kind, null, "goes with it");
    }

    static Need need(String item, double quantity, DemandCondition when) {
        return new Need(item, quantity, NeedKind.CONDITIONAL, when, "for " + when);
    }

    static Demand demand(String asker, String item, String quantity, NeedKind kind, DemandCondition... conditions) {
        return new Demand(
                item,
                new BigDecimal(quantity),
                kind,
                asker,
                "asked by " + asker,
                "/design/" + asker,
                List.of(conditions));
    }
}
