package io.axiswright.engine.topology;

import com.google.ortools.sat.BoolVar;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.topology.ExactModel.Cell;
import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Gives the constraint model a known layout to start from: a value for every variable, or the search ignores much of it. */
final class ExactHint {

    private final ExactModel exact;
    private final ExactChains chains;
    private final LayoutModel model;
    private final Map<Node, Integer> slotOf;

    private ExactHint(ExactChains chains, Map<Node, Integer> slotOf) {
        this.exact = chains.exact;
        this.chains = chains;
        this.model = exact.model;
        this.slotOf = slotOf;
    }

    static void give(ExactChains chains, Layout start) {
        chains.exact.slots.of(start).ifPresent(slotOf -> new ExactHint(chains, slotOf).give(start));
    }

    private void give(Layout start) {
        Map<Node, Set<Integer>> zones = new IdentityHashMap<>();
        start.trunks.forEach(trunk ->
                trunk.chain.forEach(node -> zones.put(node, exact.zones(whole(trunk) ? trunk.chain : List.of(node)))));
        exact.hint(slotOf, node -> zones.getOrDefault(node, Set.of()));
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
            exact.cp.addHint(chains.first.get(slot), first.contains(slot));
            exact.cp.addHint(chains.last.get(slot), last.contains(slot));
        }
        chains.next.forEach((cell, link) -> exact.cp.addHint(link, next.contains(cell)));
        chains.direct.forEach((cell, coupled) -> exact.cp.addHint(coupled, direct.contains(cell)));
        for (int slot = 0; slot < chains.row.size(); slot++) {
            exact.cp.addHint(chains.row.get(slot), rows.getOrDefault(slot, 1));
        }
        start.trunks.forEach(this::alongTrunk);
        Set<Integer> unused = new HashSet<>();
        for (int slot = 0; slot < exact.slots.count(); slot++) {
            if (!slotOf.containsValue(slot)) {
                unused.add(slot);
            }
        }
        unused.stream().sorted().forEach(slot -> hint(slot, 1, model.deepestChain(), 0, 0, false, false));
    }

    private void alongTrunk(Trunk trunk) {
        boolean whole = whole(trunk);
        int limit = trunk.chain.stream()
                .mapToInt(node -> model.types().get(node.type).chainDepth())
                .min()
                .orElse(0);
        int depth = 0;
        long load = 0;
        for (Node node : trunk.chain) {
            load += node.axes.stream()
                    .mapToLong(axis -> model.axes().get(axis).rate())
                    .sum();
            hint(slot(node), ++depth, limit, load, model.portRate()[trunk.port], depth == 1, whole);
        }
    }

    /** Whether a stop of one gateway stops the whole trunk. */
    private boolean whole(Trunk trunk) {
        return trunk.chain.stream()
                .anyMatch(node -> model.types().get(node.type).scope() == StopScope.TRUNK);
    }

    private void hint(int slot, int depth, int limit, long load, long portRate, boolean first, boolean whole) {
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
    }

    private int slot(Node node) {
        return java.util.Objects.requireNonNull(slotOf.get(node));
    }
}
