package io.axiswright.engine.topology;

import static java.util.Objects.requireNonNull;
import static java.util.Objects.requireNonNullElse;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableExtension;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.design.FixedPlace;
import io.axiswright.engine.design.HostPort;
import io.axiswright.engine.design.KeptLayout;
import io.axiswright.engine.design.Place;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.ReservedAxis;
import io.axiswright.engine.design.Separation;
import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Holds a layout against its request from the answer alone; knows no solver. */
final class LayoutChecker {

    private final TopologyRequest request;
    private final EveryWay ways;
    private final TopologyResult result;

    private LayoutChecker(TopologyRequest request, TopologyResult result) {
        this.request = request;
        this.ways = new EveryWay(request);
        this.result = result;
    }

    /** Asserts that the layout can be built and costs what it says. */
    static void check(TopologyRequest request, TopologyResult result) {
        new LayoutChecker(request, result).check();
    }

    /**
     * The same, and that it costs and measures no more than the cheapest.
     *
     * @param cheapest what {@link EveryLayout} found
     */
    static void checkCheapest(String name, TopologyRequest request, TopologyResult result, double[] cheapest) {
        check(request, result);
        assertThat(amount(result.cost()).doubleValue()).as(name).isCloseTo(cheapest[0], within(1e-6));
        assertThat(LayoutPlanningTest.cableLength(result)).as(name).isCloseTo(cheapest[1], within(1e-6));
    }

    private void check() {
        everyAxisOnce();
        everyReservedPortOnce();
        trunksAreChains();
        roomHolds();
        gatewaysHold();
        trunksHold();
        cablesReach();
        costAddsUp();
        fixedPlacesHold();
        separationsHold();
    }

    private void everyAxisOnce() {
        List<String> hung = result.gateways().stream()
                .flatMap(gateway -> gateway.spurs().stream())
                .map(SpurLink::axis)
                .toList();
        assertThat(hung)
                .containsExactlyInAnyOrderElementsOf(request.axes().stream()
                        .filter(axis -> axis.reserved() == null)
                        .map(NetworkAxis::id)
                        .toList());
    }

    private void everyReservedPortOnce() {
        Map<String, Integer> kept = new HashMap<>();
        for (PlacedGateway gateway : result.gateways()) {
            for (ReservedPorts ports : gateway.reservedList()) {
                kept.merge(ports.id(), ports.ports(), Integer::sum);
                ReservedAxis reserved = reserved(ports);
                assertThat(gateway.place()).isEqualTo(requireNonNullElse(reserved.place(), gateway.place()));
                assertThat(requireNonNullElse(reserved.spurCables(), List.of(ports.cable())))
                        .contains(ports.cable());
                Position near = requireNonNullElse(reserved.position(), position(gateway));
                Position far = requireNonNullElse(reserved.farCorner(), near);
                for (Position corner : List.of(
                        near,
                        far,
                        new Position(near.x(), far.y(), near.z()),
                        new Position(far.x(), near.y(), near.z()))) {
                    cable(ports.cable(), ports.extension(), CableUse.SPUR, position(gateway), corner);
                }
            }
        }
        Map<String, Integer> asked = new HashMap<>();
        request.network().reservedList().forEach(reserved -> asked.put(reserved.id(), reserved.count()));
        assertThat(kept).isEqualTo(asked);
    }

    private ReservedAxis reserved(ReservedPorts ports) {
        return request.network().reservedList().stream()
                .filter(one -> one.id().equals(ports.id()))
                .findFirst()
                .orElseThrow();
    }

    private void trunksAreChains() {
        for (List<PlacedGateway> trunk : trunks()) {
            for (int k = 0; k < trunk.size(); k++) {
                assertThat(trunk.get(k).depth()).isEqualTo(k + 1);
                assertThat(trunk.get(k).upstream())
                        .isEqualTo(k == 0 ? null : trunk.get(k - 1).id());
            }
        }
        var ports = new ArrayList<String>();
        trunks().forEach(trunk -> ports.add(trunk.getFirst().hostPort()));
        ports.addAll(result.spareHostPorts());
        assertThat(ports)
                .containsExactlyInAnyOrderElementsOf(request.network().host().ports().stream()
                        .map(HostPort::id)
                        .toList());
    }

    private void roomHolds() {
        for (Place place : request.network().places()) {
            assertThat(result.gateways().stream()
                            .filter(gateway -> gateway.place().equals(place.id()))
                            .count())
                    .isLessThanOrEqualTo(place.maxGateways());
        }
    }

    private void gatewaysHold() {
        int spare =
                request.network().sparePorts() == null ? 0 : request.network().sparePorts();
        for (PlacedGateway gateway : result.gateways()) {
            GatewayType type = type(gateway);
            List<NetworkAxis> axes = axes(List.of(gateway));
            long brakes = axes.stream()
                    .filter(axis -> axis.reserved() == null && axis.holdingBrake())
                    .count();
            long brakesToCome = axes.stream()
                    .filter(axis -> axis.reserved() != null && axis.holdingBrake())
                    .count();
            int kept = gateway.reservedList().stream()
                    .mapToInt(ReservedPorts::ports)
                    .sum();
            assertThat(gateway.spareDrivePorts())
                    .isGreaterThanOrEqualTo(spare + kept)
                    .isEqualTo(type.drivePorts() - gateway.spurs().size());
            assertThat(gateway.spareBrakeOutputs())
                    .isGreaterThanOrEqualTo((int) brakesToCome)
                    .isEqualTo((int) (type.brakeOutputs() - brakes));
            if (type.stopScope() != StopScope.NONE) {
                assertThat(zones(axes)).hasSizeLessThanOrEqualTo(1);
            }
        }
    }

    private void trunksHold() {
        for (List<PlacedGateway> trunk : trunks()) {
            for (PlacedGateway gateway : trunk) {
                assertThat(trunk.size()).isLessThanOrEqualTo(type(gateway).chainDepth());
                if (type(gateway).stopScope() == StopScope.TRUNK) {
                    assertThat(zones(axes(trunk))).hasSizeLessThanOrEqualTo(1);
                }
            }
            double rate = axes(trunk).stream()
                    .mapToDouble(axis -> axis.commandRate().si())
                    .sum();
            double carried = request.network().host().ports().stream()
                    .filter(port -> port.id().equals(trunk.getFirst().hostPort()))
                    .findFirst()
                    .orElseThrow()
                    .commandRate()
                    .si();
            assertThat(rate).isLessThanOrEqualTo(carried + 1e-3);
        }
    }

    private void cablesReach() {
        Map<String, PlacedGateway> byId =
                result.gateways().stream().collect(Collectors.toMap(PlacedGateway::id, Function.identity()));
        for (PlacedGateway gateway : result.gateways()) {
            boolean first = gateway.upstream() == null;
            Position from = first
                    ? request.network().host().position()
                    : position(Objects.requireNonNull(byId.get(gateway.upstream())));
            if (gateway.linkCable() == null) {
                coupled(gateway, byId);
            } else {
                cable(
                        gateway.linkCable(),
                        gateway.linkExtension(),
                        first ? CableUse.HOST : CableUse.TRUNK,
                        from,
                        position(gateway));
            }
            for (SpurLink spur : gateway.spurs()) {
                NetworkAxis axis = request.axes().stream()
                        .filter(one -> one.id().equals(spur.axis()))
                        .findFirst()
                        .orElseThrow();
                cable(spur.cable(), spur.extension(), CableUse.SPUR, position(gateway), axis.position());
            }
        }
    }

    /** Without a cable: the same type in the same place before it, and no more in a row than the type allows. */
    private void coupled(PlacedGateway gateway, Map<String, PlacedGateway> byId) {
        int row = 1;
        PlacedGateway at = gateway;
        while (at.linkCable() == null) {
            PlacedGateway before = requireNonNull(byId.get(requireNonNull(at.upstream())));
            assertThat(before.place()).isEqualTo(at.place());
            assertThat(before.gatewayType()).isEqualTo(at.gatewayType());
            at = before;
            row++;
        }
        assertThat(row).isLessThanOrEqualTo(requireNonNull(type(gateway).directRow()));
        assertThat(gateway.linkCableLength().si()).isZero();
    }

    /** One reaches; of two, that name the same coupler and may be so long together, no single one of the use would. */
    private void cable(String id, @Nullable CableExtension extension, CableUse use, Position from, Position to) {
        CableAssembly cable = cable(id);
        double way = ways.between(from, to) - 1e-6;
        assertThat(cable.use()).isEqualTo(use);
        if (extension == null) {
            assertThat(cable.length().si()).isGreaterThanOrEqualTo(way);
            return;
        }
        CableAssembly second = cable(extension.cable());
        double together = cable.length().si() + second.length().si();
        assertThat(second.use()).isEqualTo(use);
        assertThat(List.of(requireNonNull(cable.coupler()), requireNonNull(second.coupler())))
                .containsOnly(extension.coupler());
        assertThat(together)
                .isGreaterThanOrEqualTo(way)
                .isLessThanOrEqualTo(Math.min(
                        requireNonNull(cable.joinedLength()).si(),
                        requireNonNull(second.joinedLength()).si()));
        assertThat(request.cableAssemblies())
                .noneMatch(one -> one.use() == use && one.length().si() >= way + 1e-3);
    }

    private CableAssembly cable(String id) {
        return request.cableAssemblies().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private void costAddsUp() {
        Map<String, BigDecimal> prices = new HashMap<>();
        request.gatewayTypes().forEach(type -> prices.put("type " + type.id(), amount(type.price())));
        request.cableAssemblies().forEach(cable -> prices.put("cable " + cable.id(), amount(cable.price())));
        request.coupled()
                .forEach(pair -> prices.put(
                        "coupler " + pair.coupler().id(), amount(pair.coupler().price())));
        BigDecimal sum = BigDecimal.ZERO;
        for (PlacedGateway gateway : result.gateways()) {
            sum = sum.add(prices.get("type " + gateway.gatewayType()));
            if (gateway.linkCable() != null) {
                sum = sum.add(prices.get("cable " + gateway.linkCable()));
            }
            sum = sum.add(price(gateway.linkExtension(), prices));
            for (SpurLink spur : gateway.spurs()) {
                sum = sum.add(prices.get("cable " + spur.cable())).add(price(spur.extension(), prices));
            }
        }
        assertThat(requireNonNull(result.cost()).amount()).isEqualByComparingTo(sum);
        BigDecimal moves = amount(result.moveCost());
        assertThat(requireNonNull(result.bound()).amount())
                .isLessThanOrEqualTo(sum.add(moves).add(amount(result.separationCost())));
        KeptLayout keep = request.network().keep();
        assertThat(result.moveCost() == null).isEqualTo(keep == null);
        if (keep != null) {
            long moved = result.gateways().stream()
                    .flatMap(gateway -> gateway.spurs().stream()
                            .filter(spur -> keep.gateways().stream()
                                    .anyMatch(old -> old.axes().contains(spur.axis())
                                            && !old.place().equals(gateway.place()))))
                    .count();
            assertThat(moves).isEqualByComparingTo(amount(keep.movePrice()).multiply(BigDecimal.valueOf(moved)));
        }
    }

    private static BigDecimal price(@Nullable CableExtension extension, Map<String, BigDecimal> prices) {
        return extension == null
                ? BigDecimal.ZERO
                : requireNonNull(prices.get("coupler " + extension.coupler()))
                        .add(requireNonNull(prices.get("cable " + extension.cable())));
    }

    private void fixedPlacesHold() {
        if (request.network().fixed() != null) {
            for (FixedPlace fixed : request.network().fixed()) {
                assertThat(result.gateways())
                        .filteredOn(gateway -> gateway.spurs().stream()
                                .anyMatch(spur -> spur.axis().equals(fixed.axis())))
                        .extracting(PlacedGateway::place)
                        .containsExactly(fixed.place());
            }
        }
    }

    private void separationsHold() {
        BigDecimal sum = BigDecimal.ZERO;
        for (Separation separation : request.network().separationList()) {
            for (PlacedGateway gateway : result.gateways()) {
                long here = axes(List.of(gateway)).stream()
                        .filter(axis -> separation.axes().contains(axis.id()))
                        .count();
                if (separation.price() == null) {
                    assertThat(here).as(separation.id()).isLessThan(2);
                } else if (here > 1) {
                    sum = sum.add(separation.price().amount().multiply(BigDecimal.valueOf(here - 1)));
                }
            }
        }
        assertThat(amount(result.separationCost())).isEqualByComparingTo(sum);
        assertThat(result.separationCost() == null)
                .isEqualTo(request.network().separationList().stream().allMatch(one -> one.price() == null));
    }

    private static BigDecimal amount(@Nullable Money price) {
        return price == null ? BigDecimal.ZERO : price.amount();
    }

    private List<List<PlacedGateway>> trunks() {
        return request.network().host().ports().stream()
                .map(port -> result.gateways().stream()
                        .filter(gateway -> gateway.hostPort().equals(port.id()))
                        .toList())
                .filter(trunk -> !trunk.isEmpty())
                .toList();
    }

    private GatewayType type(PlacedGateway gateway) {
        return request.gatewayTypes().stream()
                .filter(type -> type.id().equals(gateway.gatewayType()))
                .findFirst()
                .orElseThrow();
    }

    private Position position(PlacedGateway gateway) {
        return request.network().places().stream()
                .filter(place -> place.id().equals(gateway.place()))
                .findFirst()
                .orElseThrow()
                .position();
    }

    private List<NetworkAxis> axes(List<PlacedGateway> gateways) {
        Set<String> ids = gateways.stream()
                .flatMap(gateway -> gateway.spurs().stream())
                .map(SpurLink::axis)
                .collect(Collectors.toSet());
        var axes = new ArrayList<>(request.axes().stream()
                .filter(axis -> axis.reserved() == null && ids.contains(axis.id()))
                .toList());
        for (PlacedGateway gateway : gateways) {
            for (ReservedPorts ports : gateway.reservedList()) {
                for (int port = 0; port < ports.ports(); port++) {
                    axes.add(toCome(reserved(ports), position(gateway)));
                }
            }
        }
        return axes;
    }

    private static NetworkAxis toCome(ReservedAxis reserved, Position gateway) {
        return new NetworkAxis(
                reserved.id(),
                gateway,
                reserved.stopZone(),
                Boolean.TRUE.equals(reserved.holdingBrake()),
                reserved.commandRate(),
                0,
                reserved);
    }

    private static Set<String> zones(List<NetworkAxis> axes) {
        var zones = new HashSet<String>();
        for (NetworkAxis axis : axes) {
            if (axis.stopZone() != null) {
                zones.add(axis.stopZone());
            }
        }
        return zones;
    }
}
