package io.axiswright.engine.topology;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Ratio;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The layout of the control network. Axes that no cable reaches are left out of it, so that the others have one. Two cables are joined only
 * where no single one reaches; among layouts with cables so chosen the cheapest is sought. Among layouts of equal cost the one with the least total length of cable is taken, that
 * of axes to come counted, as far as the search proves it; among those, axes whose ids come first hang on lower gateways. The same network in another order of
 * axes, places, ports, types and cables has the same layout.
 *
 * @param gateways the gateways by host port and depth; empty if no layout exists, not even of the axes that can be reached
 * @param cost price of gateways and of their host, trunk and spur cables; items without a price count nothing; absent if no
 *     layout exists
 * @param moveCost price of the axes that hang in another place than in the kept layout; absent without one
 * @param separationCost what it counts that axes share gateways against priced wishes; absent where none is stated
 * @param bound proven lower bound: no layout within the limits costs less, moves and shared gateways included; absent if none
 *     exists
 * @param gap what might still be saved at most, as a share of the cost, moves and shared gateways included; absent if no
 *     layout exists
 * @param method how the layout was found
 * @param spareHostPorts ids of the host ports left free
 * @param binding the limits that are used up entirely
 * @param changes what differs from the kept layout; empty without one
 * @param findings remarks
 * @param derivations how the numbers came about
 * @param tradeOff what less of the second measure costs; absent where none is asked for or no layout exists
 * @param clash which limits leave no layout and what would let there be one; absent if there is a layout of all axes
 * @param unconnected ids of the axes that no cable reaches: all else stands for the others, and axes to come that none reaches are left out
 *     too; absent if there are none, or no layout exists
 */
public record TopologyResult(
        List<PlacedGateway> gateways,
        @Nullable Money cost,
        @Nullable Money moveCost,
        @Nullable Money separationCost,
        @Nullable Money bound,
        @Bounds(min = 0, max = 1) @Nullable Ratio gap,
        LayoutMethod method,
        List<String> spareHostPorts,
        List<LimitUse> binding,
        List<LayoutChange> changes,
        List<Finding> findings,
        List<Derivation> derivations,
        @Nullable TradeOff tradeOff,
        @Nullable Clash clash,
        @Nullable List<String> unconnected) {

    /** Keeps the lists from being changed. */
    public TopologyResult {
        gateways = List.copyOf(gateways);
        spareHostPorts = List.copyOf(spareHostPorts);
        binding = List.copyOf(binding);
        changes = List.copyOf(changes);
        findings = List.copyOf(findings);
        derivations = List.copyOf(derivations);
        unconnected = unconnected == null ? null : List.copyOf(unconnected);
    }

    /** The axes that no cable reaches, be they absent or none. */
    public List<String> unconnectedList() {
        return unconnected == null ? List.of() : unconnected;
    }

    /** The same as the layout of all axes but some, for which there is none. */
    TopologyResult leavingOut(List<String> axes, TopologyResult ofAll) {
        return new TopologyResult(
                gateways,
                cost,
                moveCost,
                separationCost,
                bound,
                gap,
                method,
                spareHostPorts,
                binding,
                changes,
                Stream.concat(ofAll.findings.stream(), findings.stream()).toList(),
                derivations,
                tradeOff,
                ofAll.clash,
                axes.isEmpty() ? null : axes);
    }
}
