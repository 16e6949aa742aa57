package io.axiswright.engine.catalogue;

import io.axiswright.engine.condition.Condition;
import io.axiswright.engine.condition.Facts;
import io.axiswright.engine.design.ItemKind;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Something a bill demands by the catalogue's own rule, beside what the design asks for and what single items need. What a
 * rule brings may have needs, and rules that count it, in its turn.
 *
 * @param id the catalogue's name for it, unique among its rules
 * @param per what its quantity is asked for once for each
 * @param countedItem of ITEM and LENGTH: id of the item that is counted
 * @param countedKind of ITEM and LENGTH, where {@code countedItem} is absent: the kind whose items are all counted
 * @param when the condition it holds under; of ITEM and LENGTH it is held against whatever asked for what is counted. Absent if
 *     the kind is REQUIRED, present if it is CONDITIONAL; the other kinds may do without
 * @param kind how binding it is
 * @param quantity how much of the item is asked for, for each; sums are rounded up to whole pieces
 * @param alternates the items that serve
 * @param choice which of those that are admissible is taken; FIRST if absent
 * @param reason why, in words a buyer understands
 */
public record DemandRule(
        String id,
        DemandBasis per,
        @Nullable String countedItem,
        @Nullable ItemKind countedKind,
        @Nullable Condition when,
        NeedKind kind,
        @Bounds(above = 0, max = 10000) double quantity,
        @Count(min = 1, max = 64) List<Alternate> alternates,
        @Nullable AlternateChoice choice,
        String reason) {

    /** Keeps the alternates from being changed. */
    public DemandRule {
        alternates = List.copyOf(alternates);
    }

    /** Whether it holds for whom these facts are known of. */
    public boolean holds(Facts facts) {
        return when == null || when.holds(facts);
    }

    /** Whether that item is among what it counts. */
    public boolean counts(Item item) {
        return per.countsItems()
                && (countedItem == null
                        ? Shelf.of(item).kind() == countedKind
                        : item.id().equals(countedItem));
    }

    /**
     * The item it asks for; none if no alternate is admissible.
     *
     * @param facts what is known of who asks
     * @param items leads from ids to items
     */
    public Optional<Item> item(Facts facts, Function<String, Item> items) {
        var admissible = alternates.stream().filter(a -> a.admissible(facts)).map(a -> items.apply(a.item()));
        return choice == AlternateChoice.CHEAPEST ? admissible.min(Cheapest.FIRST) : admissible.findFirst();
    }
}
