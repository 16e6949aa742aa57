package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.GearUnit;
import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.TemperatureRise;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** States what is known of the drive unit that an axis got. */
final class BestUnit {

    private BestUnit() {}

    /** What the cycle does to it. */
    static UnitFigures figures(AxisLoad load, Choice.Judged best, Course course, double peakTorque) {
        Trial trial = best.trial();
        Offer offer = trial.offer();
        DriveUnit unit = offer.unit();
        double motorInertia = trial.inertia() - load.drivetrain().gearInertia();
        InputCurrent input = InputCurrent.of(
                course, unit.motorConstant().si(), unit.standbyLoss().si());
        double rated = unit.ratedInputCurrent().si();
        WindingHeat heat = trial.heat(best.kit());
        double loss = trial.rmsTorque() * trial.rmsTorque() * offer.lossPerTorqueSquared();
        return new UnitFigures(
                new Inertia(motorInertia),
                new Inertia(load.reflectedInertia()),
                trial.inertiaRatio(),
                unit.inertiaRatioLimit(),
                new Power(loss),
                new TemperatureRise(heat.rise()),
                new Time(heat.instant()),
                new Temperature(offer.ambient() + heat.rise() / offer.thinAir()),
                time(trial.timeFromCold(trial.rmsTorque(), best.kit())),
                time(trial.timeFromCold(peakTorque, best.kit())),
                new Power(input.mean()),
                new Power(input.rms()),
                unit.ratedInputCurrent(),
                new Current(input.current(rated, offer.ratedInput(), offer.lineFactor())));
    }

    private static @Nullable Time time(double seconds) {
        return Double.isInfinite(seconds) ? null : new Time(seconds);
    }

    /** Each limit and how much of it is used; the brake's only where one is asked for, those of a gear unit only where one is used. */
    static List<LimitUse> limits(Choice.Judged best) {
        List<LimitUse> limits = new ArrayList<>();
        for (DutyLimit limit : DutyLimit.values()) {
            if (concerns(limit, best.trial())) {
                limits.add(limit(limit, best.trial(), best.kit()));
            }
        }
        return limits;
    }

    private static boolean concerns(DutyLimit limit, Trial trial) {
        return switch (limit) {
            case BRAKE -> trial.brakeAsked();
            case MECHANISM -> false;
            case GEAR_SPEED, GEAR_NOMINAL, GEAR_PEAK -> trial.way().gear() != null;
            case GEAR_STOP -> trial.way().gear() != null && trial.way().zone() != null;
            default -> true;
        };
    }

    private static LimitUse ofGear(DutyLimit limit, GearedLoad way, double use) {
        GearUnit gear = Objects.requireNonNull(way.gear());
        GearOutput output = Objects.requireNonNull(way.output());
        return switch (limit) {
            case GEAR_SPEED -> of(limit, new AngularSpeed(way.sums().peakSpeed()), gear.highestInputSpeed(), use);
            case GEAR_NOMINAL -> of(limit, new Torque(output.rms()), gear.nominalTorque(), use);
            case GEAR_STOP ->
                new LimitUse(limit, new Torque(output.stop()), gear.stopTorque(), use, new Time(output.stopInstant()));
            default -> of(limit, new Torque(output.peak()), gear.peakTorque(), use);
        };
    }

    /** One limit and how much of it is used. */
    static LimitUse limit(DutyLimit limit, Trial trial, @Nullable VentilationKit kit) {
        Offer offer = trial.offer();
        LoadSums sums = trial.way().sums();
        double use = trial.use(limit, kit);
        return switch (limit) {
            case FEED -> {
                yield of(limit, new Voltage(offer.voltage()), new Voltage(offer.highestVoltage()), use);
            }
            case GEAR_SPEED, GEAR_NOMINAL, GEAR_PEAK, GEAR_STOP -> ofGear(limit, trial.way(), use);
            case SPEED ->
                new LimitUse(
                        limit,
                        new AngularSpeed(sums.peakSpeed()),
                        new AngularSpeed(offer.intermittent().topSpeed()),
                        use,
                        new Time(sums.peakSpeedAt()));
            case BRAKE -> of(limit, new Torque(trial.brakeTorque()), new Torque(trial.strongestBrake()), use);
            case CONTINUOUS ->
                trial.fasterThanContinuous()
                        ? of(
                                limit,
                                new AngularSpeed(sums.rmsSpeed()),
                                new AngularSpeed(offer.continuous().topSpeed()),
                                use)
                        : of(limit, new Torque(trial.rmsTorque()), new Torque(trial.continuousTorque(kit)), use);
            case INTERMITTENT -> {
                Envelope worst = trial.envelope();
                yield new LimitUse(
                        limit,
                        new Torque(worst.torque()),
                        new Torque(worst.available()),
                        use,
                        new Time(worst.instant()));
            }
            case WINDING -> {
                WindingHeat heat = trial.heat(kit);
                yield new LimitUse(
                        limit,
                        new TemperatureRise(heat.rise()),
                        new TemperatureRise(trial.permittedRise()),
                        use,
                        new Time(heat.instant()));
            }
            case MECHANISM -> throw unmeasured();
        };
    }

    /** What the mechanism bears is many things and has no one measure. */
    private static IllegalArgumentException unmeasured() {
        return new IllegalArgumentException("the limits of a mechanism are told by findings of their own");
    }

    private static LimitUse of(DutyLimit limit, Quantity value, Quantity allowed, double use) {
        return new LimitUse(limit, value, allowed, use, null);
    }
}
