package io.axiswright.engine.catalogue;

import io.axiswright.engine.condition.Condition;
import io.axiswright.engine.condition.ConditionCheck;
import io.axiswright.engine.design.ItemKind;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** What the demand rules and exclusions of a catalogue must not contradict its items and themselves in; circles {@link NeedOrder} finds. */
public final class DemandRuleCheck {

    private static final String AN_ITEM = "the id of an item of this catalogue";

    private final Catalogue catalogue;
    private final UnaryOperator<String> pointer;
    private final Map<String, Item> items = new HashMap<>();
    private final List<Fault> faults = new ArrayList<>();

    private DemandRuleCheck(Catalogue catalogue, UnaryOperator<String> pointer) {
        this.catalogue = catalogue;
        this.pointer = pointer;
        catalogue.items().forEach(item -> items.putIfAbsent(item.id(), item));
    }

    /**
     * All faults, in document order.
     *
     * @param catalogue the catalogue
     * @param pointer leads from a JSON Pointer in the catalogue to the one in the document it came in
     */
    public static List<Fault> faults(Catalogue catalogue, UnaryOperator<String> pointer) {
        boolean none = catalogue.demandRuleList().isEmpty()
                && catalogue.exclusionList().isEmpty();
        return none ? List.of() : new DemandRuleCheck(catalogue, pointer).run();
    }

    private List<Fault> run() {
        Set<String> told = new HashSet<>();
        List<DemandRule> rules = catalogue.demandRuleList();
        for (int k = 0; k < rules.size(); k++) {
            String place = "/demandRules/" + k;
            if (!told.add(rules.get(k).id())) {
                fault(
                        place + "/id",
                        FaultCode.DUPLICATE_ID,
                        "There is another rule \"" + rules.get(k).id() + "\".",
                        "an id no other rule of the catalogue has");
            }
            checkCounted(rules.get(k), place);
            checkConditions(rules.get(k), place);
        }
        List<Exclusion> exclusions = catalogue.exclusionList();
        for (int k = 0; k < exclusions.size(); k++) {
            checkExclusion(exclusions.get(k), "/exclusions/" + k);
        }
        return List.copyOf(faults);
    }

    private void checkCounted(DemandRule rule, String place) {
        @Nullable String item = rule.countedItem();
        @Nullable ItemKind kind = rule.countedKind();
        if (!rule.per().countsItems()) {
            unless(item == null, place + "/countedItem", rule.per() + " counts no items.", "nothing");
            unless(kind == null, place + "/countedKind", rule.per() + " counts no items.", "nothing");
            return;
        }
        if (item == null && kind == null) {
            fault(
                    place + "/countedItem",
                    FaultCode.MISSING,
                    "Nothing says which items are counted.",
                    "an item, or a kind of item in countedKind");
        }
        unless(
                item == null || kind == null,
                place + "/countedKind",
                "An item is counted already.",
                "one of countedItem and countedKind");
        known(item, place + "/countedItem");
        if (rule.per() == DemandBasis.LENGTH) {
            Item counted = item == null ? null : items.get(item);
            unless(
                    counted == null || isCable(Shelf.of(counted).kind()),
                    place + "/countedItem",
                    "\"" + item + "\" has no length.",
                    "a cable");
            unless(
                    kind == null || isCable(kind),
                    place + "/countedKind",
                    kind + " has no length.",
                    "BULK_CABLE or CABLE_ASSEMBLY");
        }
    }

    private static boolean isCable(ItemKind kind) {
        return kind == ItemKind.BULK_CABLE || kind == ItemKind.CABLE_ASSEMBLY;
    }

    private void checkConditions(DemandRule rule, String place) {
        var check = new ConditionCheck(rule.per().askers(), items::containsKey, pointer);
        @Nullable Condition when = rule.when();
        unless(
                when == null || rule.kind() != NeedKind.REQUIRED,
                place + "/when",
                "What is required is so without a condition.",
                "no condition, or another kind");
        if (when == null && rule.kind() == NeedKind.CONDITIONAL) {
            fault(place + "/when", FaultCode.MISSING, "A conditional rule has no condition.", "a condition");
        }
        if (when != null) {
            faults.addAll(check.faults(when, place + "/when"));
        }
        for (int a = 0; a < rule.alternates().size(); a++) {
            Alternate alternate = rule.alternates().get(a);
            known(alternate.item(), place + "/alternates/" + a + "/item");
            if (alternate.when() != null) {
                faults.addAll(check.faults(alternate.when(), place + "/alternates/" + a + "/when"));
            }
        }
    }

    private void checkExclusion(Exclusion exclusion, String place) {
        known(exclusion.item(), place + "/item");
        known(exclusion.other(), place + "/other");
        unless(
                !exclusion.item().equals(exclusion.other()),
                place + "/other",
                "An item cannot exclude itself.",
                "another item");
    }

    private void known(@Nullable String item, String place) {
        if (item != null && !items.containsKey(item)) {
            fault(place, FaultCode.DANGLING_REFERENCE, "No item has the id \"" + item + "\".", AN_ITEM);
        }
    }

    private void unless(boolean holds, String place, String detail, String accepted) {
        if (!holds) {
            fault(place, FaultCode.INCONSISTENT, detail, accepted);
        }
    }

    private void fault(String place, FaultCode code, String detail, String accepted) {
        faults.add(new Fault(pointer.apply(place), code, detail, accepted));
    }
}
