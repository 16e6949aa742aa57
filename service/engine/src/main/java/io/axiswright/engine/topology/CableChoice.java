package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.quantity.Length;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The cable bought for a route: of the assemblies of the right use that reach, the cheapest; of those the shortest. */
final class CableChoice {

    /** Lengths that differ by less are the same: 1 nm. */
    private static final double SAME = 1e-9;

    private final List<CableAssembly> cheapestFirst;
    private final double longest;

    CableChoice(List<CableAssembly> assemblies, CableUse use) {
        this.cheapestFirst = assemblies.stream()
                .filter(cable -> cable.use() == use)
                .sorted(Comparator.comparing(CableChoice::price)
                        .thenComparingDouble(cable -> cable.length().si()))
                .toList();
        this.longest = cheapestFirst.stream()
                .mapToDouble(cable -> cable.length().si())
                .max()
                .orElse(0);
    }

    /** The cable for a route; empty if none is long enough. */
    Optional<CableAssembly> forRoute(Length route) {
        return cheapestFirst.stream()
                .filter(cable -> cable.length().si() + SAME >= route.si())
                .findFirst();
    }

    /** Whether any is long enough for a route. */
    boolean reaches(Length route) {
        return longest + SAME >= route.si() && !cheapestFirst.isEmpty();
    }

    /** Length of the longest cable of the use; 0 if there is none. */
    Length longest() {
        return new Length(longest);
    }

    /** What a cable for a route longer than all would cost at the longest one's price by the metre; nothing if there is none. */
    BigDecimal priceBeyond(Length route) {
        return cheapestFirst.stream()
                .filter(cable -> cable.length().si() == longest)
                .findFirst()
                .map(cable -> price(cable).multiply(BigDecimal.valueOf(route.si() / longest)))
                .orElse(BigDecimal.ZERO);
    }

    private static BigDecimal price(CableAssembly cable) {
        return cable.price() == null ? BigDecimal.ZERO : cable.price().amount();
    }
}
