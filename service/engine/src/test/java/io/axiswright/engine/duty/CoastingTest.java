package io.axiswright.engine.duty;

import static io.axiswright.engine.duty.Fixtures.ANY;
import static io.axiswright.engine.duty.Fixtures.travel;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.RotaryDamping;
import io.axiswright.engine.quantity.Torque;
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
