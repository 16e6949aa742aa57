package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.CurvePoint;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.MechanismCheck;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.SCurve;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.design.Trapezoidal;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Effort;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Payload;
import io.axiswright.engine.quantity.Torque;
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
        for (int k = 0; k < request.axes().size(); k++) {
            check.axis(request.axes().get(k), "/design/axes/" + k, zones, units);
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

    private void axis(Axis axis, String pointer, Set<String> zones, Set<String> units) {
        boolean rotary = axis.mechanism().movesByAngle();
        boolean turned = !axis.mechanism().carriesMass();
        for (int k = 0; k < axis.cycle().segments().size(); k++) {
            String place = pointer + "/cycle/segments/" + k;
            switch (axis.cycle().segments().get(k)) {
                case Move move -> {
                    displacement(move.distance(), rotary, place);
                    carried(move.payload(), move.processEffort(), turned, place);
                    law(move, place + "/law");
                }
                case Dwell dwell -> carried(dwell.payload(), dwell.processEffort(), turned, place);
            }
        }
        faults.addAll(MechanismCheck.faults(axis, pointer));
        reference(axis.stopZone(), zones, pointer + "/stopZone", "the id of one of the design's stop zones");
        reference(axis.drive().item(), units, pointer + "/drive/item", "the id of one of the catalogue's drive units");
    }

    private void displacement(Displacement distance, boolean rotary, String place) {
        if (distance instanceof Angle != rotary) {
            wrongUnit(place + "/distance", rotary, "an angle", "a length");
        }
    }

    private void carried(@Nullable Payload payload, @Nullable Effort process, boolean rotary, String place) {
        if (payload != null && payload instanceof Inertia != rotary) {
            wrongUnit(place + "/payload", rotary, "a moment of inertia", "a mass");
        }
        if (process != null && process instanceof Torque != rotary) {
            wrongUnit(place + "/processEffort", rotary, "a torque", "a force");
        }
    }

    private void law(Move move, String place) {
        if (move.law() instanceof Trapezoidal law && law.accelerationShare() + law.decelerationShare() > 1 + 1e-9) {
            double sum = law.accelerationShare() + law.decelerationShare();
            faults.add(new Fault(
                    place + "/decelerationShare",
                    FaultCode.OUT_OF_RANGE,
                    "the shares of acceleration and deceleration add up to " + sum,
                    "shares that add up to at most 1"));
        }
        if (move.law() instanceof SCurve law && law.accelerationShare() > 0.5) {
            faults.add(new Fault(
                    place + "/accelerationShare",
                    FaultCode.OUT_OF_RANGE,
                    "each of two acceleration phases takes a share of " + law.accelerationShare(),
                    "a share of at most 0.5"));
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
                        request.driveUnits(), request.holdingBrakes(), request.ventilationKits())
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

    private void wrongUnit(String place, boolean rotary, String forRotary, String forLinear) {
        faults.add(new Fault(
                place,
                FaultCode.WRONG_UNIT,
                rotary ? forLinear + " on a rotary axis" : forRotary + " on a linear axis",
                rotary ? forRotary : forLinear));
    }
}
