package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Custom;
import io.axiswright.engine.design.DriveSelection;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What is to be said about the duty of an axis. */
final class DutyFindings {

    /** A net travel below this share of the distance travelled is rounding. */
    private static final double LEAST_DRIFT = 1e-9;

    private static final String PRACTICE = "common practice, no source";

    private DutyFindings() {}

    /** About the site, whatever the axes. */
    static List<Finding> ofSite(Site site) {
        if (site.altitude().si() <= Derating.HIGHEST_ALTITUDE) {
            return List.of();
        }
        return List.of(FindingCode.DUTY_ALTITUDE_HIGH.at(
                "the site",
                "/design/site/altitude",
                "IEC 60034-1 (from memory)",
                site.altitude(),
                new Length(Derating.HIGHEST_ALTITUDE)));
    }

    /** About reserves that are asked for of more than is searched. */
    static Finding unsearched(int pieces) {
        return FindingCode.DUTY_RESERVES_UNSEARCHED.at(
                "the axes",
                "/design/axes",
                "bound of the service on the cost of an answer",
                new Ratio(pieces),
                new Ratio(ReserveSearch.MOST_PIECES));
    }

    /** About one axis. */
    static List<Finding> of(Axis axis, int index, AxisLoad load, AxisDuty duty, DutyRequest request) {
        String pointer = "/design/axes/" + index;
        List<Finding> findings = new ArrayList<>(ofDriveUnit(axis, pointer, duty, request));
        if (duty.longerMoves() != null) {
            findings.add(FindingCode.DUTY_LONGER_MOVES_HOLD.at(
                    axis.id(),
                    pointer + "/cycle",
                    "derived: same laws over longer times, dwells unchanged",
                    new Ratio(duty.longerMoves()),
                    new Ratio(1)));
        }
        LimitUse stop = duty.hardestStop();
        if (stop != null && stop.broken()) {
            findings.add(stop.stopTooHard(axis.id(), pointer));
        }
        inertiaRatio(axis, pointer, duty.unit(), findings);
        gravity(axis, pointer, load, findings);
        cycle(axis, pointer, load, findings);
        return findings;
    }

    private static List<Finding> ofDriveUnit(Axis axis, String pointer, AxisDuty duty, DutyRequest request) {
        if (duty.driveUnit() == null && !request.driveUnits().isEmpty()) {
            return List.of(FindingCode.DUTY_GEAR_UNIT_UNFIT.at(
                    axis.id(), pointer + "/drive/gearUnit", "catalogue frame sizes of the gear unit", null, null));
        }
        if (duty.driveUnit() == null) {
            return List.of(FindingCode.DUTY_CATALOGUE_EMPTY.at(
                    axis.id(), pointer + "/drive", PRACTICE, new Ratio(0), new Ratio(1)));
        }
        if (duty.feasible()) {
            return List.of();
        }
        Optional<LimitUse> unfed = duty.limits().stream()
                .filter(use -> use.limit() == DutyLimit.FEED && use.broken())
                .findFirst();
        if (axis.drive().item() == null && unfed.isPresent()) {
            return List.of(fed(FindingCode.DUTY_FEED_NONE, axis, pointer + "/drive", unfed.get(), request.mains()));
        }
        List<Finding> findings = new ArrayList<>();
        if (axis.drive().item() == null) {
            findings.add(none(axis, pointer, duty));
        }
        duty.limits().stream()
                .filter(use -> use.broken() && !saidBySpeed(use, duty))
                .map(use -> broken(use, axis, pointer, request.mains()))
                .forEach(findings::add);
        return findings;
    }

    private static Finding none(Axis axis, String pointer, AxisDuty duty) {
        Double shortfall = duty.candidates().getFirst().shortfall();
        return FindingCode.DUTY_NO_DRIVE_UNIT.at(
                axis.id(),
                pointer + "/drive",
                "derived: how many times larger its curves and limits would have to be",
                shortfall == null ? null : new Ratio(shortfall),
                new Ratio(1));
    }

    /** Where the speed is too high and the curve ends without torque, the torque says nothing new. */
    private static boolean saidBySpeed(LimitUse use, AxisDuty duty) {
        return use.limit() == DutyLimit.INTERMITTENT
                && use.allowed().si() == 0
                && duty.limits().stream().anyMatch(other -> other.limit() == DutyLimit.SPEED && other.broken());
    }

    private static Finding broken(LimitUse use, Axis axis, String pointer, Mains mains) {
        String clause = clause(use.limit(), axis.drive());
        String place = pointer + place(use.limit(), axis.drive());
        return use.limit() == DutyLimit.FEED
                ? fed(FindingCode.DUTY_FEED_WRONG, axis, place, use, mains)
                : code(use).at(axis.id(), place, clause, use.value(), use.allowed());
    }

    /** What the mains have against what the unit is rated for; the voltage that reaches it says nothing where none does. */
    private static Finding fed(FindingCode code, Axis axis, String pointer, LimitUse use, Mains mains) {
        Voltage rated = new Voltage(use.allowed().si() / FeedRule.HIGHEST);
        return code.at(axis.id(), pointer, clause(use.limit(), axis.drive()), mains.voltage(), rated);
    }

    /** What was named and does not hold. */
    private static String place(DutyLimit limit, DriveSelection drive) {
        boolean ofGear = switch (limit) {
            case GEAR_SPEED, GEAR_NOMINAL, GEAR_PEAK, GEAR_STOP -> true;
            case FEED, SPEED, BRAKE, CONTINUOUS, INTERMITTENT, WINDING, MECHANISM -> false;
        };
        if (ofGear && drive.gearUnit() != null) {
            return "/drive/gearUnit";
        }
        return drive.item() == null ? "/drive" : "/drive/item";
    }

    private static FindingCode code(LimitUse use) {
        return switch (use.limit()) {
            case FEED -> FindingCode.DUTY_FEED_WRONG;
            case GEAR_SPEED -> FindingCode.DUTY_GEAR_SPEED_HIGH;
            case GEAR_NOMINAL -> FindingCode.DUTY_GEAR_RMS_TORQUE_HIGH;
            case GEAR_PEAK -> FindingCode.DUTY_GEAR_PEAK_TORQUE_HIGH;
            case GEAR_STOP -> FindingCode.DUTY_GEAR_STOP_TORQUE_HIGH;
            case SPEED -> FindingCode.DUTY_SPEED_HIGH;
            case BRAKE -> FindingCode.DUTY_BRAKE_WEAK;
            case CONTINUOUS ->
                use.value() instanceof AngularSpeed
                        ? FindingCode.DUTY_RMS_SPEED_HIGH
                        : FindingCode.DUTY_RMS_TORQUE_HIGH;
            case INTERMITTENT -> FindingCode.DUTY_PEAK_TORQUE_HIGH;
            case WINDING -> FindingCode.DUTY_WINDING_HOT;
            case MECHANISM -> throw new IllegalArgumentException("a mechanism has findings of its own");
        };
    }

    private static String clause(DutyLimit limit, DriveSelection drive) {
        return switch (limit) {
            case FEED -> "IEC 60038 (voltage range ± 10 %)";
            case GEAR_SPEED, GEAR_NOMINAL, GEAR_PEAK, GEAR_STOP -> "catalogue value of the gear unit";
            case SPEED -> "derived: speed limit of the intermittent curve at low line";
            case BRAKE -> BrakeStock.clause(drive);
            case CONTINUOUS -> "equivalent torque method (Dubey, Fundamentals of Electrical Drives, ch. 4)";
            case INTERMITTENT -> "derived: intermittent curve at low line";
            case WINDING ->
                "heating of one body, or of winding and housing each (Pillai, A First Course on Electrical Drives, ch. 7)";
            case MECHANISM -> PRACTICE;
        };
    }

    private static void inertiaRatio(Axis axis, String pointer, @Nullable UnitFigures unit, List<Finding> findings) {
        if (unit != null && unit.inertiaRatio() > unit.inertiaRatioLimit()) {
            findings.add(FindingCode.DUTY_INERTIA_RATIO_HIGH.at(
                    axis.id(),
                    pointer + "/drive",
                    "catalogue value of the drive unit",
                    new Ratio(unit.inertiaRatio()),
                    new Ratio(unit.inertiaRatioLimit())));
        }
    }

    private static void gravity(Axis axis, String pointer, AxisLoad load, List<Finding> findings) {
        if (load.drivetrain().selfLocking()) {
            findings.add(FindingCode.DUTY_SELF_LOCKING.at(
                    axis.id(), pointer + "/mechanism", "derived: back-driving efficiency 2 − 1/eta", null, null));
        }
        if (load.gravity()) {
            Torque pull = new Torque(load.holdingTorque());
            boolean rubs = load.reach().heldByFriction();
            if (rubs) {
                Torque friction =
                        new Torque(load.drivetrain().holdingTorque(load.reach().friction()));
                findings.add(FindingCode.DUTY_FRICTION_HOLDS.at(
                        axis.id(),
                        pointer + "/mechanism",
                        "derived: friction as stated against the pull",
                        pull,
                        friction));
                return;
            }
            if (load.drivetrain().selfLocking()) {
                findings.add(FindingCode.DUTY_SELF_LOCKING_HOLDS.at(
                        axis.id(), pointer + "/mechanism", PRACTICE, pull, null));
                return;
            }
            if (!axis.drive().holdingBrake()) {
                findings.add(FindingCode.DUTY_BRAKE_ABSENT.at(axis.id(), pointer + "/drive", PRACTICE, pull, null));
            }
            findings.add(FindingCode.DUTY_LOAD_MAY_FALL.at(axis.id(), pointer + "/mechanism", PRACTICE, pull, null));
        }
    }

    /** Whether its travel surely has an end: a nut comes off its screw, a rope off its drum. */
    private static boolean ends(Mechanism mechanism) {
        return mechanism instanceof Screw || mechanism instanceof Hoist;
    }

    private static void cycle(Axis axis, String pointer, AxisLoad load, List<Finding> findings) {
        long unheld = axis.cycle().segments().stream()
                .filter(segment -> segment instanceof Dwell dwell && dwell.brakeHolds())
                .count();
        if (unheld > 0 && !axis.drive().holdingBrake()) {
            findings.add(FindingCode.DUTY_DWELL_UNHELD.at(
                    axis.id(), pointer + "/cycle", PRACTICE, new Ratio(unheld), new Ratio(0)));
        }
        boolean drifts = Math.abs(load.netTravel()) > LEAST_DRIFT * load.travelled();
        if (drifts && !load.drivetrain().mechanics().endless()) {
            boolean angle = axis.mechanism().movesByAngle();
            Quantity drift = angle ? new Angle(load.netTravel()) : new Length(load.netTravel());
            Quantity none = angle ? new Angle(0) : new Length(0);
            FindingCode code = ends(axis.mechanism()) ? FindingCode.DUTY_CYCLE_RUNS_OUT : FindingCode.DUTY_CYCLE_DRIFTS;
            findings.add(code.at(axis.id(), pointer + "/cycle", PRACTICE, drift, none));
        }
        if (axis.mechanism() instanceof Custom custom && custom.instants() != null) {
            findings.add(FindingCode.DUTY_COURSE_OVER_TIME.at(
                    axis.id(),
                    pointer + "/mechanism/instants",
                    "derived: d(J·w)/dt of angular momentum, J constant in a stop",
                    null,
                    null));
        }
        findings.addAll(CycleFindings.of(
                axis, pointer + "/cycle/segments/", axis.mechanism().movesByAngle()));
    }
}
