package io.axiswright.engine.motion;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Crank;
import io.axiswright.engine.design.Custom;
import io.axiswright.engine.design.CustomInstant;
import io.axiswright.engine.design.CustomPoint;
import io.axiswright.engine.design.DirectDrive;
import io.axiswright.engine.design.Gear;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.HoistRope;
import io.axiswright.engine.design.RotaryTable;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.design.TorquePlace;
import io.axiswright.engine.design.Winder;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;

/** Whether a cycle stays where its mechanism can go. */
final class ReachCheck {

    /** Positions typed in decimals need not come back to exactly where they began. */
    private static final double ROUNDING = 1e-9;

    private static final double TURN = 2 * Math.PI;

    /** Courses that change along each turn, or pass of a table, are worked out one by one; no cycle needs more of them. */
    private static final double MOST_TURNS = 200;

    private final Axis axis;
    private final List<Motion> motions;
    private final String pointer;
    private final List<Fault> faults = new ArrayList<>();

    private ReachCheck(Axis axis, List<Motion> motions, String pointer) {
        this.axis = axis;
        this.motions = motions;
        this.pointer = pointer;
    }

    /**
     * All faults.
     *
     * @param axis the axis
     * @param motions the motion of each segment of its cycle
     * @param pointer JSON Pointer to the axis
     */
    static List<Fault> faults(Axis axis, List<Motion> motions, String pointer) {
        return new ReachCheck(axis, motions, pointer).run();
    }

    private List<Fault> run() {
        switch (axis.mechanism()) {
            case Hoist hoist when hoist.rope() != null -> rope(hoist.rope());
            case RotaryTable table when table.unbalance() != null -> turns(TURN);
            case DirectDrive drive when drive.unbalance() != null -> turns(TURN);
            case Crank _ -> turns(TURN);
            case Winder winder -> roll(winder);
            case Custom custom -> custom(custom);
            default -> {}
        }
        return faults;
    }

    private void rope(HoistRope rope) {
        stays(rope.start().si(), 0, rope.height().si(), "m above the lowest place, and the rope is that long");
    }

    private void roll(Winder winder) {
        double core = winder.coreDiameter().si() / 2;
        double full = winder.fullDiameter().si() / 2;
        double start = winder.startDiameter().si() / 2;
        double thickness = winder.thickness().si();
        switch (winder.motion()) {
            case LINE ->
                stays(
                        0,
                        -(start * start - core * core) * Math.PI / thickness,
                        (full * full - start * start) * Math.PI / thickness,
                        "m wound, and core and full roll are its ends");
            case SHAFT ->
                stays(
                        0,
                        -(start - core) * TURN / thickness,
                        (full - start) * TURN / thickness,
                        "rad wound, and core and full roll are its ends");
        }
    }

    private void custom(Custom custom) {
        if (custom.points() != null) {
            table(custom, custom.points());
        } else if (custom.instants() != null) {
            course(custom.instants());
        }
    }

    /** The course must lie within the cycle, and a shaft that turns from one cycle into the next must not change its inertia there. */
    private void course(List<CustomInstant> instants) {
        double period = motions.stream().mapToDouble(Motion::duration).sum();
        String place = pointer + "/mechanism/instants/" + (instants.size() - 1);
        CustomInstant last = instants.getLast();
        if (last.time().si() > period * (1 + ROUNDING)) {
            faults.add(new Fault(
                    place + "/time",
                    FaultCode.OUT_OF_RANGE,
                    "The course goes on to " + last.time().si() + " s, and the cycle ends after " + period + " s.",
                    "times within the cycle"));
        }
        if (motions.getFirst().startSpeed() != 0
                && !last.inertia().equals(instants.getFirst().inertia())) {
            faults.add(new Fault(
                    place + "/inertia",
                    FaultCode.INCONSISTENT,
                    "The shaft turns from one cycle into the next, and its inertia would jump there.",
                    "the inertia of the first instant, or rest between the cycles"));
        }
    }

    private void table(Custom custom, List<CustomPoint> points) {
        CustomPoint first = points.getFirst();
        CustomPoint last = points.getLast();
        turns(last.angle().si() - first.angle().si());
        if (!custom.turns()) {
            stays(custom.start(), first.angle().si(), last.angle().si(), "rad, and the points go no farther");
        }
    }

    private void turns(double turn) {
        double travelled = 0;
        for (int k = 0; k < motions.size(); k++) {
            travelled += motions.get(k).travelled() / ratio(k);
        }
        if (travelled > MOST_TURNS * turn) {
            faults.add(new Fault(
                    pointer + "/cycle",
                    FaultCode.OUT_OF_RANGE,
                    "The cycle takes a mechanism whose torque changes along each turn through more than "
                            + (int) MOST_TURNS + " of them.",
                    "a shorter cycle that repeats"));
        }
    }

    /** Every position lies between two ends; a stretch goes one way, so that it is farthest where it begins or ends. */
    private void stays(double start, double lowest, double highest, String unit) {
        double position = start;
        double rounding = ROUNDING * (highest - lowest);
        if (position < lowest - rounding || position > highest + rounding) {
            outside(pointer + "/mechanism", position, lowest, highest, unit);
            return;
        }
        for (int k = 0; k < motions.size(); k++) {
            for (Motion.Stretch stretch : motions.get(k).stretches()) {
                position = after(k, stretch, position);
                if (position < lowest - rounding || position > highest + rounding) {
                    outside(pointer + "/cycle/segments/" + k, position, lowest, highest, unit);
                    return;
                }
            }
        }
    }

    private double after(int segment, Motion.Stretch stretch, double from) {
        double distance = stretch.speed().integral(0, stretch.length());
        return atMotor(segment)
                ? ShaftTravel.of(axis.mechanism(), from, Polynomial.of(distance / ratio(segment)))
                        .at(0)
                : from + distance;
    }

    private void outside(String place, double position, double lowest, double highest, String unit) {
        faults.add(new Fault(
                place,
                FaultCode.OUT_OF_RANGE,
                "The cycle comes to " + position + " " + unit + ".",
                "positions from " + lowest + " to " + highest));
    }

    /** Turns of what a segment states per turn of the mechanism's shaft, or 1 where it states the load itself. */
    private double ratio(int segment) {
        double ratio = 1;
        if (atMotor(segment)) {
            for (Gear gear : axis.gears()) {
                ratio *= gear.ratio();
            }
        }
        return ratio;
    }

    private boolean atMotor(int segment) {
        return axis.cycle().segments().get(segment) instanceof TorqueCourse course
                && course.at() == TorquePlace.MOTOR_SHAFT;
    }
}
