package io.axiswright.engine.containment;

import io.axiswright.engine.design.CableRoute;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Conduit;
import io.axiswright.engine.design.Containment;
import io.axiswright.engine.design.StandardConduit;
import io.axiswright.engine.design.Trunking;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.standard.ConduitSizes;
import io.axiswright.engine.standard.ContainmentFill;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.Source;
import io.axiswright.engine.standard.Sourced;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How far the cables fill what encloses them.
 *
 * @param cables cross-section of all cables, over their sheaths
 * @param inside that of the containment
 * @param limit the most they may take of it
 * @param diameters outer diameters of all cables
 * @param innerDiameter that of a conduit; absent for trunking
 * @param table where that comes from; absent where the caller states it
 */
record Filling(
        Area cables,
        Area inside,
        Sourced<Ratio> limit,
        List<Length> diameters,
        @Nullable Length innerDiameter,
        @Nullable Source table) {

    /** Three cables jam where the conduit is this many times as wide as one of them (NFPA 70 Chapter 9 Table 1 note). */
    private static final double JAM_FROM = 2.8;

    private static final double JAM_TO = 3.2;

    /** The filling of a route; nothing for an open one and where no cable runs. */
    static @Nullable Filling of(CodeBasis basis, RoutedStretch stretch) {
        CableRoute route = stretch.route();
        Containment containment = route.containment();
        List<Length> diameters = Stream.concat(
                        stretch.cables().stream().map(RoutedCable::outerDiameter), route.otherDiameters().stream())
                .toList();
        if (containment == null || diameters.isEmpty()) {
            return null;
        }
        Area cables = new Area(diameters.stream().mapToDouble(Filling::circle).sum());
        int count = diameters.size();
        Sourced<Ratio> ofConduit = ContainmentFill.ofConduit(basis, route.length(), count);
        return switch (containment) {
            case Conduit conduit -> round(cables, conduit.innerDiameter(), null, ofConduit, diameters);
            case StandardConduit conduit ->
                round(cables, innerDiameter(conduit, stretch.pointer()), ofConduit, diameters);
            case Trunking trunking ->
                new Filling(
                        cables,
                        new Area(trunking.width().si() * trunking.height().si()),
                        ContainmentFill.ofTrunking(basis, count),
                        diameters,
                        null,
                        null);
        };
    }

    private static Filling round(Area cables, Sourced<Length> inner, Sourced<Ratio> limit, List<Length> diameters) {
        return round(cables, inner.value(), inner.source(), limit, diameters);
    }

    private static Filling round(
            Area cables, Length inner, @Nullable Source table, Sourced<Ratio> limit, List<Length> diameters) {
        return new Filling(cables, new Area(circle(inner)), limit, diameters, inner, table);
    }

    private static double circle(Length diameter) {
        return Math.PI / 4 * diameter.si() * diameter.si();
    }

    private static Sourced<Length> innerDiameter(StandardConduit conduit, String pointer) {
        return ConduitSizes.innerDiameter(conduit.type(), conduit.metricDesignator())
                .orElseThrow(() -> new InvalidDesign(List.of(new Fault(
                        pointer + "/containment/metricDesignator",
                        FaultCode.OUT_OF_RANGE,
                        "The tables have no " + conduit.type() + " of metric designator " + conduit.metricDesignator()
                                + ".",
                        "one of " + ConduitSizes.metricDesignators(conduit.type())))));
    }

    /** The rule of the limit, and the table of the inside. */
    String clause() {
        String rule = limit.source().told();
        return table == null ? rule : rule + "; " + table.told();
    }

    double share() {
        return cables.si() / inside.si();
    }

    boolean exceeded() {
        return !Limits.within(share(), limit.value().si());
    }

    /** The ratio at which three like cables wedge side by side in a bend; nothing where they do not. */
    @Nullable
    Ratio jam() {
        if (innerDiameter == null || diameters.size() != 3) {
            return null;
        }
        double mean = diameters.stream().mapToDouble(Length::si).average().orElseThrow();
        double ratio = innerDiameter.si() / mean;
        return ratio >= JAM_FROM && ratio <= JAM_TO ? new Ratio(ratio) : null;
    }

    /** The smallest conduit of the type that holds the cables; nothing if none does. */
    @Nullable
    Integer smallest(Containment containment) {
        if (!(containment instanceof StandardConduit conduit)) {
            return null;
        }
        for (int size : ConduitSizes.metricDesignators(conduit.type())) {
            Length inner = ConduitSizes.innerDiameter(conduit.type(), size)
                    .orElseThrow()
                    .value();
            if (Limits.within(cables.si(), limit.value().si() * circle(inner))) {
                return size;
            }
        }
        return null;
    }
}
