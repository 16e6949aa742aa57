package io.axiswright.engine.catalogue;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.Currencies;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a catalogue must not contradict itself in: ids are unique, prices are in its currency, curves rise in speed,
 * switching points and ranges are the right way round, terms of sale and demand rules fit their items, and
 * needs and rules lead to items and never in a circle.
 */
public final class CatalogueCheck {

    private final Catalogue catalogue;
    private final String prefix;
    private final Map<String, Item> byPointer = new LinkedHashMap<>();
    private final Map<String, String> pointerById = new HashMap<>();
    private final Map<String, Integer> coupled = new HashMap<>();
    private final List<Fault> faults = new ArrayList<>();

    private CatalogueCheck(Catalogue catalogue, String prefix) {
        this.catalogue = catalogue;
        this.prefix = prefix;
    }

    /**
     * All faults, in document order, circles of needs last; none if the catalogue can be used.
     *
     * @param catalogue the catalogue
     * @param pointerPrefix JSON Pointer to it in the document it came in; empty if it is the whole document
     */
    public static List<Fault> faults(Catalogue catalogue, String pointerPrefix) {
        return new CatalogueCheck(catalogue, pointerPrefix).run();
    }

    private List<Fault> run() {
        checkCurrency();
        catalogue.places().forEach((place, item) -> {
            byPointer.put(prefix + place, item);
            pointerById.putIfAbsent(item.id(), prefix + place);
        });
        byPointer.forEach(this::check);
        faults.addAll(SaleTermsCheck.faults(catalogue, place -> prefix + place));
        faults.addAll(DemandRuleCheck.faults(catalogue, place -> prefix + place));
        faults.addAll(NeedOrder.of(catalogue, place -> prefix + place).circles());
        return List.copyOf(faults);
    }

    private void checkCurrency() {
        if (!Currencies.inUse(catalogue.currency())) {
            fault(
                    prefix + "/currency",
                    FaultCode.UNKNOWN_VALUE,
                    "\"" + catalogue.currency() + "\" is no currency in use.",
                    Currencies.ACCEPTED);
        }
    }

    private void check(String pointer, Item item) {
        if (!pointer.equals(pointerById.get(item.id()))) {
            fault(
                    pointer + "/id",
                    FaultCode.DUPLICATE_ID,
                    "\"" + item.id() + "\" is the id of " + pointerById.get(item.id()) + " already.",
                    "an id no other item of the catalogue has");
        }
        if (item.price() != null && !item.price().currency().equals(catalogue.currency())) {
            fault(
                    pointer + "/price/currency",
                    FaultCode.INCONSISTENT,
                    "The price is in " + item.price().currency() + ", the catalogue in " + catalogue.currency() + ".",
                    catalogue.currency());
        }
        for (int k = 0; k < item.needs().size(); k++) {
            check(pointer + "/needs/" + k, item.needs().get(k));
        }
        if (item instanceof CableAssembly cable) {
            checkEnds(pointer + "/ends", cable.endList());
            known(pointer + "/coupler", cable.coupler());
            countCoupled(pointer + "/coupler", cable.coupler());
        }
        faults.addAll(ItemCheck.faults(item, pointer));
    }

    private void checkEnds(String pointer, List<CableEnd> ends) {
        for (int k = 0; k < ends.size(); k++) {
            known(pointer + "/" + k + "/fieldParts", ends.get(k).fieldParts());
            known(pointer + "/" + k + "/fieldTool", ends.get(k).fieldTool());
        }
    }

    private void countCoupled(String pointer, @Nullable String coupler) {
        if (coupler != null && coupled.merge(coupler, 1, Integer::sum) == CoupledCables.MOST + 1) {
            fault(
                    pointer,
                    FaultCode.OUT_OF_RANGE,
                    "More than " + CoupledCables.MOST + " cables name this coupler.",
                    "at most " + CoupledCables.MOST + " cables to one coupler");
        }
    }

    private void known(String pointer, @Nullable String item) {
        if (item != null && !pointerById.containsKey(item)) {
            fault(
                    pointer,
                    FaultCode.DANGLING_REFERENCE,
                    "No item has the id \"" + item + "\".",
                    "the id of an item of this catalogue");
        }
    }

    private void check(String pointer, Need need) {
        known(pointer + "/item", need.item());
        if ((need.kind() == NeedKind.CONDITIONAL) != (need.when() != null)) {
            fault(
                    pointer + "/when",
                    need.when() == null ? FaultCode.MISSING : FaultCode.INCONSISTENT,
                    need.when() == null
                            ? "A conditional need has no condition."
                            : "Only conditional needs have a condition.",
                    "a condition if, and only if, the kind is CONDITIONAL");
        }
    }

    private void fault(String pointer, FaultCode code, String detail, String accepted) {
        faults.add(new Fault(pointer, code, detail, accepted));
    }
}
