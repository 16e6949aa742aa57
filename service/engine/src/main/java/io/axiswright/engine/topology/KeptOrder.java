package io.axiswright.engine.topology;

import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The tie-break beside a kept layout: what may be exchanged for nothing stays where it was. Trunks go on the host ports of the
 * kept trunks they have most axes in common with, axes on the gateway of the same place they hung on.
 */
final class KeptOrder {

    private record Pairing<T>(T now, T kept, int common) {}

    private final LayoutModel model;
    private final Layout kept;
    private final Layout layout;

    private KeptOrder(LayoutModel model, Layout layout, Layout kept) {
        this.model = model;
        this.kept = kept;
        this.layout = onPorts(model, layout, kept);
    }

    /** A layout put in the order of the kept one. */
    static Layout apply(LayoutModel model, Layout layout, Layout kept) {
        var order = new KeptOrder(model, layout, kept);
        for (int place = 0; place < model.places(); place++) {
            order.sendHome(place);
        }
        order.layout.nodes().forEach(node -> node.axes.sort(Comparator.naturalOrder()));
        return order.layout;
    }

    private static Layout onPorts(LayoutModel model, Layout layout, Layout kept) {
        List<Trunk> used =
                layout.trunks.stream().filter(t -> !t.chain.isEmpty()).toList();
        long[] kinds = model.portKinds();
        var pairings = new ArrayList<Pairing<Trunk>>();
        for (Trunk trunk : used) {
            for (Trunk old : kept.trunks) {
                if (kinds[trunk.port] == kinds[old.port]) {
                    pairings.add(new Pairing<>(trunk, old, common(axes(trunk), axes(old))));
                }
            }
        }
        Map<Trunk, Trunk> ports = matched(pairings);
        var ordered = new Layout(layout.trunks.size());
        used.forEach(trunk ->
                ordered.trunks.get(ports.getOrDefault(trunk, trunk).port).chain.addAll(trunk.chain));
        return ordered;
    }

    /** Sends the axes on the gateways of one place back to the gateway of that place they hung on. */
    private void sendHome(int place) {
        List<Node> now = nodesAt(layout, place);
        var pairings = new ArrayList<Pairing<Node>>();
        for (Node node : now) {
            for (Node old : nodesAt(kept, place)) {
                pairings.add(new Pairing<>(node, old, common(Set.copyOf(node.axes), Set.copyOf(old.axes))));
            }
        }
        Map<Integer, Node> homes = new HashMap<>();
        matched(pairings).forEach((node, old) -> old.axes.forEach(axis -> homes.put(axis, node)));
        for (Node node : now) {
            for (int axis : List.copyOf(node.axes)) {
                Node home = homes.get(axis);
                if (home != null && home != node && !moved(axis, node, home)) {
                    exchanged(axis, node, home, homes);
                }
            }
        }
    }

    private boolean moved(int axis, Node from, Node to) {
        long together = together(from, to);
        from.axes.remove((Integer) axis);
        to.axes.add(axis);
        if (holds() && together(from, to) <= together) {
            return true;
        }
        to.axes.removeLast();
        from.axes.add(axis);
        return false;
    }

    private void exchanged(int axis, Node from, Node to, Map<Integer, Node> homes) {
        for (int other : List.copyOf(to.axes)) {
            if (homes.get(other) != to) {
                long together = together(from, to);
                swap(axis, from, other, to);
                if (holds() && together(from, to) <= together) {
                    return;
                }
                swap(other, from, axis, to);
            }
        }
    }

    private static void swap(int axis, Node from, int other, Node to) {
        from.axes.set(from.axes.indexOf(axis), other);
        to.axes.set(to.axes.indexOf(other), axis);
    }

    private long together(Node a, Node b) {
        return model.separations().cost(a.axes) + model.separations().cost(b.axes);
    }

    private boolean holds() {
        return layout.trunks.stream().allMatch(trunk -> LayoutRules.hold(model, trunk));
    }

    /** Pairs, those with most in common first; each is in one pair at most. */
    private static <T> Map<T, T> matched(List<Pairing<T>> pairings) {
        Map<T, T> matched = new HashMap<>();
        Set<T> taken = new HashSet<>();
        pairings.stream()
                .sorted(Comparator.comparingInt((Pairing<T> pairing) -> -pairing.common()))
                .forEach(pairing -> {
                    if (!matched.containsKey(pairing.now()) && taken.add(pairing.kept())) {
                        matched.put(pairing.now(), pairing.kept());
                    }
                });
        return matched;
    }

    private static Set<Integer> axes(Trunk trunk) {
        return trunk.chain.stream().flatMap(node -> node.axes.stream()).collect(Collectors.toSet());
    }

    private static List<Node> nodesAt(Layout layout, int place) {
        return layout.nodes().stream().filter(node -> node.place == place).toList();
    }

    private static int common(Set<Integer> one, Set<Integer> other) {
        return (int) one.stream().filter(other::contains).count();
    }
}
