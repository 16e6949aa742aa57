package io.axiswright.engine.controlpower;

import static io.axiswright.engine.controlpower.ControlParts.MAINS;
import static io.axiswright.engine.controlpower.ControlParts.SITE;
import static io.axiswright.engine.controlpower.ControlParts.brake;
import static io.axiswright.engine.controlpower.ControlParts.cable;
import static io.axiswright.engine.controlpower.ControlParts.device;
import static io.axiswright.engine.controlpower.ControlParts.load;
import static io.axiswright.engine.controlpower.ControlParts.node;
import static io.axiswright.engine.controlpower.ControlParts.spec;
import static io.axiswright.engine.controlpower.ControlParts.supply;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.design.LoadLaw;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ControlModesTest {

    /** 30 m of 0.75 mm², 26 mΩ/m at 20 °C, there and back at 60 °C. */
    private static final double WAY = 2 * 0.026 * 30 * (1 + 0.00393 * 40);

    /** So that no answer is another one by a second feed point. */
    private static final Length NO_CABLE_REACHES = new Length(900);

    private static final double SOURCE = 24 * 0.99;

    private static ControlPowerResult size(Site site, boolean together, double length, List<ControlNode> nodes) {
        return new ControlPowerSizing()
                .size(new ControlPowerRequest(
                        spec(0.2, together),
                        site,
                        MAINS,
                        nodes,
                        List.of(supply("s", 100, 40)),
                        List.of(cable("c", 10, length, "0.75 mm2"))));
    }

    private static double voltage(ControlPowerResult result, String subject, ControlMode mode) {
        return result.voltages().stream()
                .filter(v -> v.subject().equals(subject))
                .flatMap(v -> v.modes().stream())
                .filter(m -> m.mode() == mode)
                .findFirst()
                .orElseThrow()
                .voltage()
                .si();
    }

    private static ControlNode hub(double inrush, FieldLoad... devices) {
        var gateway = Copies.with(ControlParts.gateway(6, 19.2, 20), "inrushCurrent", new Current(inrush));
        return new ControlNode("g", gateway, "p", 1, null, new Length(10), new Length(10), List.of(), List.of(devices));
    }

    /** V = (V_s − R I + √((V_s − R I)² − 4 (1 + R G) R P)) / (2 (1 + R G)) behind one resistance. */
    private static double byHand(double power, double conductance, double current) {
        double rest = SOURCE - WAY * current;
        double factor = 1 + WAY * conductance;
        return (rest + Math.sqrt(rest * rest - 4 * factor * WAY * power)) / (2 * factor);
    }

    /** 6 W of the gateway, 0.3 A of a sensor, a camera of 12 W, and a valve of 0.4 A at 24 V that is an output. */
    @Test
    void everyModeOfOneGatewayByHand() {
        var result = size(
                SITE,
                true,
                30,
                List.of(hub(
                        1,
                        new FieldLoad(device("sensor", LoadLaw.CONSTANT_CURRENT, 0.3, false), 0),
                        new FieldLoad(device("camera", LoadLaw.CONSTANT_POWER, 0.5, false), 1),
                        new FieldLoad(device("valve", LoadLaw.RESISTIVE, 0.4, true), 2))));
        assertThat(voltage(result, "g", ControlMode.STANDBY)).isCloseTo(byHand(18, 0, 0.3), within(1e-9));
        assertThat(voltage(result, "g", ControlMode.RUNNING)).isCloseTo(byHand(18, 0, 0.3), within(1e-9));
        assertThat(voltage(result, "g", ControlMode.OUTPUTS_ON)).isCloseTo(byHand(18, 0.4 / 24, 0.3), within(1e-9));
        assertThat(voltage(result, "g", ControlMode.START_UP)).isCloseTo(byHand(12, 0, 1.3), within(1e-9));
        assertThat(result.chains().getFirst().modes())
                .extracting(ModeCurrent::mode)
                .containsExactly(
                        ControlMode.STANDBY, ControlMode.START_UP, ControlMode.RUNNING, ControlMode.OUTPUTS_ON);
        // the largest of all: outputs on takes 1.5 A, starting 1.8 A
        assertThat(result.supplies().getFirst().worstCurrent().si())
                .isCloseTo((SOURCE - byHand(12, 0, 1.3)) / WAY, within(0.01));
    }

    /** 11 A of inrush along 1.8 Ω leave nothing for the gateway. */
    @Test
    void anInrushThatPullsTheVoltageDownIsFound() {
        assertThat(size(SITE, true, 30, List.of(hub(3, new FieldLoad(device("d", LoadLaw.RESISTIVE, 0.1, true), 0))))
                        .findings())
                .extracting(Finding::code)
                .contains(FindingCode.CONTROL_VOLTAGE_LOW);
    }

    @Test
    void aFieldDeviceWithTooLittleVoltageIsFoundAtItsPlace() {
        var result = size(
                SITE, true, 30, List.of(hub(0.1, new FieldLoad(device("lamp", LoadLaw.CONSTANT_CURRENT, 4, true), 7))));
        assertThat(result.findings()).anySatisfy(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.CONTROL_VOLTAGE_LOW);
            assertThat(finding.subject()).isEqualTo("lamp");
            assertThat(finding.pointer()).isEqualTo("/design/controlPower/fieldDevices/7");
        });
    }

    @Test
    void whatIsOnBesideNeverRaisesAVoltage() {
        var result = size(SITE, false, 5, network(new SplittableRandom(1), 5));
        assertThat(result.voltages()).isNotEmpty().allSatisfy(v -> {
            Map<ControlMode, Double> at = new HashMap<>();
            v.modes().forEach(m -> at.put(m.mode(), m.voltage().si()));
            assertThat(at.get(ControlMode.RUNNING)).isLessThanOrEqualTo(at.get(ControlMode.STANDBY));
            assertThat(at.get(ControlMode.OUTPUTS_ON)).isLessThanOrEqualTo(at.get(ControlMode.RUNNING));
            assertThat(at.get(ControlMode.BRAKES_STAGGERED)).isLessThan(at.get(ControlMode.OUTPUTS_ON));
            assertThat(at.get(ControlMode.BRAKES_TOGETHER)).isLessThan(at.get(ControlMode.BRAKES_STAGGERED));
        });
    }

    /** Without resistive loads, of which a starved one leaves more for its neighbours. */
    @Test
    void longerOrHotterCablesNeverRaiseAVoltage() {
        var random = new SplittableRandom(2);
        for (int k = 0; k < 30; k++) {
            var nodes = withoutBrakes(network(random, 5));
            var before = voltages(size(SITE, true, 5, nodes));
            var longer = voltages(size(SITE, true, 5 + random.nextDouble(1, 5), nodes));
            var hotter = voltages(size(
                    new Site(SITE.ambient(), ControlParts.celsius(40 + random.nextDouble(1, 20)), SITE.altitude()),
                    true,
                    5,
                    nodes));
            assertThat(before).isNotEmpty();
            longer.forEach((what, v) -> assertThat(v).as(what).isLessThan(before.get(what)));
            hotter.forEach((what, v) -> assertThat(v).as(what).isLessThan(before.get(what)));
        }
    }

    @ParameterizedTest
    @EnumSource(LoadLaw.class)
    void oneMoreLoadOfAnyLawNeverRaisesAVoltage(LoadLaw law) {
        var random = new SplittableRandom(3);
        for (int k = 0; k < 30; k++) {
            var nodes = network(random, 5);
            var before = voltages(size(SITE, true, 5, nodes));
            int at = random.nextInt(nodes.size());
            var more = new ArrayList<>(nodes);
            more.set(at, with(nodes.get(at), new FieldLoad(device("more", law, 0.2, random.nextBoolean()), 9)));
            var after = voltages(size(SITE, true, 5, more));
            assertThat(before).isNotEmpty();
            before.forEach((what, v) ->
                    assertThat(after.getOrDefault(what, 0.0)).as(what).isLessThanOrEqualTo(v));
        }
    }

    @Test
    void theOrderOfNodesChangesOnlyTheOrderOfTheAnswer() {
        var random = new SplittableRandom(4);
        for (int k = 0; k < 30; k++) {
            var nodes = network(random, 5);
            var shuffled = new ArrayList<>(nodes);
            Collections.shuffle(shuffled, new java.util.Random(k));
            var before = voltages(size(SITE, true, 5, nodes));
            var after = voltages(size(SITE, true, 5, shuffled));
            assertThat(after.keySet()).isEqualTo(before.keySet());
            // another order of additions: equal but for rounding
            before.forEach((what, v) -> assertThat(after.get(what)).as(what).isCloseTo(v, within(1e-10)));
        }
    }

    private static Map<String, Double> voltages(ControlPowerResult result) {
        Map<String, Double> all = new HashMap<>();
        result.voltages()
                .forEach(v -> v.modes()
                        .forEach(m -> all.put(
                                v.subject() + " " + m.mode(), m.voltage().si())));
        return all;
    }

    /** Three to five gateways in a random tree of one chain, each with an axis with a brake and a sensor. */
    private static List<ControlNode> network(SplittableRandom random, double metres) {
        List<ControlNode> nodes = new ArrayList<>();
        int count = random.nextInt(3, 6);
        for (int k = 0; k < count; k++) {
            String upstream = k == 0 ? null : "g" + random.nextInt(k);
            var node = node(
                    "g" + k,
                    "p",
                    1 + k,
                    upstream,
                    metres,
                    load("x" + k, k, random.nextDouble(1, 5), brake(random.nextDouble(4, 8), 2, 20)));
            nodes.add(with(node, new FieldLoad(device("d" + k, LoadLaw.CONSTANT_CURRENT, 0.05, false), k)));
        }
        return nodes;
    }

    private static ControlNode with(ControlNode node, FieldLoad device) {
        List<FieldLoad> devices = new ArrayList<>(node.devices());
        devices.add(device);
        return with(node, node.loads(), devices);
    }

    private static List<ControlNode> withoutBrakes(List<ControlNode> nodes) {
        return nodes.stream()
                .map(node -> with(
                        node,
                        node.loads().stream()
                                .map(l -> new ControlLoad(
                                        l.axis(), l.axisIndex(), l.driveUnit(), null, l.spur(), l.keepAlive()))
                                .toList(),
                        node.devices()))
                .toList();
    }

    private static ControlNode with(ControlNode node, List<ControlLoad> loads, List<FieldLoad> devices) {
        return new ControlNode(
                node.id(),
                node.gateway(),
                node.chain(),
                node.depth(),
                node.upstream(),
                node.feedLength(),
                NO_CABLE_REACHES,
                loads,
                devices);
    }
}
