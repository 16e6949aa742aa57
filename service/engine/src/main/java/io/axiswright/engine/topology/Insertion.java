package io.axiswright.engine.topology;

import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;

/**
 * A spot for a new gateway: before which gateway of which trunk, and by way of which relays.
 *
 * @param trunk the trunk
 * @param position how many gateways come before it
 * @param places the places on the way, the new gateway's own last; more than one only at the start of a new trunk
 * @param cost what the links cost more than now
 */
record Insertion(Trunk trunk, int position, List<Integer> places, long cost) {

    /** In place of a type: whichever suits a spot best. */
    static final int ANY = -1;

    /**
     * The spots for a gateway at that place in some trunks, the cheapest of each. Of unused host ports that carry the same
     * rate only the first counts.
     *
     * @param trunks the trunks to look at
     * @param type its type, which matters where types couple directly; or {@link #ANY}
     * @param ways cheapest way from the host to each place, as {@link Relays} gives it
     */
    static List<Insertion> spots(LayoutModel model, Collection<Trunk> trunks, int place, int type, Relays ways) {
        var spots = new ArrayList<Insertion>();
        var seenRates = new HashSet<Long>();
        boolean couples = model.couples();
        for (Trunk trunk : trunks) {
            if (trunk.chain.isEmpty()) {
                if (ways.exists(place) && seenRates.add(model.portRate()[trunk.port])) {
                    spots.add(new Insertion(trunk, 0, ways.to(place), ways.cost(place)));
                }
                continue;
            }
            Insertion best = null;
            for (int position = 0; position <= trunk.chain.size(); position++) {
                long cost =
                        couples ? coupled(model, trunk, position, place, type) : extra(model, trunk, position, place);
                if (cost < LinkTable.FAR / 2 && (best == null || cost < best.cost)) {
                    best = new Insertion(trunk, position, List.of(place), cost);
                }
            }
            if (best != null) {
                spots.add(best);
            }
        }
        return spots;
    }

    /** Puts gateways of the type there; the last of them, at the place asked for, is returned. */
    Node open(int type) {
        Node last = new Node(places.getLast(), type);
        for (int k = 0; k < places.size(); k++) {
            trunk.chain.add(position + k, k == places.size() - 1 ? last : new Node(places.get(k), type));
        }
        return last;
    }

    private static long coupled(LayoutModel model, Trunk trunk, int position, int place, int type) {
        if (type != ANY) {
            return coupled(model, trunk, position, new Node(place, type));
        }
        long least = LinkTable.FAR;
        for (int each = 0; each < model.types().size(); each++) {
            least = Math.min(least, coupled(model, trunk, position, new Node(place, each)));
        }
        return least;
    }

    /** A gateway in the midst may lengthen a row of directly coupled ones or part it: all links are looked at anew. */
    private static long coupled(LayoutModel model, Trunk trunk, int position, Node node) {
        long now = links(model, trunk.chain);
        trunk.chain.add(position, node);
        long then = links(model, trunk.chain);
        trunk.chain.remove(position);
        return then - now;
    }

    private static long links(LayoutModel model, List<Node> chain) {
        long cost = 0;
        Node before = null;
        int row = 1;
        for (Node node : chain) {
            row = model.row(before, node, row);
            cost += row > 1 ? 0 : link(model, before == null ? -1 : before.place, node.place);
            before = node;
        }
        return cost;
    }

    private static long extra(LayoutModel model, Trunk trunk, int position, int place) {
        List<Node> chain = trunk.chain;
        int before = position == 0 ? -1 : chain.get(position - 1).place;
        long cost = link(model, before, place);
        if (position < chain.size()) {
            int after = chain.get(position).place;
            cost += model.trunk().cost()[place][after] - link(model, before, after);
        }
        return cost;
    }

    private static long link(LayoutModel model, int from, int to) {
        return from < 0 ? model.host().cost()[0][to] : model.trunk().cost()[from][to];
    }
}
