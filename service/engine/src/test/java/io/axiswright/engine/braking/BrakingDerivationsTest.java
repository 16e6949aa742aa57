package io.axiswright.engine.braking;

import static io.axiswright.engine.braking.BrakingFixtures.ZONE;
import static io.axiswright.engine.braking.BrakingFixtures.axis;
import static io.axiswright.engine.braking.BrakingFixtures.brakingUnit;
import static io.axiswright.engine.braking.BrakingFixtures.shuttle;
import static io.axiswright.engine.braking.BrakingFixtures.study;
import static io.axiswright.engine.braking.BrakingFixtures.unit;
import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.LeadingDerivations;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Whatever the bus, what is printed beside a number leads to it. */
class BrakingDerivationsTest {

    private static final long SEED = 31;

    private static BrakingAxis random(int index, SplittableRandom random, boolean related) {
        double inertia = random.nextDouble(0.003, 0.02);
        double speed = random.nextDouble(60, 200);
        DriveUnit unit = unit(random.nextDouble(0.8, 2), random.nextDouble(5, 40), 1e-3, 820);
        double ramp = random.nextDouble(0.05, 0.3);
        double period = related ? 2 : random.nextDouble(1.5, 2.5);
        return axis(
                index,
                "bus",
                ZONE.id(),
                unit,
                shuttle(inertia, speed, ramp, 0.3, period - 0.3 - 2 * ramp),
                inertia,
                ramp);
    }

    @Test
    void everyFormulaLeadsToItsResult() {
        Set<String> worked = new TreeSet<>();
        Set<BrakingVerdict> verdicts = new TreeSet<>();
        Set<CycleBasis> bases = new TreeSet<>();
        for (int n = 0; n < 60; n++) {
            var random = new SplittableRandom(SEED + n);
            boolean related = n % 4 > 0;
            List<BrakingAxis> axes = IntStream.range(0, 1 + n % 3)
                    .mapToObj(k -> random(k, random, related))
                    .toList();
            BrakingResult result = study(axes, brakingUnit("b", 1, n % 2 == 0 ? 40 : 120));
            verdicts.add(result.groups().getFirst().verdict());
            bases.add(result.groups().getFirst().cycleBasis());
            worked.addAll(LeadingDerivations.assertTheyLead(result.derivations(), Set.of()));
        }
        assertThat(verdicts)
                .contains(BrakingVerdict.ABSORBED, BrakingVerdict.NEEDS_BRAKING_UNIT, BrakingVerdict.NONE_FITS);
        assertThat(bases).contains(CycleBasis.BOUND, CycleBasis.PERIODIC);
        assertThat(worked)
                .contains(
                        "E_absorbable",
                        "I_chopper",
                        "P_mean",
                        "V_floor",
                        "V_peak CYCLE",
                        "V_peak STOP_ZONE front",
                        "theta_resistor");
    }

    /**
     * By hand: 0.008 kg·m² at 100 rad/s brakes in 0.1 s with 8 N·m, Km 2: it returns 800·(1 − t/0.1) − 16 − 10 W and no more from 96.75 ms
     * on, where 800·(1 − t/0.1) = 26; the area is ½·774 W·96.75 ms = 37.44 J. On 1000 µF at √2·528 V = 746.7 V that makes
     * sqrt(746.7² + 2·37.44/0.001) = 795.3 V.
     */
    @Test
    void onePeakByHand() {
        DriveUnit unit = unit(2, 10, 1e-3, 820);
        BrakingResult result = study(List.of(axis(0, null, unit, shuttle(0.008, 100, 0.1, 0.3, 1.5))));
        Derivation peak = result.derivations().stream()
                .filter(derivation -> derivation.symbol().equals("V_peak CYCLE"))
                .findFirst()
                .orElseThrow();
        double most = 774 * 0.09675 / 2;
        assertThat(peak.result().si()).isCloseTo(Math.sqrt(2 * 528 * 528 + 2 * most / 1e-3), within(1e-6));
        assertThat(requireNonNull(peak.inputs().get("t_peak")).si()).isCloseTo(0.4 + 0.09675, within(1e-9));
        assertThat(requireNonNull(peak.inputs().get("p_most")).si()).isCloseTo(774, within(1e-9));
        assertThat(requireNonNull(peak.inputs().get("V_start")).si()).isCloseTo(Math.sqrt(2) * 528, within(1e-6));
    }
}
