package io.axiswright.engine.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.quantity.Current;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Generated supplies: the answer is re-derived from the answer and the request alone, and must not change with order. */
class SupplyAuditTest {

    private static final double EXACT = 1e-6;

    private static SupplyRequest request(SplittableRandom random, double scale) {
        var basis = CodeBasis.values()[random.nextInt(2)];
        boolean neutral = random.nextBoolean();
        var loads = new ArrayList<SupplyLoad>();
        for (int k = random.nextInt(1, 25); k > 0; k--) {
            boolean three = random.nextBoolean();
            double amperes = random.nextInt(1, 60) / 4.0;
            loads.add(Plant.load(
                    "load" + k,
                    LoadUse.values()[random.nextInt(3)],
                    three ? Feed.THREE_PHASE : Feed.ONE_PHASE,
                    three || random.nextBoolean() || !neutral ? 400 : 230,
                    scale * amperes,
                    scale * amperes * random.nextInt(2, 5) / 4.0,
                    scale * random.nextInt(20, 50),
                    random.nextInt(1, 6),
                    1e4,
                    0.001 * random.nextInt(0, 4),
                    random.nextInt(3) == 0 ? null : "zone" + random.nextInt(3)));
        }
        double[] ratings = {2, 4, 6, 10, 16, 20, 25, 32, 40, 63, 100, 160, 250, 400};
        var devices =
                Plant.breakers(basis, Arrays.stream(ratings).map(r -> r * scale).toArray());
        var system = neutral ? SupplySystem.THREE_PHASE_FOUR_WIRE : SupplySystem.THREE_PHASE_THREE_WIRE;
        return Plant.request(basis, Plant.mains(system, 400), loads, devices);
    }

    @Test
    void everyAnswerHolds() {
        for (int seed = 0; seed < 300; seed++) {
            var request = request(new SplittableRandom(seed), 1);
            audit("seed " + seed, request, new SupplySizing().size(request));
        }
    }

    private static void audit(String seed, SupplyRequest request, SupplyResult result) {
        var loads = request.loads().stream().collect(Collectors.toMap(SupplyLoad::id, l -> l));
        var devices = request.devices().stream().collect(Collectors.toMap(ProtectiveDevice::id, d -> d));
        assertThat(result.circuits().stream().flatMap(c -> c.loads().stream()).toList())
                .as(seed)
                .containsExactlyInAnyOrderElementsOf(loads.keySet());
        var perLine = new HashMap<String, List<SupplyLoad>>();
        for (var circuit : result.circuits()) {
            var on = circuit.loads().stream().map(loads::get).toList();
            auditCircuit(seed, request.codeBasis(), circuit, on, devices);
            circuit.lines()
                    .forEach(l ->
                            perLine.computeIfAbsent(l, _ -> new ArrayList<>()).addAll(on));
        }
        double feeder = perLine.values().stream()
                .mapToDouble(on -> feederCurrent(request.codeBasis(), on))
                .max()
                .orElseThrow();
        assertThat(result.feeder().designCurrent().si()).as(seed).isCloseTo(feeder, within(EXACT));
        assertThat(result.feeder().leakageCurrent().si())
                .as(seed)
                .isCloseTo(
                        request.loads().stream()
                                .mapToDouble(l -> l.leakageCurrent().si())
                                .sum(),
                        within(EXACT));
        result.balance()
                .lines()
                .forEach(line -> assertThat(line.current().si())
                        .as(seed)
                        .isCloseTo(
                                perLine.getOrDefault(line.line(), List.of()).stream()
                                        .mapToDouble(l -> l.ratedCurrent().si())
                                        .sum(),
                                within(EXACT)));
        assertThat(result.balance().heaviestAtLeast().si())
                .as(seed)
                .isLessThanOrEqualTo(result.balance().heaviest().si() + EXACT);
    }

    private static void auditCircuit(
            String seed,
            CodeBasis basis,
            BranchCircuit circuit,
            List<SupplyLoad> on,
            Map<String, ProtectiveDevice> devices) {
        var as = seed + " " + circuit.id();
        assertThat(on).as(as).extracting(SupplyLoad::use).containsOnly(circuit.use());
        assertThat(on).as(as).allMatch(l -> Objects.equals(l.zone(), circuit.zone()));
        assertThat(on).as(as).allMatch(l -> on.size() <= l.maxUnitsPerCircuit());
        assertThat(on)
                .as(as)
                .allMatch(
                        l -> Math.abs(circuit.voltage().si() / l.ratedVoltage().si() - 1) <= 0.1);
        double sum = on.stream().mapToDouble(l -> l.ratedCurrent().si()).sum();
        double most = on.stream().mapToDouble(l -> l.ratedCurrent().si()).max().orElseThrow();
        double design = sum;
        if (basis == CodeBasis.NFPA_79) {
            design = circuit.use() == LoadUse.CONTROL_SUPPLY ? 1.25 * sum : 1.25 * most + (sum - most);
        }
        assertThat(circuit.designCurrent().si()).as(as).isCloseTo(design, within(EXACT));
        assertThat(circuit.current().si()).as(as).isCloseTo(sum, within(EXACT));
        if (circuit.device() != null) {
            var device = Objects.requireNonNull(devices.get(circuit.device()));
            assertThat(device.codeBasis()).as(as).isEqualTo(basis);
            assertThat(device.poles()).as(as).isEqualTo(circuit.poles());
            assertThat(device.rating().si()).as(as).isGreaterThanOrEqualTo(design - EXACT);
            assertThat(on).as(as).allMatch(l -> {
                Current limit = l.maxProtectiveDevice();
                return limit == null || device.rating().si() <= limit.si() + EXACT;
            });
        } else {
            assertThat(on).as(as).hasSize(1); // never put together where no device serves
        }
    }

    private static double feederCurrent(CodeBasis basis, List<SupplyLoad> on) {
        double most = on.stream().mapToDouble(l -> l.ratedCurrent().si()).max().orElseThrow();
        double sum = on.stream().mapToDouble(l -> l.ratedCurrent().si()).sum();
        double thermal = on.stream().mapToDouble(l -> l.thermalCurrent().si()).sum();
        // 430.24: 125 % of the largest motor, 125 % of what runs without pause, the rest once
        double motor = on.stream()
                .filter(l -> l.use() != LoadUse.CONTROL_SUPPLY)
                .mapToDouble(l -> l.ratedCurrent().si())
                .max()
                .orElse(0);
        double pauseless = on.stream()
                .filter(l -> l.use() == LoadUse.CONTROL_SUPPLY)
                .mapToDouble(l -> l.ratedCurrent().si())
                .sum();
        return basis == CodeBasis.NFPA_79 ? 0.25 * motor + 0.25 * pauseless + sum : Math.max(most, thermal);
    }

    @Test
    void theOrderOfTheRequestDoesNotMatter() {
        for (int seed = 0; seed < 60; seed++) {
            var request = request(new SplittableRandom(seed), 1);
            var loads = new ArrayList<>(request.loads());
            var devices = new ArrayList<>(request.devices());
            Collections.shuffle(loads, new Random(seed));
            Collections.shuffle(devices, new Random(seed));

            assertThat(new SupplySizing().size(Plant.request(request.codeBasis(), request.mains(), loads, devices)))
                    .as("seed %d", seed)
                    .isEqualTo(new SupplySizing().size(request));
        }
    }

    /** Twice the currents with twice the devices: the same circuits on the same lines. */
    @Test
    void scalesWithTheCurrents() {
        for (int seed = 0; seed < 60; seed++) {
            var once = new SupplySizing().size(request(new SplittableRandom(seed), 1));
            var twice = new SupplySizing().size(request(new SplittableRandom(seed), 2));

            assertThat(twice.circuits())
                    .as("seed %d", seed)
                    .extracting(BranchCircuit::loads, BranchCircuit::lines)
                    .containsExactlyElementsOf(once.circuits().stream()
                            .map(c -> tuple(c.loads(), c.lines()))
                            .toList());
            assertThat(twice.feeder().designCurrent().si())
                    .as("seed %d", seed)
                    .isCloseTo(2 * once.feeder().designCurrent().si(), within(EXACT));
        }
    }
}
