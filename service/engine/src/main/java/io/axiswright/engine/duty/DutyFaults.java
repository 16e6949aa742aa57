package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.CurvePoint;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.GearUnit;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.GearChoice;
import io.axiswright.engine.design.MeasureKinds;
import io.axiswright.engine.design.MechanismCheck;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.design.TorquePlace;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.motion.CycleCheck;
import io.axiswright.engine.quantity.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Collects everything in a request that cannot be given a meaning. */
final class DutyFaults {

    private final List<Fault> faults = new ArrayList<>();

    private DutyFaults() {}

    /**
     * Checks a request.
     *
     * @throws InvalidDesign with every fault found
     */
    static void check(DutyRequest request) {
        DutyFaults check = new DutyFaults();
        Set<String> zones = request.stopZones().stream().map(StopZone::id).collect(Collectors.toUnmodifiableSet());
        Set<String> units = request.driveUnits().stream().map(DriveUnit::id).collect(Collectors.toUnmodifiableSet());
        Set<String> gearUnits = request.gearUnits().stream().map(GearUnit::id).collect(Collectors.toUnmodifiableSet());
        for (int k = 0; k < request.axes().size(); k++) {
            check.axis(request.axes().get(k), "/design/axes/" + k, zones, units, gearUnits);
        }
        for (int k = 0; k < request.driveUnits().size(); k++) {
            DriveUnit unit = request.driveUnits().get(k);
            String pointer = "/catalogue/driveUnits/" + k;
            check.curve(unit.continuousCurve(), pointer + "/continuousCurve");
            check.curve(unit.intermittentCurve(), pointer + "/intermittentCurve");
        }
        check.currencies(request);
        if (!check.faults.isEmpty()) {
            throw new InvalidDesign(check.faults);
        }
    }

    private void axis(Axis axis, String pointer, Set<String> zones, Set<String> units, Set<String> gearUnits) {
        boolean rotary = axis.mechanism().movesByAngle();
        boolean turned = !axis.mechanism().carriesMass();
        for (int k = 0; k < axis.cycle().segments().size(); k++) {
            String place = pointer + "/cycle/segments/" + k;
            faults.addAll(MeasureKinds.faults(axis.cycle().segments().get(k), rotary, turned, place));
        }
        faults.addAll(MechanismCheck.faults(axis, pointer));
        faults.addAll(CycleCheck.faults(axis, pointer));
        gears(axis, pointer);
        reference(axis.stopZone(), zones, pointer + "/stopZone", "the id of one of the design's stop zones");
        reference(
                axis.drive().gearUnit(),
                gearUnits,
                pointer + "/drive/gearUnit",
                "the id of one of the catalogue's gear units");
        reference(axis.drive().item(), units, pointer + "/drive/item", "the id of one of the catalogue's drive units");
    }

    /** A course at the motor shaft moves the load by what the gears make of it, so it means nothing until they are stated. */
    private void gears(Axis axis, String pointer) {
        boolean atMotor = axis.cycle().segments().stream()
                .anyMatch(segment -> segment instanceof TorqueCourse course && course.at() == TorquePlace.MOTOR_SHAFT);
        boolean chosen = axis.drive().gear() == GearChoice.CHOOSE;
        boolean named = axis.drive().gearUnit() != null;
        if (atMotor && chosen) {
            faults.add(new Fault(
                    pointer + "/drive/gear",
                    FaultCode.INCONSISTENT,
                    "the torque of a segment is stated at the motor shaft, whose gear is yet to be chosen",
                    "STATED, or torque stated at the load"));
        }
        if (atMotor && named) {
            faults.add(new Fault(
                    pointer + "/drive/gearUnit",
                    FaultCode.INCONSISTENT,
                    "the torque of a segment is stated at the motor shaft, so what the gear unit bears is not known",
                    "its ratio and efficiency among the gears, or torque stated at the load"));
        }
        if (chosen && named) {
            faults.add(new Fault(
                    pointer + "/drive/gearUnit",
                    FaultCode.INCONSISTENT,
                    "a gear unit is named, yet one is to be chosen",
                    "nothing, or gear STATED"));
        }
    }

    private void reference(@Nullable String id, Set<String> known, String place, String accepted) {
        if (id != null && !known.contains(id)) {
            faults.add(new Fault(place, FaultCode.DANGLING_REFERENCE, "nothing has the id \"" + id + "\"", accepted));
        }
    }

    private void curve(List<CurvePoint> points, String place) {
        for (int k = 1; k < points.size(); k++) {
            double before = points.get(k - 1).speed().si();
            double speed = points.get(k).speed().si();
            if (speed <= before) {
                faults.add(new Fault(
                        place + "/" + k + "/speed",
                        FaultCode.INCONSISTENT,
                        speed + " rad/s follows " + before + " rad/s",
                        "speeds that rise from point to point"));
            }
        }
    }

    private void currencies(DutyRequest request) {
        List<String> currencies = Stream.<List<? extends Item>>of(
                        request.driveUnits(), request.holdingBrakes(), request.ventilationKits(), request.gearUnits())
                .flatMap(List::stream)
                .map(Item::price)
                .filter(Objects::nonNull)
                .map(Money::currency)
                .distinct()
                .toList();
        if (currencies.size() > 1) {
            faults.add(new Fault(
                    "/catalogue/currency",
                    FaultCode.INCONSISTENT,
                    "prices are in " + String.join(", ", currencies),
                    "all prices of a catalogue in one currency"));
        }
    }
}
