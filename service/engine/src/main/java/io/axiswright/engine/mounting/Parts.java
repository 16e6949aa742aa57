package io.axiswright.engine.mounting;

import io.axiswright.engine.catalogue.FasteningPart;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.graph.NaturalOrder;
import io.axiswright.engine.quantity.Length;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Picks fastening parts. */
final class Parts {

    /** By price, those without one last, then by id. */
    static final Comparator<Item> CHEAPEST = Comparator.comparing(
                    Parts::amount, Comparator.<@Nullable BigDecimal>nullsLast(Comparator.naturalOrder()))
            .thenComparing(Item::id, NaturalOrder.OF_NAMES);

    /** Widths closer than this are the same, m: 8 mm and 5/16 in are not. */
    private static final double SAME_WIDTH = 1e-5;

    private Parts() {}

    /** The cheapest part for the fastening and its shaft; of keys one as wide as the keyway. */
    static Optional<FasteningPart> fastening(List<FasteningPart> parts, FasteningCheck check) {
        double shaft = check.axis().driveUnit().shaftDiameter().si();
        return parts.stream()
                .filter(part -> part.kind() == check.kind())
                .filter(part -> part.shaftAbove().si() < shaft
                        && shaft <= part.shaftUpTo().si())
                .filter(part -> fits(part.keyWidth(), check.key()))
                .min(CHEAPEST);
    }

    private static boolean fits(@Nullable Length width, Optional<ShaftKey> key) {
        return width == null
                || key.isPresent()
                        && Math.abs(width.si() - key.get().size().width().si()) < SAME_WIDTH;
    }

    private static @Nullable BigDecimal amount(Item item) {
        var price = item.price();
        return price == null ? null : price.amount();
    }
}
