package io.axiswright.engine.mounting;

import io.axiswright.engine.catalogue.FasteningKind;
import io.axiswright.engine.catalogue.FasteningPart;
import io.axiswright.engine.catalogue.Item;
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
            .thenComparing(Item::id);

    private Parts() {}

    /** The cheapest part of that kind for the shaft. */
    static Optional<FasteningPart> fastening(List<FasteningPart> parts, FasteningKind kind, Length shaft) {
        return parts.stream()
                .filter(part -> part.kind() == kind)
                .filter(part -> part.shaftAbove().si() < shaft.si()
                        && shaft.si() <= part.shaftUpTo().si())
                .min(CHEAPEST);
    }

    private static @Nullable BigDecimal amount(Item item) {
        var price = item.price();
        return price == null ? null : price.amount();
    }
}
