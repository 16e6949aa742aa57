package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.BrakingUnit;
import io.axiswright.engine.catalogue.CurvePoint;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.duty.Course;
import io.axiswright.engine.duty.PowerBend;
import io.axiswright.engine.duty.StopModel;
import io.axiswright.engine.duty.StopRange;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Capacitance;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.HeatCapacity;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.MotorConstant;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.TemperatureRise;
import io.axiswright.engine.quantity.ThermalResistance;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.quantity.Voltage;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/** Invented drive units, braking units, courses and requests; the numbers belong to no component. */
final class BrakingFixtures {

    static final Mains MAINS = new Mains(
            SupplySystem.THREE_PHASE_FOUR_WIRE, new Voltage(480), 0.1, 0.1, new Frequency(60), new Current(10_000));
    static final Temperature AMBIENT = new Temperature(313.15);
    static final StopZone ZONE = new StopZone("front", StopCategory.CATEGORY_1, new Time(0.05), new Time(0.2), null);

    private BrakingFixtures() {}

    /** A drive unit by the data the braking study reads. */
    static DriveUnit unit(Feed feed, double rated, double km, double standby, double capacitance, double trip) {
        var curve = List.of(
                new CurvePoint(new AngularSpeed(0), new Torque(10)),
                new CurvePoint(new AngularSpeed(300), new Torque(8)));
        return new DriveUnit(
                "du",
                "drive unit",
                null,
                List.of(),
                "A",
                feed,
                new Voltage(rated),
                new Current(5),
                new Current(20),
                1,
                new Current(5000),
                new Current(0.001),
                new Inertia(0.001),
                new MotorConstant(km),
                curve,
                curve,
                new Temperature(313.15),
                new TemperatureRise(100),
                new Time(600),
                new Power(standby),
                new Capacitance(capacitance),
                new Voltage(trip),
                new Power(10),
                new Voltage(20),
                true,
                new Length(0.02),
                new Length(0.04),
                10);
    }

    /** Three-phase, 480 V. */
    static DriveUnit unit(double km, double standby, double capacitance, double trip) {
        return unit(Feed.THREE_PHASE, 480, km, standby, capacitance, trip);
    }

    /** A braking unit at a price, on at 780 V and off at 765 V, far from all its limits. */
    static BrakingUnit brakingUnit(String id, @Nullable Integer price, double resistance) {
        return brakingUnit(id, price, 780, 765, resistance, 0.1, 200, 5000, 50_000, 500);
    }

    static BrakingUnit brakingUnit(
            String id,
            @Nullable Integer price,
            double on,
            double off,
            double resistance,
            double tolerance,
            double current,
            double continuous,
            double pulse,
            double limitCelsius) {
        return new BrakingUnit(
                id,
                "braking unit",
                price == null ? null : new Money(BigDecimal.valueOf(price), "EUR"),
                List.of(),
                new Voltage(on),
                new Voltage(off),
                new Resistance(resistance),
                tolerance,
                new Current(current),
                new Power(continuous),
                new Energy(pulse),
                new HeatCapacity(500),
                new ThermalResistance(0.9),
                new Temperature(limitCelsius + 273.15),
                null,
                null);
    }

    /** A piece of a course by the coefficients of speed and torque. */
    record Stretch(double duration, double[] speed, double[] torque) {}

    static Stretch stretch(double duration, double speed, double acceleration, double torque) {
        return new Stretch(duration, new double[] {speed, acceleration}, new double[] {torque});
    }

    static Course course(Stretch... stretches) {
        List<Course.Piece> pieces = new ArrayList<>();
        double start = 0;
        for (Stretch s : stretches) {
            pieces.add(new Course.Piece(start, s.duration(), Polynomial.of(s.speed()), Polynomial.of(s.torque())));
            start += s.duration();
        }
        return new Course(pieces);
    }

    /** There at constant torque, run, back to rest, pause: inertia J in kg·m², speed w in rad/s, times in s. */
    static Course shuttle(double inertia, double speed, double ramp, double run, double pause) {
        double a = speed / ramp;
        return course(
                stretch(ramp, 0, a, inertia * a),
                stretch(run, speed, 0, 0.2),
                stretch(ramp, speed, -a, -inertia * a),
                stretch(pause, 0, 0, 0));
    }

    /** Even stops of a bare inertia in kg·m² within a time in s, from the speed of a course. */
    record EvenStops(Course course, double inertia, double duration) implements StopModel {

        @Override
        public double[] cuts() {
            return DoubleStream.concat(
                            course.pieces().stream().mapToDouble(Course.Piece::start),
                            DoubleStream.of(course.duration()))
                    .toArray();
        }

        private Course.Piece at(double beside) {
            return course.pieces().stream()
                    .filter(p -> p.start() <= beside && beside < p.end())
                    .findFirst()
                    .orElseThrow();
        }

        @Override
        public Course from(double instant, double beside) {
            Course.Piece piece = at(beside);
            return stopFrom(piece.speed().at(instant - piece.start()));
        }

        private Course stopFrom(double speed) {
            return BrakingFixtures.course(stretch(duration, speed, -speed / duration, -inertia * speed / duration));
        }

        @Override
        public PowerBend bend(double from, double to, double lossPerTorqueSquared) {
            Course.Piece piece = at((from + to) / 2);
            double a = from - piece.start();
            double b = to - piece.start();
            double speed = piece.speed().largestMagnitude(a, b);
            double rate = piece.speed().derivative().largestMagnitude(a, b);
            double bend = piece.speed().derivative().derivative().largestMagnitude(a, b);
            double k = inertia / duration;
            return new StopRange(speed, rate, bend, k * speed, k * rate, k * bend, 0)
                    .bend(to - from, duration, lossPerTorqueSquared);
        }

        @Override
        public StopModel within(double time) {
            return new EvenStops(course, inertia, time);
        }
    }

    /** One even stop. */
    static Course stop(double inertia, double speed, double time) {
        return course(stretch(time, speed, -speed / time, -inertia * speed / time));
    }

    /** An axis without stop zone. */
    static BrakingAxis axis(int index, @Nullable String group, DriveUnit unit, Course course) {
        return new BrakingAxis(index, "axis" + index, group, null, unit, course, null);
    }

    /** An axis that stops with the zone named. */
    static BrakingAxis axis(
            int index,
            @Nullable String group,
            String zone,
            DriveUnit unit,
            Course course,
            double inertia,
            double time) {
        var stops = new EvenStops(course, inertia, time);
        return new BrakingAxis(index, "axis" + index, group, zone, unit, course, stops);
    }

    static BrakingRequest request(List<BrakingAxis> axes, BrakingUnit... units) {
        return new BrakingRequest(MAINS, AMBIENT, axes, List.of(ZONE), List.of(units));
    }

    static BrakingResult study(List<BrakingAxis> axes, BrakingUnit... units) {
        return new BrakingStudy().study(request(axes, units));
    }

    /** A course of power given directly: durations and coefficients in turn. */
    static PowerCourse powers(double[] durations, double[]... coefficients) {
        List<PowerCourse.Piece> pieces = new ArrayList<>();
        double start = 0;
        for (int k = 0; k < durations.length; k++) {
            pieces.add(new PowerCourse.Piece(start, start + durations[k], Polynomial.of(coefficients[k])));
            start += durations[k];
        }
        return new PowerCourse(pieces, start);
    }

    static BusPower once(double duration, double... coefficients) {
        return BusPower.once(List.of(powers(new double[] {duration}, coefficients)));
    }
}
