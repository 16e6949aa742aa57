package io.axiswright.engine.supply;

import java.util.List;

/**
 * A panel: the mains panel, or that behind a transformer.
 *
 * @param groups the loads by circuit
 * @param placing the lines the circuits use
 * @param circuits the circuits, in the order of the groups
 * @param feeder what feeds it
 * @param selectivity what the ratings of its devices tell of which trips first
 */
record Panel(
        List<LoadGroup> groups,
        LinePlacing placing,
        List<BranchCircuit> circuits,
        Feeder feeder,
        FeederSelectivity selectivity) {}
