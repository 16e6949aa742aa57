package io.axiswright.engine.design;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What a mechanism must not contradict itself in. How far its cycle may take it is judged once the motions are known. */
public final class MechanismCheck {

    private final Axis axis;
    private final String pointer;
    private final List<Fault> faults = new ArrayList<>();

    private MechanismCheck(Axis axis, String pointer) {
        this.axis = axis;
        this.pointer = pointer;
    }

    /**
     * All faults; none if the mechanism has a meaning.
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
    }

    private void crank(Crank crank) {
        Length rod = crank.rodLength();
        double offset = crank.offset() == null ? 0 : Math.abs(crank.offset().si());
        if (rod != null && rod.si() <= crank.radius().si() + offset) {
            fault(
                    "/rodLength",
                    FaultCode.INCONSISTENT,
                    "A rod of " + rod.si() + " m cannot follow a crank of "
                            + crank.radius().si() + " m"
                            + (offset == 0 ? "." : " that stands " + offset + " m off its line."),
                    "a length above radius and offset together");
        }
        rodless(rod, crank.offset(), "/offset");
        rodless(rod, crank.rodMass(), "/rodMass");
        if (crank.rodCentre() != null && crank.rodMass() == null) {
            fault(
                    "/rodCentre",
                    FaultCode.INCONSISTENT,
                    "A centre of gravity of a rod without mass.",
                    "a rodMass, or none");
        }
    }

    private void rodless(@Nullable Length rod, @Nullable Quantity stated, String member) {
        if (rod == null && stated != null) {
            fault(member, FaultCode.INCONSISTENT, "There is no connecting rod.", "a rodLength, or none of this");
        }
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
        List<CustomInstant> instants = custom.instants();
        if (points != null && instants != null) {
            fault(
                    "/instants",
                    FaultCode.INCONSISTENT,
                    "Torque and inertia are given over the angle and over time.",
                    "one of points and instants");
        } else if (points != null) {
            table(custom, points);
        } else if (instants != null) {
            course(custom, instants);
        } else {
            fault(
                    "/points",
                    FaultCode.MISSING,
                    "Nothing says what torque and inertia the mechanism has.",
                    "points over the angle, or instants over the time of the cycle");
        }
    }

    private void course(Custom custom, List<CustomInstant> instants) {
        overTime(custom.interpolation(), "/interpolation");
        overTime(custom.repeats(), "/repeats");
        overTime(custom.startAngle(), "/startAngle");
        rises(instants, CustomInstant::time, "/instants/", "/time");
    }

    private void overTime(@Nullable Object stated, String member) {
        if (stated != null) {
            fault(member, FaultCode.INCONSISTENT, "It belongs to points over the angle.", "none of this with instants");
        }
    }

    private <T> boolean rises(List<T> points, Function<T, Quantity> place, String list, String member) {
        for (int k = 1; k < points.size(); k++) {
            if (place.apply(points.get(k)).si()
                    <= place.apply(points.get(k - 1)).si()) {
                String what = member.substring(1);
                fault(
                        list + k + member,
                        FaultCode.INCONSISTENT,
                        "The " + what + " does not rise from the point before.",
                        what + "s that rise from point to point");
                return false;
            }
        }
        return true;
    }

    private void table(Custom custom, List<CustomPoint> points) {
        if (!rises(points, CustomPoint::angle, "/points/", "/angle")) {
            return;
        }
        CustomPoint first = points.getFirst();
        CustomPoint last = points.getLast();
        if (custom.turns()
                && (!first.torque().equals(last.torque()) || !first.inertia().equals(last.inertia()))) {
            fault(
                    "/points/" + (points.size() - 1),
                    FaultCode.INCONSISTENT,
                    "The points repeat, but the last is not alike the first.",
                    "torque and inertia of the first point");
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
