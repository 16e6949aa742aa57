package io.axiswright.engine.topology;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.design.KeptLayout;
import io.axiswright.engine.design.SecondMeasure;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** The curve of cost against a second measure: one by hand, and of toys against all layouts there are. */
class TradeOffTest {

    private static final int TOYS = 150;
    private static final Offset<Double> CENT = within(1e-6);

    private final LayoutPlanning planning = new LayoutPlanning();

    /** A point of a curve: the measure, then the cost. */
    private record At(double measure, double cost) {}

    /**
     * Axes at 1 m and 9 m, places at 0 m and 10 m, the host at 0 m. Spur cables of 1 m for 5, 9 m for 100 and 12 m for 150; trunk of
     * 10 m for 20, host cable of 10 m for 10; a gateway costs 50.
     */
    private static TopologyRequests pair() {
        var pair = new TopologyRequests().port(9000).port(9000).place(0, 0, 1).place(10, 0, 1);
        pair.axis(1).axis(9);
        pair.type(50, 2, 2, 0, StopScope.NONE);
        pair.cable(CableUse.HOST, 10, 10).cable(CableUse.TRUNK, 10, 20);
        pair.cable(CableUse.SPUR, 1, 5).cable(CableUse.SPUR, 9, 100).cable(CableUse.SPUR, 12, 150);
        return pair;
    }

    @Test
    void fewerGatewaysCostMore() {
        TopologyRequests pair = pair();
        pair.tradeOff = SecondMeasure.GATEWAYS;
        TradeOff curve = requireNonNull(planning.plan(pair.build()).tradeOff());

        // 2·50 + 2·10 + 2·5 = 130 with two gateways, 50 + 10 + 5 + 100 = 165 with one; none drives nothing
        assertThat(points(curve)).containsExactly(new At(2, 130), new At(1, 165));
        assertThat(curve.end()).isEqualTo(TradeOffEnd.NONE_PROVEN);
        assertThat(curve.points()).allMatch(point -> point.method() == LayoutMethod.PROVEN_OPTIMAL);
        assertThat(curve.points().get(1).gateways())
                .singleElement()
                .satisfies(gateway -> assertThat(gateway.axes()).containsExactly("A1", "A2"));
    }

    /** The same machine with gateways of 200: one is cheapest, and short spurs are what costs. */
    @Test
    void shorterSpursCostMore() {
        TopologyRequests pair = pair();
        pair.types.clear();
        pair.type(200, 2, 2, 0, StopScope.NONE);
        pair.tradeOff = SecondMeasure.LONGEST_SPUR;
        TradeOff curve = requireNonNull(planning.plan(pair.build()).tradeOff());

        // 200 + 10 + 5 + 100 = 315 over 9 m; 2·200 + 2·10 + 2·5 = 430 over 1 m
        assertThat(points(curve)).containsExactly(new At(9, 315), new At(1, 430));
        assertThat(curve.end()).isEqualTo(TradeOffEnd.NONE_PROVEN);
    }

    @Test
    void nothingIsTradedWhereNothingIsAskedFor() {
        assertThat(planning.plan(pair().build()).tradeOff()).isNull();
    }

    @Test
    void noLayoutWithFewerGatewaysIsCheaper() {
        int bends = 0;
        for (long seed = 1; seed <= TOYS; seed++) {
            TopologyRequest toy = withCheapGateways(TopologyRequests.toy(seed));
            int room = toy.network().places().stream()
                    .mapToInt(place -> place.maxGateways())
                    .sum();
            List<Double> limits = IntStream.rangeClosed(1, room)
                    .mapToObj(count -> (double) count)
                    .toList();
            List<At> expected = curve(limits, limit -> EveryLayout.cheapest(toy, (int) limit)[0]);
            bends += equal(seed, toy, SecondMeasure.GATEWAYS, expected);
        }
        assertThat(bends).as("curves of more than one point").isGreaterThan(5);
    }

    @Test
    void noLayoutWithShorterSpursIsCheaper() {
        int bends = 0;
        for (long seed = 1; seed <= TOYS; seed++) {
            TopologyRequest toy = TopologyRequests.toy(seed);
            List<At> expected = curve(List.of(2.0, 5.0, 9.0, 14.0), limit -> {
                return EveryLayout.cheapest(withSpurs(toy, limit))[0];
            });
            bends += equal(seed, toy, SecondMeasure.LONGEST_SPUR, expected);
        }
        assertThat(bends).as("curves of more than one point").isGreaterThan(20);
    }

    private interface Cheapest {
        double cost(double limit);
    }

    /** Where a wider limit makes the cheapest layout cheaper, widest first. */
    private static List<At> curve(List<Double> limits, Cheapest cheapest) {
        var curve = new ArrayList<At>();
        double before = Double.POSITIVE_INFINITY;
        for (double limit : limits) {
            double cost = cheapest.cost(limit);
            if (cost < before - 1e-6) {
                curve.add(new At(limit, cost));
                before = cost;
            }
        }
        Collections.reverse(curve);
        return curve;
    }

    private int equal(long seed, TopologyRequest toy, SecondMeasure measure, List<At> expected) {
        TopologyRequest asked = asking(toy, measure);
        TopologyResult result = planning.plan(asked);
        TradeOff curve = result.tradeOff();
        if (expected.isEmpty()) { // what there may be is of the axes that can be reached
            assertThat(result.clash()).as("seed %d", seed).isNotNull();
            return 0;
        }
        List<At> points = points(requireNonNull(curve));
        assertThat(points).as("seed %d", seed).hasSameSizeAs(expected);
        for (int k = 0; k < points.size(); k++) {
            assertThat(points.get(k).measure())
                    .as("seed %d", seed)
                    .isEqualTo(expected.get(k).measure());
            assertThat(points.get(k).cost())
                    .as("seed %d", seed)
                    .isCloseTo(expected.get(k).cost(), CENT);
        }
        assertThat(curve.end()).as("seed %d", seed).isEqualTo(TradeOffEnd.NONE_PROVEN);
        assertThat(curve.points()).as("seed %d", seed).allMatch(point -> point.method() == LayoutMethod.PROVEN_OPTIMAL);
        return points.size() > 1 ? 1 : 0;
    }

    /** A point kept as it is stands for itself: planned from it, with moves dear, it comes back at its cost. */
    @Test
    void aPointCanBeKept() {
        TopologyRequests pair = pair();
        pair.tradeOff = SecondMeasure.GATEWAYS;
        TradeOffPoint one =
                requireNonNull(planning.plan(pair.build()).tradeOff()).points().get(1);
        TopologyRequests kept = pair();
        kept.keep = new KeptLayout(one.gateways(), TopologyRequests.euro(1000));
        TopologyResult again = planning.plan(kept.build());

        assertThat(again.cost()).isEqualTo(one.cost());
        assertThat(again.changes()).isEmpty();
    }

    /** Points without proof still bracket: no bound above the cost, bounds never fall, no point beats another in both. */
    @Test
    void aCurveOfTheHeuristicIsTrue() {
        TopologyRequests machine = TopologyRequests.machine(48, 16, 4, 7);
        machine.searchLimit = new Time(0);
        for (SecondMeasure measure : SecondMeasure.values()) {
            machine.tradeOff = measure;
            TradeOff curve = requireNonNull(planning.plan(machine.build()).tradeOff());
            List<At> points = points(curve);
            for (int k = 1; k < points.size(); k++) {
                assertThat(points.get(k).measure()).isLessThan(points.get(k - 1).measure());
                assertThat(points.get(k).cost()).isGreaterThan(points.get(k - 1).cost());
                assertThat(bound(curve, k)).isGreaterThanOrEqualTo(bound(curve, k - 1));
            }
            for (int k = 0; k < points.size(); k++) {
                assertThat(bound(curve, k)).isLessThanOrEqualTo(points.get(k).cost() + 1e-6);
            }
            assertThat(planning.plan(machine.build()).tradeOff()).isEqualTo(curve);
        }
    }

    private static double bound(TradeOff curve, int k) {
        return curve.points().get(k).bound().amount().doubleValue();
    }

    private static List<At> points(TradeOff curve) {
        return curve.points().stream()
                .map(point -> new At(
                        curve.measure() == SecondMeasure.GATEWAYS
                                ? point.gatewayCount()
                                : point.longestSpur().si(),
                        point.cost().amount().doubleValue()))
                .toList();
    }

    private static TopologyRequest asking(TopologyRequest request, SecondMeasure measure) {
        return Copies.with(request, "network", Copies.with(request.network(), "tradeOff", measure));
    }

    /** Gateways and links so cheap that more of them may pay: else the cheapest layout has the fewest. */
    private static TopologyRequest withCheapGateways(TopologyRequest request) {
        TopologyRequest cheap = Copies.with(
                request,
                "gatewayTypes",
                request.gatewayTypes().stream()
                        .map(type -> Copies.with(type, "price", TopologyRequests.euro(1)))
                        .toList());
        return Copies.with(
                cheap,
                "cableAssemblies",
                cheap.cableAssemblies().stream()
                        .map(cable -> cable.use() == CableUse.SPUR
                                ? cable
                                : Copies.with(cable, "price", TopologyRequests.euro(1)))
                        .toList());
    }

    private static TopologyRequest withSpurs(TopologyRequest request, double longest) {
        return Copies.with(
                request,
                "cableAssemblies",
                request.cableAssemblies().stream()
                        .filter(cable ->
                                cable.use() != CableUse.SPUR || cable.length().si() <= longest)
                        .toList());
    }
}
