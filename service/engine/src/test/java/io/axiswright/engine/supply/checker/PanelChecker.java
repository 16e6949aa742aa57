package io.axiswright.engine.supply.checker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.supply.Feeder;
import io.axiswright.engine.supply.LoadUse;
import io.axiswright.engine.supply.SupplyLoad;
import io.axiswright.engine.supply.SupplyRequest;
import io.axiswright.engine.supply.SupplyResult;
import io.axiswright.engine.supply.TransformerNeed;
import io.axiswright.engine.supply.TransformerRating;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A second reading of what stands behind transformers, from request and answer alone. It uses the records that state them, and no
 * class that groups, sizes or chooses.
 */
public final class PanelChecker {

    private static final double EXACT = 1e-6;
    private static final double WINDOW = 0.1;

    private final SupplyRequest request;
    private final SupplyResult result;
    private final String seed;
    private final Map<String, SupplyLoad> loads = new HashMap<>();

    private PanelChecker(String seed, SupplyRequest request, SupplyResult result) {
        this.seed = seed;
        this.request = request;
        this.result = result;
        request.loads().forEach(load -> loads.put(load.id(), load));
    }

    /** Checks a supply without DC buses. */
    public static void check(String seed, SupplyRequest request, SupplyResult result) {
        new PanelChecker(seed, request, result).run();
    }

    private void run() {
        everyLoadIsSomewhereOnce();
        result.transformers().forEach(this::check);
        leakageStaysBehind();
    }

    private void everyLoadIsSomewhereOnce() {
        var placed = new ArrayList<>(result.unfed());
        result.circuits().stream()
                .filter(circuit -> circuit.use() != LoadUse.TRANSFORMER)
                .forEach(circuit -> placed.addAll(circuit.loads()));
        assertThat(placed).as(seed).containsExactlyInAnyOrderElementsOf(loads.keySet());
    }

    private void check(TransformerNeed need) {
        String as = seed + " " + need.id();
        List<BranchCircuit> behind = result.circuits().stream()
                .filter(circuit -> need.id().equals(circuit.transformer()))
                .toList();
        TransformerRating rating = need.rating();
        if (rating == null) {
            assertThat(behind).as(as).isEmpty();
            assertThat(need.primaryCircuit()).as(as).isNull();
            assertThat(result.unfed()).as(as).containsAll(need.loads());
            return;
        }
        assertThat(behind.stream().flatMap(circuit -> circuit.loads().stream()).toList())
                .as(as)
                .containsExactlyInAnyOrderElementsOf(need.loads());
        behind.forEach(circuit -> voltageSuits(as, circuit, need));
        double heating = heating(need);
        assertThat(rating.power().si())
                .as(as)
                .isGreaterThanOrEqualTo(phases(need) * need.secondary().si() * heating - 1e-3);
        primary(as, need, heating);
        feeder(as, need, rating, behind);
        assertThat(need.faultCurrent().si()).as(as).isLessThanOrEqualTo(mostPassedOn(need) + EXACT);
    }

    private void voltageSuits(String as, BranchCircuit circuit, TransformerNeed need) {
        assertThat(circuit.voltage()).as(as).isEqualTo(need.secondary());
        circuit.loads().stream()
                .map(loads::get)
                .forEach(load -> assertThat(
                                circuit.voltage().si() / load.ratedVoltage().si())
                        .as(as)
                        .isBetween(1 - WINDOW - EXACT, 1 + WINDOW + EXACT));
    }

    /** What the loads draw, seen from the other side: equal power. */
    private void primary(String as, TransformerNeed need, double heating) {
        BranchCircuit primary = result.circuits().stream()
                .filter(circuit -> circuit.id().equals(need.primaryCircuit()))
                .findFirst()
                .orElseThrow();
        double ratio = need.secondary().si() / request.mains().voltage().si();
        double factor = request.codeBasis() == CodeBasis.NFPA_79 ? 1.25 : 1;
        assertThat(primary.use()).as(as).isEqualTo(LoadUse.TRANSFORMER);
        assertThat(primary.transformer()).as(as).isNull();
        assertThat(primary.loads()).as(as).containsExactly(need.id());
        assertThat(primary.current().si()).as(as).isCloseTo(ratio * heating, within(EXACT));
        assertThat(primary.designCurrent().si()).as(as).isCloseTo(factor * ratio * heating, within(EXACT));
        assertThat(primary.lines())
                .as(as)
                .hasSize(
                        phases(need) > 1
                                ? 3
                                : Math.min(2, result.feeder().lines().size()));
    }

    private void feeder(String as, TransformerNeed need, TransformerRating rating, List<BranchCircuit> behind) {
        Feeder feeder = Objects.requireNonNull(need.feeder());
        assertThat(feeder.voltage()).as(as).isEqualTo(need.secondary());
        assertThat(feeder.designCurrent().si())
                .as(as)
                .isCloseTo(need.designCurrent().si(), within(EXACT));
        assertThat(feeder.leakageCurrent().si())
                .as(as)
                .isCloseTo(
                        behind.stream()
                                .mapToDouble(c -> c.leakageCurrent().si())
                                .sum(),
                        within(EXACT));
        if (feeder.device() != null) {
            double device = Objects.requireNonNull(feeder.deviceRating()).si();
            assertThat(device)
                    .as(as)
                    .isBetween(
                            feeder.designCurrent().si() - EXACT,
                            rating.secondaryDeviceLimit().si() + EXACT);
        }
    }

    /** What comes back to the secondary does not flow in the protective conductor of the mains. */
    private void leakageStaysBehind() {
        double ofMains = result.circuits().stream()
                .filter(circuit -> circuit.transformer() == null && circuit.use() != LoadUse.TRANSFORMER)
                .flatMap(circuit -> circuit.loads().stream())
                .mapToDouble(load ->
                        Objects.requireNonNull(loads.get(load)).leakageCurrent().si())
                .sum();
        assertThat(result.feeder().leakageCurrent().si()).as(seed).isCloseTo(ofMains, within(EXACT));
    }

    private double heating(TransformerNeed need) {
        double sum = 0;
        double thermal = 0;
        double most = 0;
        for (String id : need.loads()) {
            SupplyLoad load = Objects.requireNonNull(loads.get(id));
            sum += load.ratedCurrent().si();
            thermal += load.thermalCurrent().si();
            most = Math.max(most, load.ratedCurrent().si());
        }
        return request.codeBasis() == CodeBasis.NFPA_79 ? sum : Math.max(most, thermal);
    }

    private double mostPassedOn(TransformerNeed need) {
        return 1.5
                * request.mains().prospectiveFaultCurrent().si()
                * request.mains().voltage().si()
                / need.secondary().si();
    }

    private static double phases(TransformerNeed need) {
        return switch (need.feed()) {
            case THREE_PHASE -> Math.sqrt(3);
            case ONE_PHASE -> 1;
            case DC_BUS -> throw new AssertionError("no transformer for direct current");
        };
    }
}
