package io.axiswright.engine.study;

import io.axiswright.engine.braking.GroupBraking;
import io.axiswright.engine.catalogue.BrakingUnit;
import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.Need;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.CableLengths;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.wiring.Join;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The links of the DC buses. The units of a bus are joined one to the next by as little cable as possible (a minimum spanning
 * tree); its braking units stand beside its first unit.
 */
final class BusJoins {

    private final Design design;
    private final StudyRun run;
    private final Enclosures enclosures;
    private final CableLengths lengths;
    private final List<Join> joins = new ArrayList<>();

    private BusJoins(StudyRun run, Enclosures enclosures) {
        this.run = run;
        this.design = run.request().design();
        this.enclosures = enclosures;
        this.lengths = Needed.cableLengths(design);
    }

    static List<Join> of(StudyRun run, Enclosures enclosures) {
        var buses = new BusJoins(run, enclosures);
        for (GroupBraking group : run.braking().groups()) {
            int[] members = IntStream.range(0, buses.design.axes().size())
                    .filter(k -> group.axes().contains(buses.axis(k).id()))
                    .toArray();
            buses.joinUnits(group, members);
            buses.joinBrakingUnits(group, members[0]);
        }
        return buses.joins;
    }

    private Axis axis(int index) {
        return design.axes().get(index);
    }

    /** Grows the tree from the first unit: always the nearest unit outside to its nearest one inside. */
    private void joinUnits(GroupBraking group, int[] members) {
        int[] parent = new int[members.length];
        double[] way = new double[members.length];
        Arrays.fill(way, Double.POSITIVE_INFINITY);
        boolean[] inside = new boolean[members.length];
        List<Integer> grown = new ArrayList<>();
        for (int at = 0; at >= 0; at = nearest(way, inside)) {
            inside[at] = true;
            grown.add(at);
            for (int k = 0; k < members.length; k++) {
                double length = route(
                                axis(members[at]).position(), axis(members[k]).position())
                        .si();
                if (!inside[k] && length < way[k]) {
                    way[k] = length;
                    parent[k] = at;
                }
            }
        }
        double[] beyond = Arrays.stream(members).mapToDouble(this::ratedPower).toArray();
        double all = Arrays.stream(beyond).sum();
        for (int k : grown.reversed()) {
            if (k != grown.getFirst()) {
                // a link carries for long no more than what the weaker of its two sides takes
                double power = Math.min(beyond[k], all - beyond[k]);
                beyond[parent[k]] += beyond[k];
                link(group, members[parent[k]], members[k], power);
            }
        }
    }

    private static int nearest(double[] way, boolean[] inside) {
        int nearest = -1;
        for (int k = 0; k < way.length; k++) {
            if (!inside[k] && (nearest < 0 || way[k] < way[nearest])) {
                nearest = k;
            }
        }
        return nearest;
    }

    private void link(GroupBraking group, int from, int to, double power) {
        Axis a = axis(from);
        Axis b = axis(to);
        joins.add(new Join(
                CableUse.BUS_LINK,
                "DC bus " + group.id(),
                "joins the bus of axis " + a.id() + " to that of axis " + b.id(),
                CableEnds.bus(a),
                CableEnds.bus(b),
                route(a.position(), b.position()),
                null,
                group.tripVoltage(),
                new Current(power / group.nominalVoltage().si()),
                enclosures.entered(a.position(), b.position()),
                "/design/axes/" + to));
    }

    /** Rated apparent input power, VA; as active power it is on the safe side. */
    private double ratedPower(int index) {
        DriveUnit unit =
                run.stock().find(DriveUnit.class, run.duty().axes().get(index).driveUnit());
        return unit == null
                ? 0
                : unit.ratedVoltage().si()
                        * unit.ratedInputCurrent().si()
                        * (unit.feed() == Feed.THREE_PHASE ? Math.sqrt(3) : 1);
    }

    private void joinBrakingUnits(GroupBraking group, int first) {
        BrakingUnit unit = run.stock().find(BrakingUnit.class, group.brakingUnit());
        if (unit == null || group.chosen() == null) {
            return;
        }
        Position position = axis(first).position();
        Length resistorRoute = Needed.wiring(design).resistorRoute();
        for (int k = 0; k < group.chosen().count(); k++) {
            if (!brings(unit, CableUse.BUS_LINK)) {
                joins.add(join(
                        group,
                        CableUse.BUS_LINK,
                        "joins its braking unit",
                        CableEnds.bus(axis(first)),
                        CableEnds.brakingUnit(group, k),
                        route(position, position),
                        null,
                        first));
            }
            if (!brings(unit, CableUse.BRAKING_RESISTOR)) {
                joins.add(join(
                        group,
                        CableUse.BRAKING_RESISTOR,
                        "joins its braking unit to the resistor",
                        CableEnds.brakingUnit(group, k),
                        CableEnds.resistor(group, k),
                        resistorRoute,
                        group.chosen().maxCableLength(),
                        first));
            }
        }
    }

    /** Whether the catalogue has the cable go with the braking unit anyway. */
    private boolean brings(BrakingUnit unit, CableUse use) {
        return unit.needs().stream()
                .map(Need::item)
                .map(id -> run.stock().find(id))
                .anyMatch(item -> item instanceof CableAssembly cable && cable.use() == use);
    }

    private static Join join(
            GroupBraking group,
            CableUse use,
            String reason,
            String from,
            String to,
            @Nullable Length route,
            @Nullable Length longest,
            int axis) {
        return new Join(
                use,
                "DC bus " + group.id(),
                reason,
                from,
                to,
                route,
                longest,
                group.tripVoltage(),
                Objects.requireNonNull(group.chosen()).cableCurrent(),
                List.of(),
                "/design/axes/" + axis);
    }

    private Length route(Position from, Position to) {
        return lengths.between(from, to);
    }
}
