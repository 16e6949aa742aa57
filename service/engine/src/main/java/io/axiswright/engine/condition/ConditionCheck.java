package io.axiswright.engine.condition;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What a condition must not get wrong: whether who asks has the attribute, its kind of quantity, its words, and items that are
 * not there.
 */
public final class ConditionCheck {

    private final Set<Reach> askers;
    private final Predicate<String> isItem;
    private final UnaryOperator<String> pointer;
    private final List<Fault> faults = new ArrayList<>();

    /**
     * A check of conditions alike.
     *
     * @param askers what may ask; an attribute that none of them has is a fault
     * @param isItem whether the catalogue has an item of that id
     * @param pointer leads from a JSON Pointer in the catalogue to the one in the document it came in
     */
    public ConditionCheck(Set<Reach> askers, Predicate<String> isItem, UnaryOperator<String> pointer) {
        this.askers = askers;
        this.isItem = isItem;
        this.pointer = pointer;
    }

    /** The faults of a condition at that place of the catalogue, in document order. */
    public List<Fault> faults(Condition condition, String place) {
        faults.clear();
        check(condition, place);
        return List.copyOf(faults);
    }

    private void check(Condition condition, String place) {
        switch (condition) {
            case QuantityTest test -> check(test, place);
            case WordTest test -> check(test, place);
            case FlagTest test -> checkReach(test.attribute().reach(), test.attribute(), place);
            case AllOf _, AnyOf _, NoneOf _ -> {
                var parts = condition.parts().toList();
                for (int k = 0; k < parts.size(); k++) {
                    check(parts.get(k), place + "/conditions/" + k);
                }
            }
        }
    }

    private void check(QuantityTest test, String place) {
        checkReach(test.attribute().reach(), test.attribute(), place);
        if (test.value().dimension() != test.attribute().dimension()) {
            fault(
                    place + "/value/unit",
                    FaultCode.WRONG_UNIT,
                    "The unit measures something else than " + test.attribute() + ".",
                    Units.of(test.attribute().dimension()).stream()
                            .map(unit -> unit.symbol())
                            .collect(Collectors.joining(", ")));
        }
    }

    private void check(WordTest test, String place) {
        WordAttribute attribute = test.attribute();
        checkReach(attribute.reach(), attribute, place);
        for (int k = 0; k < test.oneOf().size(); k++) {
            String word = test.oneOf().get(k);
            if (attribute.namesItem() && !isItem.test(word)) {
                fault(
                        place + "/oneOf/" + k,
                        FaultCode.DANGLING_REFERENCE,
                        "No item has the id \"" + word + "\".",
                        "the id of an item of this catalogue");
            } else if (!attribute.namesItem() && !attribute.words().contains(word)) {
                fault(
                        place + "/oneOf/" + k,
                        FaultCode.UNKNOWN_VALUE,
                        attribute + " is never \"" + word + "\".",
                        String.join(", ", attribute.words()));
            }
        }
    }

    private void checkReach(Reach reach, Enum<?> attribute, String place) {
        if (askers.stream().noneMatch(asker -> asker.knows(reach))) {
            fault(
                    place + "/attribute",
                    FaultCode.INCONSISTENT,
                    attribute + " is an attribute of " + reach + ", and none asks here.",
                    "an attribute of "
                            + askers.stream().map(Reach::name).sorted().collect(Collectors.joining(" or "))
                            + " or of the whole machine");
        }
    }

    private void fault(String place, FaultCode code, String detail, String accepted) {
        faults.add(new Fault(pointer.apply(place), code, detail, accepted));
    }
}
