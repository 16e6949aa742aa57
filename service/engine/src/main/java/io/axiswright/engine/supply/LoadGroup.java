package io.axiswright.engine.supply;

import io.axiswright.engine.graph.NaturalOrder;
import io.axiswright.engine.quantity.Current;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Loads that share a branch circuit, the largest first.
 *
 * @param connection how they are connected
 * @param use what they do
 * @param zone their zone; absent if they have none
 * @param loads the loads
 */
record LoadGroup(
        Connection connection, LoadUse use, @Nullable String zone, List<SupplyLoad> loads) {

    /** By connection, zone (none last) and use. */
    static final Comparator<LoadGroup> ORDER = Comparator.comparing(LoadGroup::connection)
            .thenComparing(LoadGroup::zone, Comparator.nullsLast(NaturalOrder.OF_NAMES))
            .thenComparing(LoadGroup::use);

    /** JSON Pointer, in the request, to what its first load belongs to: there are no circuits in it. */
    String pointer() {
        return loads.getFirst().pointer();
    }

    /** The highest protective device all its loads allow, in A; infinite where none states one. */
    double deviceLimit() {
        return loads.stream().mapToDouble(SupplyLoad::deviceLimit).min().orElse(Double.POSITIVE_INFINITY);
    }

    /** That limit where there is one. */
    @Nullable
    Current statedLimit() {
        return Double.isFinite(deviceLimit()) ? new Current(deviceLimit()) : null;
    }

    /** The DC buses their rectifiers feed together with others. */
    Set<String> buses() {
        return loads.stream()
                .map(SupplyLoad::busGroup)
                .filter(Objects::nonNull)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The most loads they allow on one circuit. */
    int unitLimit() {
        return loads.stream().mapToInt(SupplyLoad::maxUnitsPerCircuit).min().orElse(Integer.MAX_VALUE);
    }

    /** Sum of their protective-conductor currents, in A. */
    double leakage() {
        return loads.stream().mapToDouble(l -> l.leakageCurrent().si()).sum();
    }
}
