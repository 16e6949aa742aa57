package io.axiswright.engine.topology;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.design.CableWays;
import io.axiswright.engine.design.RouteMetric;
import io.axiswright.engine.design.RouteRule;
import io.axiswright.engine.design.WayAttachment;
import io.axiswright.engine.design.WayEdge;
import io.axiswright.engine.design.WayNode;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Lengths along given cable ways: by hand, and layouts on random ways against every layout there is. */
class CableWaysTest {

    private final LayoutPlanning planning = new LayoutPlanning();

    private static WayNode node(String id, double x, double y) {
        return new WayNode(id, TopologyRequests.at(x, y));
    }

    /** A duct from (0, 0) up to (0, 6), across to (8, 6) and down to (8, 0). */
    private static List<WayNode> corners() {
        return List.of(node("a", 0, 0), node("b", 0, 6), node("c", 8, 6), node("d", 8, 0));
    }

    private static final List<WayEdge> ROUND =
            List.of(new WayEdge("a", "b", null), new WayEdge("b", "c", new Length(9)), new WayEdge("c", "d", null));

    private static TopologyRequests bridge(List<WayEdge> edges, List<WayAttachment> attachments) {
        var request = new TopologyRequests()
                .cable(CableUse.HOST, 30, 5)
                .cable(CableUse.TRUNK, 30, 7)
                .cable(CableUse.SPUR, 12, 4)
                .cable(CableUse.SPUR, 40, 9)
                .port(5000)
                .place(0, 1, 1)
                .type(50, 2, 2, 1, StopScope.NONE)
                .axis(9);
        request.route = new RouteRule(RouteMetric.STRAIGHT, 1.5, new Length(0.25));
        request.ways = new CableWays(corners(), edges, attachments);
        return request;
    }

    private static double spur(TopologyResult result) {
        return result.gateways().getFirst().spurs().getFirst().routeLength().si();
    }

    /** The axis is 9.06 m from its gateway, but the way is 1 to node a, 6 + 9 + 6 along, and 1 from node d. */
    @Test
    void aSpurGoesAlongTheWays() {
        TopologyResult result = planning.plan(bridge(ROUND, List.of()).build());

        // factor 1.5 and 0.25 m at both ends
        assertThat(spur(result)).isCloseTo(1.5 * 23 + 0.5, within(1e-9));
    }

    /** A way straight across from a to d is the shortest: 1 + 8 + 1. */
    @Test
    void theShortestOfTheWaysIsTaken() {
        var edges = new ArrayList<>(ROUND);
        edges.add(new WayEdge("d", "a", null));

        assertThat(spur(planning.plan(bridge(edges, List.of()).build()))).isCloseTo(1.5 * 10 + 0.5, within(1e-9));
    }

    /** Joined to node b the gateway is 5 m from its node; then 9 + 6 along and 1 to the axis. */
    @Test
    void aStatedNodeIsTakenInsteadOfTheNearest() {
        var stated = List.of(new WayAttachment(null, "L1", "b"));

        assertThat(spur(planning.plan(bridge(ROUND, stated).build()))).isCloseTo(1.5 * 21 + 0.5, within(1e-9));
    }

    @Test
    void anAxisTooFarAlongTheWaysIsTold() {
        TopologyRequests request = bridge(ROUND, List.of());
        request.cables.removeLast();

        assertThat(planning.plan(request.build()).findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.TOPOLOGY_SPUR_TOO_LONG);
            assertThat(requireNonNull(finding.value()).si()).isCloseTo(35, within(1e-9));
        });
    }

    @Test
    void everyLengthHasItsWayInTheDerivations() {
        TopologyResult result = planning.plan(bridge(ROUND, List.of()).build());

        assertThat(result.derivations().stream().filter(one -> one.symbol().equals("L")))
                .hasSize(2)
                .allSatisfy(one -> assertThat(requireNonNull(one.inputs().get("k"))
                                                .si()
                                        * requireNonNull(one.inputs().get("w")).si()
                                + 2 * requireNonNull(one.inputs().get("s")).si())
                        .isCloseTo(one.result().si(), within(1e-9)));
    }

    /** A random tree of ways with a few more across, edges often longer than straight, some things joined to stated nodes. */
    private static TopologyRequest toy(long seed) {
        TopologyRequests toy = TopologyRequests.copy(TopologyRequests.toy(seed));
        var random = new SplittableRandom(seed);
        toy.route =
                new RouteRule(random.nextBoolean() ? RouteMetric.STRAIGHT : RouteMetric.RECTILINEAR, 1, new Length(0));
        List<WayNode> nodes = new ArrayList<>();
        List<WayEdge> edges = new ArrayList<>();
        int count = 2 + random.nextInt(6);
        for (int k = 0; k < count; k++) {
            nodes.add(node("n" + k, random.nextInt(13), random.nextInt(4)));
            if (k > 0) {
                edges.add(edge(random, nodes.get(random.nextInt(k)), nodes.get(k)));
            }
        }
        for (int k = 0; k < random.nextInt(3); k++) {
            edges.add(edge(random, nodes.get(random.nextInt(count)), nodes.get(random.nextInt(count))));
        }
        List<WayAttachment> attachments = new ArrayList<>();
        if (random.nextInt(3) == 0) {
            attachments.add(new WayAttachment(toy.axes.getFirst().id(), null, "n0"));
        } else if (random.nextInt(3) == 0) {
            attachments.add(new WayAttachment(null, null, "n" + random.nextInt(count)));
        }
        toy.ways = new CableWays(nodes, edges, attachments.isEmpty() ? null : attachments);
        return toy.build();
    }

    private static WayEdge edge(SplittableRandom random, WayNode from, WayNode to) {
        double straight = Math.hypot(
                from.position().x().si() - to.position().x().si(),
                from.position().y().si() - to.position().y().si());
        return new WayEdge(from.id(), to.id(), random.nextBoolean() ? null : new Length(straight + random.nextInt(3)));
    }

    @Test
    void noLayoutAlongTheWaysIsCheaper() {
        int built = 0;
        for (long seed = 1; seed <= 300; seed++) {
            TopologyRequest request = toy(seed);
            double[] cheapest = EveryLayout.cheapest(request);
            TopologyResult result = planning.plan(request);
            assertThat(result.clash() != null).as("seed %d", seed).isEqualTo(Double.isInfinite(cheapest[0]));
            if (result.clash() == null) {
                built++;
                LayoutChecker.checkCheapest("seed " + seed, request, result, cheapest);
            }
        }
        assertThat(built).as("toys that can be built").isGreaterThan(50);
    }
}
