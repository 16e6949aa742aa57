package io.axiswright.engine.controlpower;

import static io.axiswright.engine.controlpower.ControlParts.MAINS;
import static io.axiswright.engine.controlpower.ControlParts.SITE;
import static io.axiswright.engine.controlpower.ControlParts.brake;
import static io.axiswright.engine.controlpower.ControlParts.cable;
import static io.axiswright.engine.controlpower.ControlParts.gateway;
import static io.axiswright.engine.controlpower.ControlParts.load;
import static io.axiswright.engine.controlpower.ControlParts.supply;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.design.ControlPower;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.finding.Severity;
import io.axiswright.engine.quantity.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Control supplies that may stand at several places. */
class SupplyPlacesTest {

    private static final List<CableAssembly> CABLES =
            List.of(cable("c10", 10, 10, "2.5 mm2"), cable("c20", 18, 20, "2.5 mm2"), cable("c40", 33, 40, "2.5 mm2"));

    private static ControlPowerRequest request(
            List<String> further, List<ControlNode> nodes, List<ControlSupply> supplies) {
        return new ControlPowerRequest(
                new ControlPower("panel", 0.2, true, null, null, null, further),
                SITE,
                MAINS,
                nodes,
                supplies,
                CABLES,
                List.of(),
                List.of());
    }

    /** A chain of one gateway, so far from the panel and so far from each further place. */
    private static ControlNode chain(int k, double logic, double fromPanel, Map<String, Double> others) {
        var node = new ControlNode(
                "g" + k,
                gateway(6, 19.2, 20),
                "p" + k,
                1,
                null,
                new Length(fromPanel),
                List.of(load("x" + k, k, logic, brake(4, 2, 20.4))));
        List<SupplyWay> ways = others.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(way -> new SupplyWay(way.getKey(), new Length(way.getValue())))
                .toList();
        return Copies.with(node, "otherWays", ways);
    }

    /**
     * Two chains at either end of a machine of 40 m: one supply of 100 in the middle feeds both over 20 m (100 + 2 · 18 = 136),
     * from the panel at one end it takes 10 m and 40 m (100 + 10 + 33 = 143).
     */
    @Test
    void aSupplyStandsWhereItAndItsCablesCostLeast() {
        var nodes = List.of(chain(0, 10, 5, Map.of("middle", 20.0)), chain(1, 10, 40, Map.of("middle", 20.0)));
        var result = new ControlPowerSizing().size(request(List.of("middle"), nodes, List.of(supply("s", 100, 40))));

        assertThat(result.supplies()).extracting(PlacedControlSupply::place).containsExactly("middle");
        assertThat(result.links()).extracting(FeedLink::item).containsExactly("c20", "c20");
        assertThat(result.findings()).noneMatch(finding -> finding.severity() == Severity.VIOLATION);
    }

    /** At 5 a supply, two of them with 10 m each (30) are cheaper than one with any other cables (5 + 33 + 10 at best). */
    @Test
    void severalSuppliesStandApartWhereThatIsCheaper() {
        var nodes = List.of(chain(0, 10, 5, Map.of("far", 40.0)), chain(1, 10, 40, Map.of("far", 5.0)));
        var result = new ControlPowerSizing().size(request(List.of("far"), nodes, List.of(supply("s", 5, 40))));

        assertThat(result.supplies()).extracting(PlacedControlSupply::place).containsExactly("panel", "far");
        assertThat(result.links()).extracting(FeedLink::item).containsExactly("c10", "c10");
    }

    @Test
    void atEqualCostItStandsAtTheMainPlace() {
        var nodes = List.of(chain(0, 10, 10, Map.of("far", 9.0)));
        var result = new ControlPowerSizing().size(request(List.of("far"), nodes, List.of(supply("s", 50, 40))));
        assertThat(result.supplies()).extracting(PlacedControlSupply::place).containsExactly("panel");
    }

    @Test
    void aWayFromEveryFurtherPlaceIsAsked() {
        var nodes = List.of(chain(0, 10, 10, Map.of()));
        var asked = request(List.of("far"), nodes, List.of(supply("s", 50, 40)));
        assertThatThrownBy(() -> new ControlPowerSizing().size(asked))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        invalid -> assertThat(invalid.faults())
                                .singleElement()
                                .satisfies(fault -> assertThat(fault.pointer()).isEqualTo("/nodes/0/otherWays")));
    }

    /** Every division of up to four chains into supplies, every supply at every place: none is cheaper. */
    @Test
    void noDivisionOverThePlacesIsCheaper() {
        var random = new SplittableRandom(11);
        int away = 0;
        for (int draw = 0; draw < 150; draw++) {
            int count = random.nextInt(1, 5);
            List<ControlNode> nodes = new ArrayList<>();
            for (int k = 0; k < count; k++) {
                nodes.add(chain(
                        k,
                        random.nextDouble(5, 25),
                        random.nextDouble(1, 40),
                        Map.of("a", random.nextDouble(1, 40), "b", random.nextDouble(1, 40))));
            }
            var supplies = List.of(supply("small", random.nextInt(5, 40), 3), supply("large", 60, 40));
            var result = new ControlPowerSizing().size(request(List.of("a", "b"), nodes, supplies));
            away += (int) result.supplies().stream()
                    .filter(placed -> !placed.place().equals("panel"))
                    .count();

            assertThat(price(result, supplies))
                    .as("seed 11, draw %d", draw)
                    .isEqualByComparingTo(cheapest(nodes, supplies));
        }
        assertThat(away).isPositive();
    }

    /** Each group on one place alone, where there is nothing to choose: the sum over the groups, least over all divisions. */
    private static BigDecimal cheapest(List<ControlNode> nodes, List<ControlSupply> supplies) {
        return divisions(nodes)
                .map(division -> division.stream()
                        .map(group -> Stream.of("panel", "a", "b")
                                .flatMap(place -> supplies.stream().flatMap(supply -> priceAt(group, place, supply)))
                                .min(BigDecimal::compareTo))
                        .toList())
                .filter(groups -> groups.stream().allMatch(Optional::isPresent))
                .map(groups ->
                        groups.stream().map(price -> price.orElseThrow()).reduce(BigDecimal.ZERO, BigDecimal::add))
                .min(BigDecimal::compareTo)
                .orElseThrow();
    }

    /** What a group costs on one supply at one place; nothing if that does not do. */
    private static Stream<BigDecimal> priceAt(List<ControlNode> group, String place, ControlSupply supply) {
        List<ControlNode> there = group.stream()
                .map(node -> Copies.with(
                        Copies.with(
                                Copies.with(node, "feedLength", way(node, place)), "directLength", way(node, place)),
                        "otherWays",
                        null))
                .toList();
        var result = new ControlPowerSizing().size(request(List.of(), there, List.of(supply)));
        return result.supplies().size() == 1
                        && result.findings().stream().noneMatch(finding -> finding.severity() == Severity.VIOLATION)
                ? Stream.of(price(result, List.of(supply)))
                : Stream.empty();
    }

    private static Length way(ControlNode node, String place) {
        return node.wayList().stream()
                .filter(way -> way.place().equals(place))
                .map(SupplyWay::length)
                .findFirst()
                .orElse(node.feedLength());
    }

    private static BigDecimal price(ControlPowerResult result, List<ControlSupply> supplies) {
        Map<String, BigDecimal> prices = Stream.of(CABLES, supplies)
                .flatMap(Collection::stream)
                .map(Item.class::cast)
                .collect(Collectors.toMap(
                        Item::id, item -> Objects.requireNonNull(item.price()).amount()));
        Function<String, BigDecimal> priceOf = id -> Objects.requireNonNull(prices.get(id));
        return Stream.concat(
                        result.supplies().stream().map(PlacedControlSupply::item),
                        result.links().stream().map(link -> Objects.requireNonNull(link.item())))
                .map(priceOf)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Every way to put things into groups. */
    private static <T> Stream<List<List<T>>> divisions(List<T> all) {
        if (all.isEmpty()) {
            return Stream.of(List.of());
        }
        T first = all.getFirst();
        return divisions(all.subList(1, all.size())).flatMap(rest -> {
            List<List<List<T>>> made = new ArrayList<>();
            List<List<T>> alone = new ArrayList<>(rest);
            alone.add(List.of(first));
            made.add(alone);
            for (int k = 0; k < rest.size(); k++) {
                List<List<T>> joined = new ArrayList<>(rest);
                List<T> group = new ArrayList<>(rest.get(k));
                group.add(first);
                joined.set(k, group);
                made.add(joined);
            }
            return made.stream();
        });
    }
}
