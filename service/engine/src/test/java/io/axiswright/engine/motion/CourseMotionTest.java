package io.axiswright.engine.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.Interpolation;
import io.axiswright.engine.design.PositionCourse;
import io.axiswright.engine.design.PositionPoint;
import io.axiswright.engine.design.SpeedCourse;
import io.axiswright.engine.design.SpeedPoint;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Speed;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Courses through points: what the curve must do at every point, whatever way it was found. */
class CourseMotionTest {

    private static PositionCourse course(
            double[] times, double[] positions, Interpolation way, double from, double to) {
        List<PositionPoint> points = new ArrayList<>();
        for (int k = 0; k < times.length; k++) {
            points.add(new PositionPoint(new Time(times[k]), new Length(positions[k])));
        }
        return new PositionCourse(points, way, new Speed(from), new Speed(to), null, null);
    }

    /** A spline is the one curve of its degree that goes through the points, meets in its derivatives and has those ends. */
    @ParameterizedTest
    @EnumSource(Interpolation.class)
    void splinesMeetInTheirDerivatives(Interpolation way) {
        var random = new SplittableRandom(71);
        for (int n = 0; n < 40; n++) {
            int count = 2 + random.nextInt(40);
            double[] times = new double[count];
            double[] positions = new double[count];
            double time = random.nextDouble(-5, 5);
            for (int k = 0; k < count; k++) {
                times[k] = time;
                positions[k] = random.nextDouble(-1, 1);
                time += random.nextDouble(0.02, 0.2);
            }
            List<Polynomial> speeds = Spline.speeds(way, times, positions, 0.3, -0.2);
            int smooth = way == Interpolation.CUBIC_SPLINE ? 1 : 3;
            for (int k = 0; k < speeds.size(); k++) {
                double h = times[k + 1] - times[k];
                assertThat(speeds.get(k).integral(0, h)).isCloseTo(positions[k + 1] - positions[k], within(1e-10));
                assertThat(speeds.get(k).degree()).isLessThanOrEqualTo(smooth + 1);
                Polynomial one = speeds.get(k);
                Polynomial two = k + 1 < speeds.size() ? speeds.get(k + 1) : null;
                for (int order = 0; two != null && order <= smooth; order++) {
                    double size = Math.max(1, Math.abs(one.at(h)));
                    assertThat(two.at(0)).as("order " + order).isCloseTo(one.at(h), within(1e-8 * size));
                    one = one.derivative();
                    two = two.derivative();
                }
            }
            double last = times[count - 1] - times[count - 2];
            assertThat(speeds.getFirst().at(0)).isCloseTo(0.3, within(1e-12));
            assertThat(speeds.getLast().at(last)).isCloseTo(-0.2, within(1e-9));
            if (way == Interpolation.QUINTIC_SPLINE) {
                assertThat(speeds.getFirst().derivative().at(0)).isCloseTo(0, within(1e-9));
                assertThat(speeds.getLast().derivative().at(last)).isCloseTo(0, within(1e-6));
            }
        }
    }

    /** Samples of a 3-4-5 move, s = 10u³ − 15u⁴ + 6u⁵, which is itself the quintic with these ends. */
    @Test
    void quinticSplineGivesAQuinticBack() {
        double[] times = new double[11];
        double[] positions = new double[11];
        for (int k = 0; k <= 10; k++) {
            double u = k / 10.0;
            times[k] = 2 * u;
            positions[k] = 0.4 * (10 * Math.pow(u, 3) - 15 * Math.pow(u, 4) + 6 * Math.pow(u, 5));
        }
        Motion motion = Motion.of(course(times, positions, Interpolation.QUINTIC_SPLINE, 0, 0));
        for (Motion.Stretch stretch : motion.stretches()) {
            double u = (stretch.start() + 0.3 * stretch.length()) / 2;
            assertThat(stretch.speed().at(0.3 * stretch.length()))
                    .isCloseTo(0.4 / 2 * 30 * u * u * (1 - u) * (1 - u), within(1e-10));
            assertThat(stretch.direction()).isEqualTo(1);
        }
        assertThat(motion.travel()).isCloseTo(0.4, within(1e-12));
    }

    @Test
    void thereAndBackIsCutWhereItTurns() {
        double[] times = {0, 1, 2};
        double[] positions = {0, 0.5, 0};
        Motion motion = Motion.of(course(times, positions, Interpolation.CUBIC_SPLINE, 0, 0));
        assertThat(motion.travel()).isCloseTo(0, within(1e-12));
        assertThat(motion.travelled()).isCloseTo(1, within(1e-12));
        assertThat(motion.stretches()).extracting(Motion.Stretch::direction).containsExactly(1, -1);
    }

    @Test
    void timesMustRise() {
        var course = new SpeedCourse(
                List.of(
                        new SpeedPoint(new Time(0), new Speed(0)),
                        new SpeedPoint(new Time(0.2), new Speed(1)),
                        new SpeedPoint(new Time(0.2), new Speed(0))),
                null,
                null);
        List<Fault> faults = new ArrayList<>();
        assertThat(SegmentMotion.of(course, "/s", faults)).isNull();
        assertThat(faults).extracting(Fault::pointer).containsExactly("/s/points/2/time");
    }
}
