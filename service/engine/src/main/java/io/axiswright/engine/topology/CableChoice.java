package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.CoupledCables;
import io.axiswright.engine.catalogue.LaidCable;
import io.axiswright.engine.quantity.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The cable bought for a route: of the assemblies of the right use that reach, the cheapest; of those the shortest. Where none reaches, the
 * cheapest two that may be joined and do.
 */
final class CableChoice {

    /** Lengths that differ by less are the same: 1 nm. */
    private static final double SAME = 1e-9;

    private final List<LaidCable> inOrder = new ArrayList<>();
    private double longest;

    CableChoice(List<CableAssembly> assemblies, List<CoupledCables> coupled, CableUse use) {
        assemblies.stream()
                .filter(cable -> cable.use() == use)
                .sorted(Comparator.comparing(CableAssembly::amount)
                        .thenComparingDouble(cable -> cable.length().si()))
                .forEach(inOrder::add);
        this.longest =
                inOrder.stream().mapToDouble(cable -> cable.length().si()).max().orElse(0);
        for (CoupledCables pair : coupled) {
            // the cheaper come first, so a shorter one after them is of no use
            if (pair.use() == use && pair.length().si() > longest) {
                inOrder.add(pair);
                longest = pair.length().si();
            }
        }
    }

    /** The cable for a route; empty if none is long enough. */
    Optional<LaidCable> forRoute(Length route) {
        return inOrder.stream()
                .filter(cable -> cable.length().si() + SAME >= route.si())
                .findFirst();
    }

    /** Whether any is long enough for a route. */
    boolean reaches(Length route) {
        return longest + SAME >= route.si() && !inOrder.isEmpty();
    }

    /** Length of the longest cable of the use, joined ones counted; 0 if there is none. */
    Length longest() {
        return new Length(longest);
    }

    /** What a cable for a route longer than all would cost at the longest one's price by the metre; nothing if there is none. */
    BigDecimal priceBeyond(Length route) {
        return inOrder.stream()
                .filter(cable -> cable.length().si() == longest)
                .findFirst()
                .map(cable -> cable.amount().multiply(BigDecimal.valueOf(route.si() / longest)))
                .orElse(BigDecimal.ZERO);
    }
}
