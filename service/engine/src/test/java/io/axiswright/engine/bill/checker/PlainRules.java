package io.axiswright.engine.bill.checker;

import io.axiswright.engine.catalogue.Alternate;
import io.axiswright.engine.catalogue.AlternateChoice;
import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.DemandBasis;
import io.axiswright.engine.catalogue.DemandRule;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.condition.AllOf;
import io.axiswright.engine.condition.AnyOf;
import io.axiswright.engine.condition.Condition;
import io.axiswright.engine.condition.FlagTest;
import io.axiswright.engine.condition.NoneOf;
import io.axiswright.engine.condition.QuantityTest;
import io.axiswright.engine.condition.WordTest;
import io.axiswright.engine.design.ItemKind;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Demand rules read a second time, in their own words: facts are a table from the attribute's name to a number, a word or true. */
public final class PlainRules {

    private static final Pattern NUMBER = Pattern.compile("\\d+");

    private PlainRules() {}

    /** Whether a condition holds. */
    public static boolean holds(@Nullable Condition condition, Map<String, Object> facts) {
        return switch (condition) {
            case null -> true;
            case AllOf(List<Condition> parts) -> {
                boolean all = true;
                for (Condition part : parts) {
                    all &= holds(part, facts);
                }
                yield all;
            }
            case AnyOf(List<Condition> parts) -> {
                boolean any = false;
                for (Condition part : parts) {
                    any |= holds(part, facts);
                }
                yield any;
            }
            case NoneOf(List<Condition> parts) -> !holds(new AnyOf(parts), facts);
            case FlagTest(var attribute) -> facts.containsKey(attribute.name());
            case WordTest(var attribute, List<String> words) ->
                words.contains(String.valueOf(facts.get(attribute.name())));
            case QuantityTest(var attribute, var comparison, var value) ->
                facts.get(attribute.name()) instanceof Double known
                        && switch (comparison.name()) {
                            case "BELOW" -> known < value.si() - 1e-6;
                            case "AT_MOST" -> known < value.si() + 1e-6;
                            case "EQUAL" -> Math.abs(known - value.si()) < 1e-6;
                            case "AT_LEAST" -> known > value.si() - 1e-6;
                            default -> known > value.si() + 1e-6;
                        };
        };
    }

    /** The item a rule takes for whom these facts are known of; none if it does not hold or nothing is admissible. */
    public static @Nullable String item(DemandRule rule, Catalogue catalogue, Map<String, Object> facts) {
        if (!holds(rule.when(), facts)) {
            return null;
        }
        @Nullable String taken = null;
        for (Alternate alternate : rule.alternates()) {
            boolean better = taken == null
                    || rule.choice() == AlternateChoice.CHEAPEST && cheaper(alternate.item(), taken, catalogue);
            taken = holds(alternate.when(), facts) && better ? alternate.item() : taken;
        }
        return taken;
    }

    /** Of the same price, the one that comes first in the alphabet once its numbers are written as long as each other. */
    private static boolean cheaper(String one, String other, Catalogue catalogue) {
        int order = price(one, catalogue).compareTo(price(other, catalogue));
        return order < 0 || order == 0 && padded(one).compareTo(padded(other)) < 0;
    }

    private static String padded(String id) {
        return NUMBER.matcher(id)
                .replaceAll(number -> "0".repeat(9 - number.group().length()) + number.group());
    }

    private static BigDecimal price(String item, Catalogue catalogue) {
        var price = catalogue.find(item).orElseThrow().price();
        return price == null ? BigDecimal.valueOf(Long.MAX_VALUE) : price.amount();
    }

    /** How often a rule counts one unit of an item: once, by its metres, or not at all. */
    public static BigDecimal counted(DemandRule rule, Item item) {
        boolean counts = item.id().equals(rule.countedItem())
                || rule.countedKind() == ItemKind.BULK_CABLE && item instanceof BulkCable
                || rule.countedKind() == ItemKind.CABLE_ASSEMBLY && item instanceof CableAssembly
                || rule.countedKind() != null
                        && item.getClass()
                                .getSimpleName()
                                .equalsIgnoreCase(rule.countedKind().name().replace("_", ""));
        if (!counts) {
            return BigDecimal.ZERO;
        }
        return rule.per() == DemandBasis.LENGTH && item instanceof CableAssembly cable
                ? BigDecimal.valueOf(cable.length().si())
                : BigDecimal.ONE;
    }
}
