package io.axiswright.engine.topology;

import com.google.ortools.sat.BoolVar;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.topology.ExactModel.Cell;
import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Gives the constraint model a known layout to start from: a value for every variable, or the search ignores much of it. */
final class ExactHint {

    private final ExactModel exact;
    private final LayoutModel model;
    private final Map<Node, Integer> slotOf;

    private ExactHint(ExactModel exact, Map<Node, Integer> slotOf) {
        this.exact = exact;
        this.model = exact.model;
        this.slotOf = slotOf;
    }

    static void give(ExactModel exact, Layout start) {
        exact.slots.of(start).ifPresent(slotOf -> new ExactHint(exact, slotOf).give(start));
    }

    private void give(Layout start) {
        Set<Cell> typed = new HashSet<>();
        Set<Cell> hung = new HashSet<>();
        Set<Cell> next = new HashSet<>();
        Set<Integer> first = new HashSet<>();
        Set<Integer> last = new HashSet<>();
        Set<Cell> direct = new HashSet<>();
        Map<Integer, Integer> rows = new HashMap<>();
        for (Trunk trunk : start.trunks) {
            Node before = null;
            int row = 1;
            for (Node node : trunk.chain) {
                int slot = slot(node);
                row = model.row(before, node, row);
                rows.put(slot, row);
                if (before != null && row > 1) {
                    direct.add(new Cell(slot(before), slot));
                }
                typed.add(new Cell(slot, node.type));
                node.axes.forEach(axis -> hung.add(new Cell(axis, slot)));
                if (before == null) {
                    first.add(slot);
                } else {
                    next.add(new Cell(slot(before), slot));
                }
                before = node;
            }
            if (before != null) {
                last.add(slot(before));
            }
        }
        for (int slot = 0; slot < exact.slots.count(); slot++) {
            exact.cp.addHint(exact.used.get(slot), slotOf.containsValue(slot));
            exact.cp.addHint(exact.chains.first.get(slot), first.contains(slot));
            exact.cp.addHint(exact.chains.last.get(slot), last.contains(slot));
        }
        exact.typed.forEach((cell, chosen) -> exact.cp.addHint(chosen, typed.contains(cell)));
        exact.hung.forEach((cell, here) -> exact.cp.addHint(here, hung.contains(cell)));
        exact.chains.next.forEach((cell, link) -> exact.cp.addHint(link, next.contains(cell)));
        exact.chains.direct.forEach((cell, coupled) -> exact.cp.addHint(coupled, direct.contains(cell)));
        for (int slot = 0; slot < exact.chains.row.size(); slot++) {
            exact.cp.addHint(exact.chains.row.get(slot), rows.getOrDefault(slot, 1));
        }
        exact.met.forEach((cell, some) -> exact.cp.addHint(
                some,
                Arrays.stream(model.separations().members(cell.row()))
                        .anyMatch(axis -> hung.contains(new Cell(axis, cell.column())))));
        start.trunks.forEach(this::alongTrunk);
        Set<Integer> unused = new HashSet<>();
        for (int slot = 0; slot < exact.slots.count(); slot++) {
            if (!slotOf.containsValue(slot)) {
                unused.add(slot);
            }
        }
        unused.stream().sorted().forEach(slot -> hint(slot, 1, model.deepestChain(), 0, 0, false, false, Set.of()));
    }

    private void alongTrunk(Trunk trunk) {
        boolean whole = trunk.chain.stream()
                .anyMatch(node -> model.types().get(node.type).scope() == StopScope.TRUNK);
        int limit = trunk.chain.stream()
                .mapToInt(node -> model.types().get(node.type).chainDepth())
                .min()
                .orElse(0);
        Set<Integer> trunkZones = zones(trunk.chain);
        int depth = 0;
        long load = 0;
        for (Node node : trunk.chain) {
            load += node.axes.stream()
                    .mapToLong(axis -> model.axes().get(axis).rate())
                    .sum();
            Set<Integer> zones = whole ? trunkZones : zones(List.of(node));
            hint(slot(node), ++depth, limit, load, model.portRate()[trunk.port], depth == 1, whole, zones);
        }
    }

    private Set<Integer> zones(List<Node> nodes) {
        var zones = new HashSet<Integer>();
        for (Node node : nodes) {
            node.axes.forEach(axis -> zones.add(model.axes().get(axis).zone()));
        }
        zones.remove(-1);
        return zones;
    }

    private void hint(
            int slot,
            int depth,
            int limit,
            long load,
            long portRate,
            boolean first,
            boolean whole,
            Set<Integer> zones) {
        ExactChains chains = exact.chains;
        if (!chains.depth.isEmpty()) {
            exact.cp.addHint(chains.depth.get(slot), depth);
        }
        if (!chains.depthLimit.isEmpty()) {
            exact.cp.addHint(chains.depthLimit.get(slot), limit);
        }
        if (!chains.load.isEmpty()) {
            exact.cp.addHint(chains.load.get(slot), load);
            for (int k = 0; k < chains.portClass.length; k++) {
                boolean on = portRate == 0 ? k == 0 : chains.portClass[k] == portRate;
                exact.cp.addHint(chains.onClass(slot, k), on);
                List<BoolVar> starts = chains.classStarts.get(k);
                if (starts != null) {
                    exact.cp.addHint(starts.get(slot), on && first);
                }
            }
        }
        if (!chains.scoped.isEmpty()) {
            exact.cp.addHint(chains.scoped.get(slot), whole);
        }
        for (int zone = 0; zone < model.zones() && model.zonesMatter(); zone++) {
            exact.cp.addHint(exact.zoned(slot, zone), zones.contains(zone));
        }
    }

    private int slot(Node node) {
        return java.util.Objects.requireNonNull(slotOf.get(node));
    }
}
