package io.axiswright.engine.topology;

import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where single gateways may stand: as many slots at each place as gateways can be used there.
 *
 * @param place the place of each slot
 * @param complete whether no layout is lost; else the exact solver proves nothing
 */
record Slots(List<Integer> place, boolean complete) {

    /** More slots than these and the chains alone are too many for the exact solver. */
    private static final int MOST = 200;

    static Slots of(LayoutModel model) {
        Slots all = of(model, model.mostGateways(), true);
        if (all.place.size() <= MOST) {
            return all;
        }
        return of(model, 2, false);
    }

    private static Slots of(LayoutModel model, int most, boolean complete) {
        var slots = new ArrayList<Integer>();
        for (int place = 0; place < model.places(); place++) {
            for (int k = 0; k < Math.min(most, model.room()[place]); k++) {
                slots.add(place);
            }
        }
        return new Slots(slots, complete);
    }

    boolean tooMany() {
        return place.size() > MOST;
    }

    int count() {
        return place.size();
    }

    /** Whether the slot is the twin of the one before it. */
    boolean followsTwin(int slot) {
        return slot > 0 && place.get(slot).equals(place.get(slot - 1));
    }

    /** The slot of each gateway of a layout, fuller gateways first at each place; absent if there are too few slots. */
    java.util.Optional<Map<Node, Integer>> of(Layout layout) {
        var slotOf = new LinkedHashMap<Node, Integer>();
        var next = new LinkedHashMap<Integer, Integer>();
        List<Node> nodes = layout.trunks.stream()
                .flatMap((Trunk trunk) -> trunk.chain.stream())
                .sorted(Comparator.comparingInt((Node node) -> -node.axes.size()))
                .toList();
        for (Node node : nodes) {
            int slot = next.getOrDefault(node.place, place.indexOf(node.place));
            if (slot >= place.size() || place.get(slot) != node.place) {
                return java.util.Optional.empty();
            }
            slotOf.put(node, slot);
            next.put(node.place, slot + 1);
        }
        return java.util.Optional.of(slotOf);
    }
}
