package io.axiswright.engine.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * One-phase circuits that must use the same lines, because their rectifiers feed one DC bus: on different lines they would
 * put line-to-line voltage on it. A circuit without such company is a block of its own.
 *
 * @param connection how they are connected
 * @param buses the DC buses of their loads
 * @param circuits which circuits, rising
 */
record CircuitBlock(Connection connection, Set<String> buses, List<Integer> circuits) {

    /** The blocks of all one-phase circuits, in the order of their first circuits. */
    static List<CircuitBlock> of(List<LoadGroup> groups) {
        var blocks = new ArrayList<CircuitBlock>();
        for (int k = 0; k < groups.size(); k++) {
            if (groups.get(k).connection() != Connection.THREE_PHASE) {
                add(new CircuitBlock(groups.get(k).connection(), groups.get(k).buses(), List.of(k)), blocks);
            }
        }
        return blocks;
    }

    /** A circuit of several buses joins blocks that were apart so far. */
    private static void add(CircuitBlock alone, List<CircuitBlock> blocks) {
        var company = blocks.stream().filter(alone::isBoundTo).toList();
        if (company.isEmpty()) {
            blocks.add(alone);
            return;
        }
        var buses = new TreeSet<>(alone.buses());
        var circuits = new TreeSet<>(alone.circuits());
        company.forEach(block -> {
            buses.addAll(block.buses());
            circuits.addAll(block.circuits());
        });
        blocks.set(
                blocks.indexOf(company.getFirst()), new CircuitBlock(alone.connection(), buses, List.copyOf(circuits)));
        blocks.removeAll(company.subList(1, company.size()));
    }

    private boolean isBoundTo(CircuitBlock other) {
        return connection == other.connection && buses.stream().anyMatch(other.buses::contains);
    }
}
