package io.axiswright.engine.controlpower;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.LaidCable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CablePickerTest {

    private static final List<String> SIZES = List.of("0.5 mm2", "0.75 mm2", "1.5 mm2", "4 mm2");
    private static final SourceVoltages SOURCE = new SourceVoltages(23.76, 24);

    /** Every choice of cables tried: the greedy one holds exactly when one of them does, and can give nothing back. */
    @Test
    void holdsWheneverAnyChoiceHolds() {
        var random = new SplittableRandom(20265);
        var conductor = Conductors.temperature(ControlParts.SITE);
        int feasible = 0;
        double extra = 0;
        for (int k = 0; k < 120; k++) {
            List<CableAssembly> cables = new ArrayList<>();
            for (int s = 0; s < SIZES.size(); s++) {
                cables.add(ControlParts.cable("c" + s, 10 + s * random.nextInt(5, 20), 40, SIZES.get(s)));
            }
            boolean together = random.nextBoolean();
            var network = new ChainNetwork("p", nodes(random), conductor);
            ChainPlan plan = new CablePicker(cables, List.of(), ControlParts.SITE, together)
                    .pick(network, SOURCE, Double.POSITIVE_INFINITY);
            Optional<Double> cheapest = cheapest(network, cables, together);
            assertThat(plan.holds()).as("seed 20265, draw %d", k).isEqualTo(cheapest.isPresent());
            if (cheapest.isPresent()) {
                feasible++;
                double cost = plan.cables().stream()
                        .flatMap(Optional::stream)
                        .mapToDouble(CablePickerTest::price)
                        .sum();
                assertThat(cost).as("seed 20265, draw %d", k).isGreaterThanOrEqualTo(cheapest.get());
                extra += cost / cheapest.get() - 1;
                assertNothingToGiveBack(plan, cables, together, k);
            }
        }
        assertThat(feasible).isBetween(30, 119);
        assertThat(extra / feasible).as("mean extra cost over the best choice").isLessThan(0.1);
    }

    private static void assertNothingToGiveBack(
            ChainPlan plan, List<CableAssembly> cables, boolean together, int draw) {
        for (int link = 0; link < plan.cables().size(); link++) {
            double price = price(plan.cables().get(link).orElseThrow());
            for (CableAssembly cheaper : cables) {
                if (price(cheaper) < price) {
                    List<Optional<LaidCable>> tried = new ArrayList<>(plan.cables());
                    tried.set(link, Optional.of(cheaper));
                    assertThat(holds(plan.network(), tried, together))
                            .as("seed 20265, draw %d", draw)
                            .isFalse();
                }
            }
        }
    }

    private static List<ControlNode> nodes(SplittableRandom random) {
        List<ControlNode> nodes = new ArrayList<>();
        for (int g = 0; g < 3; g++) {
            String upstream = g == 0 || random.nextInt(4) == 0 ? null : "g" + random.nextInt(g);
            var brake = random.nextBoolean() ? ControlParts.brake(random.nextDouble(5, 40), 4, 20.4) : null;
            nodes.add(ControlParts.node(
                    "g" + g, "p", g + 1, upstream, 20, ControlParts.load("x" + g, g, random.nextDouble(2, 25), brake)));
        }
        return nodes;
    }

    private static Optional<Double> cheapest(ChainNetwork network, List<CableAssembly> cables, boolean together) {
        int n = network.gateways().size();
        Optional<Double> best = Optional.empty();
        for (int choice = 0; choice < Math.pow(cables.size(), n); choice++) {
            List<Optional<LaidCable>> picked = new ArrayList<>();
            double cost = 0;
            for (int k = 0, rest = choice; k < n; k++, rest /= cables.size()) {
                CableAssembly cable = cables.get(rest % cables.size());
                picked.add(Optional.of(cable));
                cost += price(cable);
            }
            if (holds(network, picked, together) && (best.isEmpty() || cost < best.get())) {
                best = Optional.of(cost);
            }
        }
        return best;
    }

    private static boolean holds(ChainNetwork network, List<Optional<LaidCable>> cables, boolean together) {
        double[] resistance = ChainPlan.resistances(cables, Conductors.temperature(ControlParts.SITE));
        return ChainState.of(network, pulling -> network.tree(resistance, pulling), SOURCE, together)
                .map(ChainState::holds)
                .orElse(false);
    }

    private static double price(LaidCable cable) {
        return cable.amount().doubleValue();
    }
}
