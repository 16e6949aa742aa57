package io.axiswright.engine.bill;

import java.util.List;
import java.util.Set;

/**
 * What the cables join, for the closing check.
 *
 * @param banks ports that are counted
 * @param terminals what takes cables without a port for each
 * @param links the cables and direct couplings
 */
public record Connections(List<PortBank> banks, Set<String> terminals, List<CableLink> links) {

    /** Nothing to be joined. */
    static final Connections NONE = new Connections(List.of(), Set.of(), List.of());

    /** Keeps the collections from being changed. */
    public Connections {
        banks = List.copyOf(banks);
        terminals = Set.copyOf(terminals);
        links = List.copyOf(links);
    }
}
