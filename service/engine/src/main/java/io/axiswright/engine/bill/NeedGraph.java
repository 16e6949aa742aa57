package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.catalogue.Need;
import io.axiswright.engine.catalogue.NeedKind;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Who needs whom in a catalogue. Walks it depth first; the reverse of the order in which items are left puts every item
 * before what it needs, and an edge back into the path that is being walked closes a circle.
 */
final class NeedGraph {

    private static final int LEFT = -1;

    private final List<Item> items;
    private final CatalogueSource source;
    private final List<String> places = new ArrayList<>();
    private final Map<String, Integer> indexes = new HashMap<>();
    private final int[] next;
    private final List<Integer> left = new ArrayList<>();
    private final List<Fault> faults;

    private NeedGraph(Catalogue catalogue, CatalogueSource source, List<Fault> faults) {
        this.items = catalogue.items().toList();
        this.source = source;
        this.faults = faults;
        this.next = new int[items.size()];
        var filled = new int[Shelf.values().length];
        for (int k = 0; k < items.size(); k++) {
            var shelf = Shelf.of(items.get(k));
            places.add(shelf.place(filled[shelf.ordinal()]++));
            if (indexes.putIfAbsent(items.get(k).id(), k) != null) {
                fault(
                        places.get(k) + "/id",
                        FaultCode.DUPLICATE_ID,
                        "there is another item " + items.get(k).id(),
                        "an id no other item of the catalogue has");
            }
        }
    }

    /**
     * The items of a catalogue by id.
     *
     * @param faults receives what is wrong with it: ids used twice, needs of unknown items, circles of needs, prices in
     *     another currency
     */
    static Map<String, Offer> read(BillRequest request, List<Fault> faults) {
        Catalogue catalogue = request.catalogue();
        var graph = new NeedGraph(catalogue, request.catalogueSource(), faults);
        graph.checkItems(catalogue.currency());
        for (int k = 0; k < graph.items.size(); k++) {
            if (graph.next[k] == 0) {
                graph.walk(k);
            }
        }
        return graph.offers();
    }

    private void checkItems(String currency) {
        for (int k = 0; k < items.size(); k++) {
            var price = items.get(k).price();
            if (price != null && !price.currency().equals(currency)) {
                fault(
                        places.get(k) + "/price/currency",
                        FaultCode.INCONSISTENT,
                        price.currency() + " in a catalogue priced in " + currency,
                        currency);
            }
            var needs = items.get(k).needs();
            for (int n = 0; n < needs.size(); n++) {
                checkNeed(needs.get(n), places.get(k) + "/needs/" + n);
            }
        }
    }

    private void checkNeed(Need need, String place) {
        if (!indexes.containsKey(need.item())) {
            fault(
                    place + "/item",
                    FaultCode.DANGLING_REFERENCE,
                    "there is no item " + need.item(),
                    "the id of an item of the catalogue");
        }
        if (need.kind() == NeedKind.CONDITIONAL && need.when() == null) {
            fault(place + "/when", FaultCode.MISSING, "a conditional need without its condition", "a condition");
        }
    }

    private void walk(int start) {
        Deque<Integer> path = new ArrayDeque<>();
        path.addLast(start);
        while (!path.isEmpty()) {
            int at = path.getLast();
            var needs = items.get(at).needs();
            if (next[at] == needs.size()) {
                next[at] = LEFT;
                left.add(at);
                path.removeLast();
                continue;
            }
            int n = next[at]++;
            @Nullable Integer needed = indexes.get(needs.get(n).item());
            if (needed == null || next[needed] == LEFT) {
                continue;
            }
            if (next[needed] > 0) { // begun and not left: it is on the path
                circle(path, needed, places.get(at) + "/needs/" + n);
            } else {
                path.addLast(needed);
            }
        }
    }

    private void circle(Deque<Integer> path, int again, String place) {
        String round = path.stream()
                .dropWhile(k -> k != again)
                .map(k -> items.get(k).id())
                .collect(Collectors.joining(
                        " needs ", "", " needs " + items.get(again).id()));
        fault(place, FaultCode.CYCLIC_NEEDS, round, "needs that do not lead back to the item itself");
    }

    private void fault(String place, FaultCode code, String detail, String accepted) {
        faults.add(new Fault(source.pointer(place), code, detail, accepted));
    }

    private Map<String, Offer> offers() {
        var rank = new int[items.size()];
        Arrays.fill(rank, LEFT);
        for (int k = 0; k < left.size(); k++) {
            rank[left.get(k)] = left.size() - 1 - k;
        }
        var offers = new HashMap<String, Offer>();
        indexes.forEach((id, k) -> offers.put(
                id, new Offer(items.get(k), Shelf.of(items.get(k)).ordinal(), rank[k], source.pointer(places.get(k)))));
        return offers;
    }
}
