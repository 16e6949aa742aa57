package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.catalogue.Need;
import io.axiswright.engine.catalogue.NeedKind;
import io.axiswright.engine.catalogue.NeedOrder;
import io.axiswright.engine.catalogue.Shelf;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;

/** Reads the items of a catalogue for a bill, each at its rank among those that need each other. */
final class Offers {

    private final CatalogueSource source;
    private final List<Fault> faults;
    private final Map<String, String> places = new HashMap<>();

    private Offers(CatalogueSource source, List<Fault> faults) {
        this.source = source;
        this.faults = faults;
    }

    /**
     * The items of a catalogue by id.
     *
     * @param faults receives what is wrong with it: ids used twice, needs of unknown items, circles of needs, prices in
     *     another currency
     */
    static Map<String, Offer> read(BillRequest request, List<Fault> faults) {
        Catalogue catalogue = request.catalogue();
        SequencedMap<String, Item> items = catalogue.places();
        var reading = new Offers(request.catalogueSource(), faults);
        items.forEach(reading::place);
        items.forEach((place, item) -> reading.check(place, item, catalogue.currency()));
        var order = NeedOrder.of(catalogue, reading.source::pointer);
        faults.addAll(order.circles());
        Map<String, Integer> ranks = order.ranks();
        var offers = new HashMap<String, Offer>();
        items.forEach((place, item) -> offers.putIfAbsent(
                item.id(),
                new Offer(
                        item,
                        Shelf.of(item).ordinal(),
                        ranks.getOrDefault(item.id(), 0),
                        reading.source.pointer(place))));
        return offers;
    }

    private void place(String place, Item item) {
        if (places.putIfAbsent(item.id(), place) != null) {
            fault(
                    place + "/id",
                    FaultCode.DUPLICATE_ID,
                    "there is another item " + item.id(),
                    "an id no other item of the catalogue has");
        }
    }

    private void check(String place, Item item, String currency) {
        var price = item.price();
        if (price != null && !price.currency().equals(currency)) {
            fault(
                    place + "/price/currency",
                    FaultCode.INCONSISTENT,
                    price.currency() + " in a catalogue priced in " + currency,
                    currency);
        }
        for (int n = 0; n < item.needs().size(); n++) {
            check(item.needs().get(n), place + "/needs/" + n);
        }
    }

    private void check(Need need, String place) {
        if (!places.containsKey(need.item())) {
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

    private void fault(String place, FaultCode code, String detail, String accepted) {
        faults.add(new Fault(source.pointer(place), code, detail, accepted));
    }
}
