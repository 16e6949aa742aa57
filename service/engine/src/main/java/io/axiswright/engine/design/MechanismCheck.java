package io.axiswright.engine.design;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/** What a mechanism must not contradict itself in, nor its cycle it. */
public final class MechanismCheck {

    /** Positions typed in decimals need not come back to exactly where they began. */
    private static final double ROUNDING = 1e-9;

    private static final double TURN = 2 * Math.PI;

    /** Courses that change along each turn, or pass of a table, are worked out one by one; no cycle needs more of them. */
    private static final double MOST_TURNS = 200;

    private final Axis axis;
    private final String pointer;
    private final List<Fault> faults = new ArrayList<>();

    private MechanismCheck(Axis axis, String pointer) {
        this.axis = axis;
        this.pointer = pointer;
    }

    /**
     * All faults; none if mechanism and cycle agree.
     *
     * @param axis the axis
     * @param pointer JSON Pointer to it
     */
    public static List<Fault> faults(Axis axis, String pointer) {
        return new MechanismCheck(axis, pointer).run();
    }

    private List<Fault> run() {
        switch (axis.mechanism()) {
            case Screw screw -> screw(screw);
            case Hoist hoist -> hoist(hoist);
            case RotaryTable table when table.unbalance() != null -> turns();
            case DirectDrive drive when drive.unbalance() != null -> turns();
            case Crank crank -> crank(crank);
            case Winder winder -> winder(winder);
            case Custom custom -> custom(custom);
            case RotaryTable _, DirectDrive _, Belt _, RackAndPinion _, Conveyor _ -> {}
        }
        return List.copyOf(faults);
    }

    private void screw(Screw screw) {
        ScrewThread thread = screw.thread();
        if (thread == null && screw.efficiency() == null) {
            fault(
                    "/efficiency",
                    FaultCode.MISSING,
                    "Nothing says how much of the torque a screw passes.",
                    "an efficiency, or a thread with its friction");
        }
        if (thread != null && (screw.efficiency() != null || screw.backDrivingEfficiency() != null)) {
            fault(
                    "/thread",
                    FaultCode.INCONSISTENT,
                    "Efficiency and thread are both given, and each follows from the other.",
                    "one of efficiency and thread");
        }
        if (thread != null) {
            double rubbing = thread.friction()
                    / Math.cos(thread.flankAngle().si())
                    * screw.lead().si();
            if (rubbing >= Math.PI * thread.pitchDiameter().si()) {
                fault(
                        "/thread/friction",
                        FaultCode.INCONSISTENT,
                        "With that friction no torque moves a thread of that lead.",
                        "a friction coefficient below pi·pitchDiameter·cos(flankAngle)/lead");
            }
            notAbove(thread.pitchDiameter(), "/thread/pitchDiameter", screw.diameter(), "the diameter of the screw");
        }
        ScrewSupport support = screw.support();
        if (support != null) {
            notAbove(support.rootDiameter(), "/support/rootDiameter", screw.diameter(), "the diameter of the screw");
            if (support.unsupportedLength() != null) {
                notAbove(
                        support.unsupportedLength(),
                        "/support/unsupportedLength",
                        screw.length(),
                        "the length of the screw");
            }
        }
    }

    private void hoist(Hoist hoist) {
        HoistRope rope = hoist.rope();
        if (rope == null) {
            return;
        }
        if (hoist.reeving() > 1) {
            fault(
                    "/rope",
                    FaultCode.INCONSISTENT,
                    "The rope's own weight is worked out for one part of rope, and there are " + hoist.reeving() + ".",
                    "no rope, or a reeving of 1");
        }
        if (rope.compensated() && hoist.counterweight() == null) {
            fault(
                    "/rope/compensated",
                    FaultCode.INCONSISTENT,
                    "A compensation rope hangs between load and counterweight, and there is no counterweight.",
                    "false, or a counterweight");
        }
        stays(rope.start().si(), 0, rope.height().si(), "m above the lowest place, and the rope is that long");
    }

    private void crank(Crank crank) {
        Length rod = crank.rodLength();
        if (rod != null && rod.si() <= crank.radius().si()) {
            fault(
                    "/rodLength",
                    FaultCode.INCONSISTENT,
                    "A rod of " + rod.si() + " m cannot follow a crank of "
                            + crank.radius().si() + " m.",
                    "a length above the radius");
        }
        turns();
    }

    private void winder(Winder winder) {
        double core = winder.coreDiameter().si() / 2;
        double full = winder.fullDiameter().si() / 2;
        double start = winder.startDiameter().si() / 2;
        if (core >= full) {
            fault(
                    "/fullDiameter",
                    FaultCode.INCONSISTENT,
                    "A full roll is not larger than its core.",
                    "a diameter above coreDiameter");
            return;
        }
        if (start < core || start > full) {
            fault(
                    "/startDiameter",
                    FaultCode.INCONSISTENT,
                    "The roll begins outside of what core and full roll allow.",
                    "a diameter from coreDiameter to fullDiameter");
            return;
        }
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
        for (int k = 0; k < axis.cycle().segments().size(); k++) {
            if (axis.cycle().segments().get(k).payload() != null) {
                faults.add(new Fault(
                        pointer + "/cycle/segments/" + k + "/payload",
                        FaultCode.INCONSISTENT,
                        "A roll carries nothing but its material.",
                        "no payload; another roll by startDiameter and material"));
            }
        }
    }

    private void custom(Custom custom) {
        List<CustomPoint> points = custom.points();
        for (int k = 1; k < points.size(); k++) {
            if (points.get(k).angle().si() <= points.get(k - 1).angle().si()) {
                fault(
                        "/points/" + k + "/angle",
                        FaultCode.INCONSISTENT,
                        "The angle does not rise from the point before.",
                        "angles that rise from point to point");
                return;
            }
        }
        CustomPoint first = points.getFirst();
        CustomPoint last = points.getLast();
        if (travelled() > MOST_TURNS * (last.angle().si() - first.angle().si())) {
            tooManyTurns();
        }
        if (!custom.repeats()) {
            stays(custom.startAngle().si(), first.angle().si(), last.angle().si(), "rad, and the points go no farther");
            return;
        }
        if (!first.torque().equals(last.torque()) || !first.inertia().equals(last.inertia())) {
            fault(
                    "/points/" + (points.size() - 1),
                    FaultCode.INCONSISTENT,
                    "The points repeat, but the last is not alike the first.",
                    "torque and inertia of the first point");
        }
    }

    private void turns() {
        if (travelled() > MOST_TURNS * TURN) {
            tooManyTurns();
        }
    }

    private void tooManyTurns() {
        faults.add(new Fault(
                pointer + "/cycle",
                FaultCode.OUT_OF_RANGE,
                "The cycle takes a mechanism whose torque changes along each turn through more than " + (int) MOST_TURNS
                        + " of them.",
                "a shorter cycle that repeats"));
    }

    private double travelled() {
        return axis.cycle().segments().stream()
                .mapToDouble(segment -> Math.abs(CycleTravel.of(segment)))
                .sum();
    }

    /** The positions after each segment lie between two ends. */
    private void stays(double start, double lowest, double highest, String unit) {
        double position = start;
        double rounding = ROUNDING * (highest - lowest);
        for (int k = -1; k < axis.cycle().segments().size(); k++) {
            position += k < 0 ? 0 : CycleTravel.of(axis.cycle().segments().get(k));
            if (position < lowest - rounding || position > highest + rounding) {
                faults.add(new Fault(
                        k < 0 ? pointer + "/mechanism" : pointer + "/cycle/segments/" + k,
                        FaultCode.OUT_OF_RANGE,
                        "The cycle comes to " + position + " " + unit + ".",
                        "positions from " + lowest + " to " + highest));
                return;
            }
        }
    }

    private void notAbove(Length length, String member, Length limit, String what) {
        if (length.si() > limit.si()) {
            fault(
                    member,
                    FaultCode.INCONSISTENT,
                    length.si() + " m is more than " + what + ".",
                    "at most " + limit.si() + " m");
        }
    }

    private void fault(String member, FaultCode code, String detail, String accepted) {
        faults.add(new Fault(pointer + "/mechanism" + member, code, detail, accepted));
    }
}
