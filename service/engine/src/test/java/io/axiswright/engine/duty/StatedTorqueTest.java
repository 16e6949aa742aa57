package io.axiswright.engine.duty;

import static io.axiswright.engine.duty.Fixtures.ANY;
import static io.axiswright.engine.duty.Fixtures.axis;
import static io.axiswright.engine.duty.Fixtures.table;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Gear;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.design.TorquePlace;
import io.axiswright.engine.design.TorquePoint;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;

/** Courses of stated torque against published cycles and an instant-by-instant model. */
class StatedTorqueTest {

    private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(12);

    private static TorquePoint point(double time, double speed, double torque) {
        return new TorquePoint(new Time(time), new AngularSpeed(speed), new Torque(torque));
    }

    /** Power in kW over minutes at constant speed, as torque at the motor shaft. */
    private static TorqueCourse minutes(double minutes, double from, double to) {
        return new TorqueCourse(
                List.of(point(0, 10, from), point(60 * minutes, 10, to)), TorquePlace.MOTOR_SHAFT, null);
    }

    private static double rms(Segment... segments) {
        AxisLoad load = AxisLoad.of(axis("a", table(1, 0, 1), new Gear(7, 0.8, null, new Inertia(0.1)), ANY, segments));
        return LoadSums.of(load.pieces(), load.period()).rmsTorque(0.3);
    }

    /**
     * Dubey, Fundamentals of Electrical Drives, ex. 4.3, p. 53: 0 to 400 kW in 5 min, 500 kW for 5, −400 kW for 4, idle 2;
     * printed 367 kW (367.140 unrounded). At constant speed rms power is rms torque times speed.
     */
    @Test
    void rampAndReturn() {
        assertThat(rms(minutes(5, 0, 400), minutes(5, 500, 500), minutes(4, -400, -400), minutes(2, 0, 0)))
                .isCloseTo(367.140, withinPercentage(0.01));
    }

    /** J. B. Gupta, Elements of Electric Drives, ex. 57, p. 152: 100 kW 10 min, 50 kW 8 min, idle 5 and 4 min: 66.67 kW. */
    @Test
    void idleTimeCounts() {
        assertThat(rms(minutes(10, 100, 100), minutes(5, 0, 0), minutes(8, 50, 50), minutes(4, 0, 0)))
                .isCloseTo(66.6667, withinPercentage(0.01));
    }

    /** The motor's own inertia comes on top of what is stated at its shaft. */
    @Test
    void rotorComesOnTopAtTheMotorShaft() {
        var course = new TorqueCourse(
                List.of(point(2, 0, 1), point(3, 20, 3), point(4, 0, -1)), TorquePlace.MOTOR_SHAFT, null);
        Axis axis = axis("a", table(1, 0, 1), new Gear(5, 0.8, null, new Inertia(0)), ANY, course);
        AxisLoad load = AxisLoad.of(axis);
        DutyFigures figures =
                new CourseFigures(load.course(0.1)).figures(load, LoadSums.of(load.pieces(), load.period()));
        assertThat(figures.peakTorque().si()).isCloseTo(3 + 0.1 * 20, within(1e-12));
        assertThat(figures.peakSpeed().si()).isCloseTo(20, within(1e-12));
        // 20 rad of the motor shaft in all, a fifth of it at the load
        assertThat(load.netTravel()).isCloseTo(20 / 5.0, within(1e-12));
    }

    /** Random courses at the load: each instant passes table and gear by the way its power goes. */
    @Test
    void loadSideAgreesWithQuadrature() {
        var random = new SplittableRandom(17);
        for (int n = 0; n < 50; n++) {
            double tableEfficiency = random.nextDouble(0.6, 1);
            double gearEfficiency = random.nextDouble(0.6, 1);
            List<TorquePoint> points = new ArrayList<>();
            double time = 0;
            for (int k = 0; k < 6; k++) {
                boolean end = k == 0 || k == 5;
                points.add(point(time, end ? 0 : random.nextDouble(-3, 3), random.nextDouble(-20, 20)));
                time += random.nextDouble(0.1, 1);
            }
            Axis axis = axis(
                    "seed 17 axis " + n,
                    table(0.4, 2, tableEfficiency),
                    new Gear(6, gearEfficiency, null, new Inertia(0)),
                    ANY,
                    new TorqueCourse(points, TorquePlace.LOAD, null));
            AxisLoad load = AxisLoad.of(axis);
            double sum = 0;
            double motored = 0;
            for (int k = 1; k < points.size(); k++) {
                Line speed =
                        Line.of(points.get(k - 1), points.get(k), p -> p.speed().si());
                Line effort = Line.of(
                        points.get(k - 1), points.get(k), p -> p.effort().si());
                double h = speed.length;
                double[] cuts = Stream.of(0.0, h, speed.zero(), effort.zero())
                        .filter(t -> t >= 0 && t <= h)
                        .mapToDouble(t -> t)
                        .sorted()
                        .toArray();
                for (int j = 1; j < cuts.length; j++) {
                    double from = cuts[j - 1];
                    double half = (cuts[j] - from) / 2;
                    sum += half
                            * GAUSS.integrate(x -> Math.pow(
                                    torque(speed, effort, from + half * (x + 1), tableEfficiency, gearEfficiency), 2));
                    motored += Math.max(
                            0,
                            half
                                    * GAUSS.integrate(x -> {
                                        double t = from + half * (x + 1);
                                        return torque(speed, effort, t, tableEfficiency, gearEfficiency)
                                                * 6
                                                * speed.at(t);
                                    }));
                }
            }
            LoadSums sums = LoadSums.of(load.pieces(), load.period());
            DutyFigures figures = new CourseFigures(load.course(0)).figures(load, sums);
            double rms = Math.sqrt(sum / load.period());
            assertThat(sums.rmsTorque(0)).as(axis.id()).isCloseTo(rms, within(1e-9 * rms));
            assertThat(figures.motoredEnergy().si()).as(axis.id()).isCloseTo(motored, within(1e-9 * motored));
        }
    }

    private static double torque(Line speed, Line effort, double t, double table, double gear) {
        double wanted = effort.at(t);
        boolean driving = wanted * speed.at(t) > 0;
        double behind = driving ? wanted / table : wanted * Math.max(0, 2 - 1 / table);
        return (driving ? behind / gear : behind * Math.max(0, 2 - 1 / gear)) / 6;
    }

    private record Line(double from, double slope, double length) {

        static Line of(TorquePoint one, TorquePoint two, java.util.function.ToDoubleFunction<TorquePoint> value) {
            double length = two.time().si() - one.time().si();
            double from = value.applyAsDouble(one);
            return new Line(from, (value.applyAsDouble(two) - from) / length, length);
        }

        double at(double t) {
            return from + slope * t;
        }

        double zero() {
            return -from / slope;
        }
    }
}
