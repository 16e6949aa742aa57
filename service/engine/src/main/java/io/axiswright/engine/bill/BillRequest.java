package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.design.MarginRule;
import io.axiswright.engine.design.SpareRule;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.wiring.WiringResult;
import java.util.List;

/**
 * What a bill is made from.
 *
 * @param catalogue what can be bought, and what each item needs beside it
 * @param catalogueSource how the caller gave it, for pointers
 * @param demands what the other disciplines ask for, before any item's own needs
 * @param askers the parts of the design that the catalogue's demand rules are held against; none are needed without rules
 * @param networkUnplanned whether a control network is wanted but has no layout, so that nothing of it is demanded
 * @param unconnected ids of the axes that its layout leaves out, so that nothing of their connection is demanded
 * @param spares what spare parts to buy beside them
 * @param margins what margins its lines are sold at; nothing is sold without any
 * @param connections what its cables join, for the closing check
 * @param wiring what joins the parts, for the answer: its parts are among the demands
 */
public record BillRequest(
        Catalogue catalogue,
        CatalogueSource catalogueSource,
        @Count(max = 100000) List<Demand> demands,
        List<Asker> askers,
        boolean networkUnplanned,
        List<String> unconnected,
        @Count(max = 32) List<SpareRule> spares,
        @Count(max = 64) List<MarginRule> margins,
        Connections connections,
        WiringResult wiring) {

    /** A bill that misses nothing. */
    BillRequest(Catalogue catalogue, CatalogueSource catalogueSource, List<Demand> demands) {
        this(catalogue, catalogueSource, demands, List.of());
    }

    /** A bill that misses nothing, with spare parts. */
    BillRequest(Catalogue catalogue, CatalogueSource catalogueSource, List<Demand> demands, List<SpareRule> spares) {
        this(
                catalogue,
                catalogueSource,
                demands,
                List.of(),
                false,
                List.of(),
                spares,
                List.of(),
                Connections.NONE,
                new WiringResult(List.of(), List.of(), List.of(), List.of(), List.of()));
    }
}
