package io.axiswright.engine.stopping;

import static io.axiswright.engine.stopping.StoppingFixtures.brake;
import static io.axiswright.engine.stopping.StoppingFixtures.shuttle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.duty.CoastLoad;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.LeadingDerivations;
import io.axiswright.engine.quantity.Torque;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Whatever the axis, what is printed beside the figures of its stop without torque leads to them. */
class CoastDerivationsTest {

    private static final long SEED = 90;

    private static CoastLoad random(SplittableRandom random) {
        return new CoastLoad(
                random.nextDouble(0, 0.05),
                random.nextInt(3) == 0 ? 0 : random.nextDouble(-8, 8),
                random.nextBoolean() ? random.nextDouble(0, 4) : 0,
                random.nextBoolean() ? random.nextDouble(0, 0.3) : 0,
                List.of(
                        new CoastLoad.Link(1, random.nextDouble(0.7, 1), random.nextDouble(0.5, 1), 1e-4, 0.05),
                        new CoastLoad.Link(
                                random.nextDouble(1, 10),
                                random.nextDouble(0.8, 1),
                                random.nextDouble(0.7, 1),
                                1e-5,
                                0)),
                random.nextDouble(2e-4, 2e-3));
    }

    private static List<Derivation> derivations(CoastLoad load, double speed, HoldingBrake brake) {
        var axis = new StoppingAxis(
                0, "z", null, shuttle(load, speed, 0.2, 0.3, 0.4, true), brake, new Torque(1000), null);
        return new StoppingStudy()
                .study(new StoppingRequest(List.of(axis), List.of()))
                .derivations();
    }

    @Test
    void everyFormulaLeadsToItsResult() {
        Set<String> worked = new TreeSet<>();
        for (int n = 0; n < 300; n++) {
            var random = new SplittableRandom(SEED + n);
            HoldingBrake brake = brake(random.nextDouble(9, 14), random.nextDouble(0, 0.12), 0.8, null);
            double speed = random.nextDouble(-250, 250);
            worked.addAll(LeadingDerivations.assertTheyLead(derivations(random(random), speed, brake), Set.of()));
        }
        assertThat(worked).containsExactlyInAnyOrder("w_1", "t_0", "s_0", "E_brake", "M_gear");
    }

    /**
     * By hand: 0.01 kg·m² at 100 rad/s, 2 N·m of friction, brake 10 N·m after 0.1 s. It coasts down at 200 rad/s² to 80 rad/s, then at
     * 1200 rad/s² to rest in 0.0667 s; the brake turns 10/12 of ½·0.01·80² = 32 J into heat.
     */
    @Test
    void oneStopByHand() {
        List<Derivation> all = derivations(StoppingFixtures.load(0.01, 0, 2, 0), 100, brake(10, 0.1, 1.0, null));
        assertThat(all).extracting(Derivation::symbol).containsExactly("w_1", "t_0", "s_0", "E_brake", "M_gear");
        Derivation time = all.get(1);
        assertThat(time.formula()).startsWith("t_0 = t_apply + J_1·w_1/(T_brake + T_1)");
        assertThat(time.inputs().sequencedValues())
                .extracting(quantity -> Math.round(quantity.si() * 1e6) / 1e6)
                .containsExactly(0.1, 0.01, 80.0, 10.0, 2.0);
        assertThat(time.result().si()).isCloseTo(0.1 + 0.01 * 80 / 12, within(1e-9));
        assertThat(all.get(3).result().si()).isCloseTo(32 * 10 / 12.0, within(1e-9));
    }
}
