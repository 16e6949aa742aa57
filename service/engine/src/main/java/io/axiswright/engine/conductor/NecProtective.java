package io.axiswright.engine.conductor;

import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.standard.NecConductors;
import io.axiswright.engine.standard.ProtectiveConductors;
import io.axiswright.engine.standard.Sourced;
import java.util.Optional;

/** The protective conductor under NFPA 79 8.2.2.3 and NFPA 70 250.122. */
final class NecProtective {

    private NecProtective() {}

    /**
     * By the device; raised in the unrounded ratio of circular mils where the line conductor is larger than its current
     * needs (250.122(B)); never larger than the line conductor (250.122(A)).
     *
     * @param device rating of the device ahead
     * @param chosen the line conductor
     * @param needed the smallest line conductor for its current
     */
    static Optional<Sourced<ConductorSize>> of(Current device, NecSize chosen, NecSize needed) {
        return ProtectiveConductors.northAmerican(device).map(table -> {
            long mils = NecConductors.circularMils(table.value()).orElseThrow().value();
            ConductorSize size = NecSize.ALL.stream()
                    .filter(s -> s.circularMils() >= mils)
                    // s / table ≥ chosen / needed, in whole numbers: a rounded ratio can cost a size
                    .filter(s -> s.circularMils() * needed.circularMils() >= mils * chosen.circularMils())
                    .map(NecSize::size)
                    .findFirst()
                    .filter(s -> s.compareTo(chosen.size()) < 0)
                    .orElse(chosen.size());
            return new Sourced<>(size, table.source());
        });
    }
}
