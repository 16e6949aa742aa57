package io.axiswright.engine.duty;

import static io.axiswright.engine.duty.Fixtures.ANY;
import static io.axiswright.engine.duty.Fixtures.travel;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Custom;
import io.axiswright.engine.design.CustomPoint;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.RotaryTable;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.TableInterpolation;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.design.Unbalance;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.RotaryDamping;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What an axis coasts under. */
class CoastingTest {

    private static CoastLoad load(Mechanism mechanism) {
        Axis axis = Fixtures.axis("a", mechanism, null, ANY, travel(0.1, 1, new Triangular()));
        return Coasting.of(axis, AxisLoad.of(axis), 0.001).pieces().getFirst().bare();
    }

    private static Screw screw(double efficiency, double backDriving) {
        return new Screw(
                new Length(0.004),
                new Length(0.02),
                new Length(0.5),
                new Mass(50),
                new Angle(Math.PI / 2),
                efficiency,
                backDriving,
                null);
    }

    /**
     * A stated 0 stands for all that locks. At 0.4 friction is 1/0.4 − 1 = 1.5 of the load, half of it too much for the load: −0.5. At 0.7
     * it is 0.43 and locks nothing in motion: 0 stays.
     */
    @Test
    void aStatedLockCoastsByTheOtherEfficiency() {
        assertThat(load(screw(0.4, 0)).links().getFirst().backDriving()).isCloseTo(-0.5, within(1e-12));
        assertThat(load(screw(0.7, 0)).links().getFirst().backDriving()).isZero();
        assertThat(load(screw(0.4, 0.2)).links().getFirst().backDriving()).isEqualTo(0.2);
    }

    /**
     * A table of inertia that goes from 0.02 to 0.06 and back twice a turn under dry and viscous friction, integrated step by step by
     * w·dJ/dangle·w/2 + J·dw/dt = −friction from 40 places: none runs longer or farther than one of 0.061 kg·m² throughout.
     */
    @Test
    void noStopByFrictionIsLongerThanTheBound() {
        List<CustomPoint> points = new ArrayList<>();
        for (int k = 0; k <= 4; k++) {
            points.add(
                    new CustomPoint(new Angle(k * Math.PI / 2), new Torque(0), new Inertia(k % 2 == 0 ? 0.02 : 0.06)));
        }
        Custom table = new Custom(
                points, TableInterpolation.LINEAR, true, null, new Torque(0.5), new RotaryDamping(0.01), null);
        Axis axis = Fixtures.axis("t", table, null, ANY, Fixtures.turn(7, 1, new Triangular()));
        CoastLoad bound =
                Coasting.of(axis, AxisLoad.of(axis), 0.001).pieces().getFirst().bare();
        assertThat(bound.inertia()).isCloseTo(0.06, within(1e-15));
        assertThat(bound.weight()).isZero();
        double[] most = run(0, 10, angle -> 0.061, _ -> 0);
        double longest = 0;
        double farthest = 0;
        for (int k = 0; k < 40; k++) {
            double[] real = run(
                    k * Math.PI / 20,
                    10,
                    angle -> 0.021 + 0.08 / Math.PI * rise(angle),
                    angle -> (angle % Math.PI < Math.PI / 2 ? 1 : -1) * 0.08 / Math.PI);
            assertThat(real[0]).isLessThan(most[0] * (1 + 1e-3));
            assertThat(real[1]).isLessThan(most[1] * (1 + 1e-3));
            longest = Math.max(longest, real[0]);
            farthest = Math.max(farthest, real[1]);
        }
        assertThat(farthest).isGreaterThan(most[1] * 0.9);
        assertThat(longest).isGreaterThan(most[0] * 0.5);
        // J/k·ln(1 + k·w/C) of J·dw/dt = −C − k·w
        assertThat(most[0]).isCloseTo(0.061 / 0.01 * Math.log(1.2), within(1e-3));
        assertThat(bound.friction()).isEqualTo(0.5);
        assertThat(bound.viscous()).isEqualTo(0.01);
    }

    /** How far an angle is from the last place of least inertia, or from the next if that is nearer. */
    private static double rise(double angle) {
        double within = angle % Math.PI;
        return Math.min(within, Math.PI - within);
    }

    /** Time and way to rest under 0.5 N·m and 0.01 N·m·s, by steps of 20 µs. */
    private static double[] run(double from, double speed, DoubleUnaryOperator inertia, DoubleUnaryOperator slope) {
        double step = 2e-5;
        double angle = from;
        double w = speed;
        double time = 0;
        while (w > 0) {
            double half = w
                    - step
                            / 2
                            * (0.5 + 0.01 * w + slope.applyAsDouble(angle) * w * w / 2)
                            / inertia.applyAsDouble(angle);
            double middle = angle + step / 2 * w;
            w -= step
                    * (0.5 + 0.01 * half + slope.applyAsDouble(middle) * half * half / 2)
                    / inertia.applyAsDouble(middle);
            angle += step * half;
            time += step;
        }
        return new double[] {time, angle - from};
    }

    /** The bearing of a tilted table with 2·9.80665·0.1·sin 90° N·m at most rubs wherever the table stands. */
    @Test
    void anUnbalancedTableCoastsUnderItsBearing() {
        var unbalance = new Unbalance(new Mass(2), new Length(0.1), new Angle(Math.PI / 2), new Angle(0));
        var table = new RotaryTable(new Inertia(0.5), new Torque(3), 1, null, unbalance, new RotaryDamping(0.2));
        Axis axis = Fixtures.axis("t", table, null, ANY, Fixtures.turn(7, 1, new Triangular()));
        for (CoastLoad load :
                Coasting.of(axis, AxisLoad.of(axis), 0.001).pieces().getFirst().loads()) {
            assertThat(load.friction()).isEqualTo(3);
            assertThat(load.viscous()).isEqualTo(0.2);
            assertThat(Math.abs(load.weight())).isCloseTo(1.96133, within(1e-9));
        }
    }

    /** Friction stated at the drum is what the drum feels, two parts of rope or one. */
    @Test
    void aHoistCoastsUnderTheFrictionOfItsDrum() {
        for (int reeving : new int[] {1, 2}) {
            Hoist hoist = new Hoist(
                    new Length(0.4),
                    new Inertia(0.1),
                    new Mass(100),
                    new Mass(100),
                    reeving,
                    1,
                    null,
                    null,
                    new Torque(1.5),
                    new RotaryDamping(0.4));
            assertThat(load(hoist).friction()).isCloseTo(1.5, within(1e-12));
            assertThat(load(hoist).viscous()).isCloseTo(0.4, within(1e-12));
        }
    }
}
