package io.axiswright.engine.duty;

import static io.axiswright.engine.duty.LinearMechanics.si;

import io.axiswright.engine.design.Crank;
import io.axiswright.engine.design.Custom;
import io.axiswright.engine.design.CustomInstant;
import io.axiswright.engine.design.CustomPoint;
import io.axiswright.engine.design.DirectDrive;
import io.axiswright.engine.design.Friction;
import io.axiswright.engine.design.RotaryTable;
import io.axiswright.engine.design.TableInterpolation;
import io.axiswright.engine.design.Unbalance;
import io.axiswright.engine.design.Winder;
import io.axiswright.engine.design.WinderMotion;
import io.axiswright.engine.quantity.Quantity;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Mechanisms that turn their load, and those whose load does not go evenly with their shaft. */
final class RotaryMechanics {

    private RotaryMechanics() {}

    static Mechanics of(RotaryTable table) {
        return turning(
                table.inertia().si(),
                table.bearingFriction().si(),
                si(table.viscousFriction()),
                table.unbalance(),
                Efficiency.of(table.efficiency(), table.backDrivingEfficiency()));
    }

    static Mechanics of(DirectDrive drive) {
        return turning(
                drive.inertia().si(),
                si(drive.bearingFriction()),
                si(drive.viscousFriction()),
                drive.unbalance(),
                Efficiency.LOSSLESS);
    }

    private static Mechanics turning(
            double inertia, double friction, double viscous, @Nullable Unbalance unbalance, Efficiency efficiency) {
        if (unbalance == null) {
            return new Mechanics(
                    true,
                    0,
                    0,
                    0,
                    efficiency,
                    (payload, process) -> new EvenEffort(1, inertia + payload, 0, 0, friction, viscous, process));
        }
        double moment = unbalance.mass().si()
                * Mechanics.FREE_FALL
                * unbalance.eccentricity().si()
                * Math.sin(unbalance.tilt().si());
        return new Mechanics(
                true,
                unbalance.startAngle().si(),
                0,
                0,
                efficiency,
                (payload, process) -> new SwingEffort(inertia + payload, moment, friction, viscous, process));
    }

    static Mechanics of(Crank crank) {
        Friction friction = crank.friction();
        double along = Mechanics.FREE_FALL * Math.sin(crank.inclination().si());
        double across = friction == null ? 0 : LinearMechanics.rub(friction, crank.inclination());
        return new Mechanics(
                true,
                crank.startAngle().si(),
                crank.crankInertia().si()
                        + crank.rodMassAtCrank()
                                * crank.radius().si()
                                * crank.radius().si(),
                0,
                Efficiency.of(crank.efficiency(), crank.backDrivingEfficiency()),
                (payload, process) -> {
                    double mass = crank.load().si() + crank.rodMassAtSlider() + payload;
                    return new CrankEffort(
                            crank.radius().si(),
                            crank.rodLength() == null
                                    ? Double.POSITIVE_INFINITY
                                    : crank.rodLength().si(),
                            si(crank.offset()),
                            mass,
                            mass * along,
                            mass * across + (friction == null ? 0 : si(friction.drag())),
                            friction == null ? 0 : si(friction.viscous()),
                            process);
                });
    }

    static Mechanics of(Winder winder) {
        double core = winder.coreDiameter().si() / 2;
        double full = winder.fullDiameter().si() / 2;
        double heaviness = winder.material().si() / 2 / (full * full - core * core);
        return new Mechanics(
                false,
                0,
                winder.coreInertia().si(),
                si(winder.bearingFriction()),
                Efficiency.of(winder.efficiency(), winder.backDrivingEfficiency()),
                (payload, process) -> new WinderEffort(
                        winder.motion() == WinderMotion.LINE,
                        winder.startDiameter().si() / 2,
                        winder.thickness().si(),
                        core,
                        heaviness,
                        winder.tension().si() + process,
                        winder.tension().si(),
                        si(winder.viscousFriction())));
    }

    static Mechanics of(Custom custom) {
        return new Mechanics(true, custom.start(), 0, 0, Efficiency.LOSSLESS, loading(custom));
    }

    private static Mechanics.Loading loading(Custom custom) {
        double friction = si(custom.friction());
        double viscous = si(custom.viscousFriction());
        List<CustomInstant> instants = custom.instants();
        if (instants != null) {
            double[] times = values(instants, CustomInstant::time);
            TableCurve torque = straight(times, values(instants, CustomInstant::torque));
            TableCurve inertia = straight(times, values(instants, CustomInstant::inertia));
            return (payload, process) -> new TimedEffort(
                    torque, inertia, 0, times[times.length - 1], 1, payload, friction, viscous, process);
        }
        List<CustomPoint> points = Objects.requireNonNull(custom.points());
        TableInterpolation between =
                custom.interpolation() == null ? TableInterpolation.LINEAR : custom.interpolation();
        double[] angles = values(points, CustomPoint::angle);
        TableCurve torque = TableCurve.of(angles, values(points, CustomPoint::torque), between, custom.turns());
        TableCurve inertia = TableCurve.of(angles, values(points, CustomPoint::inertia), between, custom.turns());
        return (payload, process) -> new CustomEffort(torque, inertia, payload, friction, viscous, process);
    }

    private static TableCurve straight(double[] places, double[] values) {
        return TableCurve.of(places, values, TableInterpolation.LINEAR, false);
    }

    private static <T> double[] values(List<T> points, Function<T, Quantity> value) {
        return points.stream().mapToDouble(point -> value.apply(point).si()).toArray();
    }
}
