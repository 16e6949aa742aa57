package io.axiswright.engine.controlpower;

import static io.axiswright.engine.controlpower.ControlParts.MAINS;
import static io.axiswright.engine.controlpower.ControlParts.SITE;
import static io.axiswright.engine.controlpower.ControlParts.brake;
import static io.axiswright.engine.controlpower.ControlParts.cable;
import static io.axiswright.engine.controlpower.ControlParts.gateway;
import static io.axiswright.engine.controlpower.ControlParts.load;
import static io.axiswright.engine.controlpower.ControlParts.protection;
import static io.axiswright.engine.controlpower.ControlParts.spec;
import static io.axiswright.engine.controlpower.ControlParts.supply;
import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.OutputProtection;
import io.axiswright.engine.catalogue.ProtectionKind;
import io.axiswright.engine.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FeedPointsTest {

    private static final List<CableAssembly> CABLES = List.of(
            cable("thin-10", 10, 10, "0.75 mm2"),
            cable("thick-10", 40, 10, "2.5 mm2"),
            cable("thin-20", 18, 20, "0.75 mm2"),
            cable("thick-20", 75, 20, "2.5 mm2"),
            cable("thin-30", 25, 30, "0.75 mm2"),
            cable("thick-30", 110, 30, "2.5 mm2"));

    private static ControlPowerResult size(List<OutputProtection> protections, List<ControlNode> nodes) {
        return new ControlPowerSizing()
                .size(new ControlPowerRequest(
                        spec(0.2, true),
                        SITE,
                        MAINS,
                        nodes,
                        List.of(supply("s", 100, 40)),
                        CABLES,
                        protections,
                        List.of()));
    }

    /** Gateways in a row, 10 m apart, each with an axis; straight from the supply to the k-th at most 10 m more each. */
    private static List<ControlNode> row(double[] logic, double passThrough, double directStep) {
        List<ControlNode> nodes = new ArrayList<>();
        for (int k = 0; k < logic.length; k++) {
            nodes.add(new ControlNode(
                    "g" + k,
                    gateway(6, 19.2, passThrough),
                    "p",
                    k + 1,
                    k == 0 ? null : "g" + (k - 1),
                    new Length(10),
                    new Length(10 + directStep * k),
                    List.of(load("x" + k, k, logic[k], brake(4, 2, 20.4))),
                    List.of()));
        }
        return nodes;
    }

    @Test
    void oneFeedPointWhereItDoes() {
        var result = size(List.of(), row(new double[] {5, 5}, 20, 10));
        assertThat(result.chains())
                .singleElement()
                .satisfies(chain -> assertThat(chain.feedPoint()).isEqualTo("g0"));
    }

    /** Two gateways of about 20 W each: 1.8 A and more enter the first; its terminals carry 1.5 A. */
    @Test
    void anotherWhereTheTerminalsOfAGatewayCarryTooLittle() {
        var nodes = row(new double[] {12, 12}, 1.5, 10);
        var result = size(List.of(protection("e2", 20, ProtectionKind.ELECTRONIC, 2, 3)), nodes);
        assertThat(result.chains()).extracting(ChainFeed::feedPoint).containsExactly("g0", "g1");
        assertThat(result.circuits()).extracting(OutputCircuit::feedPoint).containsExactly("g0", "g1");
        assertThat(result.links()).extracting(FeedLink::upstream).containsOnlyNulls();
        assertThat(result.links()).extracting(FeedLink::routeLength).containsExactly(new Length(10), new Length(20));
        assertThat(result.supplies().getFirst().chains()).containsExactly("p");
    }

    /** Every set of feed points tried one by one. */
    @Test
    void theCheapestDivisionOfAllThatHold() {
        var random = new SplittableRandom(5);
        int divided = 0;
        for (int draw = 0; draw < 60; draw++) {
            double[] logic = random.doubles(random.nextInt(2, 5), 3, 30).toArray();
            var nodes = row(logic, random.nextDouble(2, 8), random.nextDouble(0, 9.9));
            var cables = new CablePicker(CABLES, List.of(), SITE, true);
            var source = SourceVoltages.of(supply("s", 100, 40));
            var conductor = Conductors.temperature(SITE);
            var device = protection("e", random.nextInt(0, 30), ProtectionKind.ELECTRONIC, 20, 1);
            var eachFeed = Price.of(device);
            var farEnd = new FarEnd(List.of(device), new FaultSource(source.low(), 40, 40, 0));
            var parts = new FeedPoints(cables, conductor).plan(new ChainNetwork("p", nodes, conductor), source, farEnd);
            divided += parts.size() > 1 ? 1 : 0;
            int failing = (int) parts.stream().filter(part -> !part.suffices()).count();
            Price price = total(parts, eachFeed);
            for (int set = 0; set < 1 << (logic.length - 1); set++) {
                var other = division(nodes, set, cables, source);
                int fails =
                        (int) other.stream().filter(part -> !part.suffices()).count();
                assertThat(failing).as("seed 5, draw %d, set %d", draw, set).isLessThanOrEqualTo(fails);
                if (fails == failing) {
                    assertThat(price)
                            .as("seed 5, draw %d, set %d", draw, set)
                            .isLessThanOrEqualTo(total(other, eachFeed));
                }
            }
        }
        assertThat(divided).isBetween(10, 59);
    }

    private static Price total(List<ChainPlan> parts, Price eachFeed) {
        return parts.stream().map(part -> part.price().plus(eachFeed)).reduce(Price.NOTHING, Price::plus);
    }

    /** Bit k of the set: gateway k + 1 is fed straight from the supply. */
    private static List<ChainPlan> division(
            List<ControlNode> nodes, int set, CablePicker cables, SourceVoltages source) {
        List<List<ControlNode>> runs = new ArrayList<>();
        IntStream.range(0, nodes.size()).forEach(k -> {
            boolean isFed = k > 0 && (set >> (k - 1) & 1) != 0;
            if (k == 0 || isFed) {
                runs.add(new ArrayList<>());
            }
            var node = nodes.get(k);
            runs.getLast()
                    .add(
                            !isFed
                                    ? node
                                    : new ControlNode(
                                            node.id(),
                                            node.gateway(),
                                            node.chain(),
                                            node.depth(),
                                            null,
                                            node.directLength(),
                                            node.directLength(),
                                            node.loads(),
                                            node.devices()));
        });
        return runs.stream()
                .map(run -> cables.pick(
                        new ChainNetwork("p", run, Conductors.temperature(SITE)), source, Double.POSITIVE_INFINITY))
                .toList();
    }
}
