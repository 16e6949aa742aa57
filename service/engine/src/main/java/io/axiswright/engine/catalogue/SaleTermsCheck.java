package io.axiswright.engine.catalogue;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** What the terms of sale of a catalogue must not contradict its items and themselves in. */
public final class SaleTermsCheck {

    /** Share of a reel below which a length in another unit differs by its conversion only. */
    private static final double ROUNDING = 1e-6;

    private final Catalogue catalogue;
    private final UnaryOperator<String> pointer;
    private final Map<String, Item> items = new HashMap<>();
    private final List<Fault> faults = new ArrayList<>();

    private SaleTermsCheck(Catalogue catalogue, UnaryOperator<String> pointer) {
        this.catalogue = catalogue;
        this.pointer = pointer;
        catalogue.items().forEach(item -> items.putIfAbsent(item.id(), item));
    }

    /**
     * All faults, in document order.
     *
     * @param catalogue the catalogue
     * @param pointer leads from a JSON Pointer in the catalogue to the one in the document it came in
     */
    public static List<Fault> faults(Catalogue catalogue, UnaryOperator<String> pointer) {
        return new SaleTermsCheck(catalogue, pointer).run();
    }

    private List<Fault> run() {
        Set<String> told = new HashSet<>();
        List<SaleTerms> all = catalogue.saleTermsList();
        for (int k = 0; k < all.size(); k++) {
            String place = "/saleTerms/" + k;
            SaleTerms terms = all.get(k);
            Item item = items.get(terms.item());
            if (item == null) {
                fault(
                        place + "/item",
                        FaultCode.DANGLING_REFERENCE,
                        "No item has the id \"" + terms.item() + "\".",
                        "the id of an item of this catalogue");
            } else if (!told.add(terms.item())) {
                fault(
                        place + "/item",
                        FaultCode.INCONSISTENT,
                        "\"" + terms.item() + "\" has terms of sale already.",
                        "each item once");
            }
            if (item instanceof BulkCable && terms.pack() != null) {
                fault(
                        place + "/pack",
                        FaultCode.INCONSISTENT,
                        "Bulk cable is cut to length, not sold in packs.",
                        "no pack for bulk cable");
            }
            if (item instanceof BulkCable cable && !wholeReels(cable, terms.minimumOrder())) {
                fault(
                        place + "/minimumOrder",
                        FaultCode.INCONSISTENT,
                        "\"" + cable.id() + "\" is sold by whole reels; so much is on no number of them.",
                        "a multiple of its reelLength");
            }
            checkBreaks(terms, item, place + "/priceBreaks");
        }
        return List.copyOf(faults);
    }

    private static boolean wholeReels(BulkCable cable, @Nullable Integer metres) {
        if (cable.reelLength() == null || metres == null) {
            return true;
        }
        double reels = metres / cable.reelLength().si();
        return Math.abs(reels - Math.rint(reels)) < ROUNDING;
    }

    private void checkBreaks(SaleTerms terms, @Nullable Item item, String place) {
        List<PriceBreak> breaks = terms.breaks();
        if (!breaks.isEmpty() && item != null && item.price() == null) {
            fault(
                    place,
                    FaultCode.INCONSISTENT,
                    "\"" + item.id() + "\" has no price, so what fewer of it cost is unknown.",
                    "price breaks of items with a price only");
        }
        for (int k = 0; k < breaks.size(); k++) {
            PriceBreak step = breaks.get(k);
            if (!step.price().currency().equals(catalogue.currency())) {
                fault(
                        place + "/" + k + "/price/currency",
                        FaultCode.INCONSISTENT,
                        "The price is in " + step.price().currency() + ", the catalogue in " + catalogue.currency()
                                + ".",
                        catalogue.currency());
            }
            if (k > 0 && step.from() <= breaks.get(k - 1).from()) {
                fault(
                        place + "/" + k + "/from",
                        FaultCode.INCONSISTENT,
                        "The quantity is not above that of the break before.",
                        "breaks in order of rising quantity");
            }
        }
    }

    private void fault(String place, FaultCode code, String detail, String accepted) {
        faults.add(new Fault(pointer.apply(place), code, detail, accepted));
    }
}
