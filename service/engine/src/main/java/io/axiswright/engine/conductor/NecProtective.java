package io.axiswright.engine.conductor;

import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.standard.NecConductors;
import io.axiswright.engine.standard.ProtectiveConductors;
import io.axiswright.engine.standard.Sourced;
import java.util.List;
import java.util.Optional;

/** The protective conductor under NFPA 79 8.2.2.3 and NFPA 70 250.122. */
final class NecProtective {

    private NecProtective() {}

    /**
     * By the device; raised in the unrounded ratio of circular mils where the line conductor is larger than its current
     * needs (250.122(B)); never larger than the line conductor (250.122(A)). Beside each set of parallel conductors one of
     * the full size (250.122(F)), which the conductors of all sets together limit.
     *
     * @param material of the lines, and so of the protective conductor
     * @param device rating of the device ahead
     * @param chosen the line conductor
     * @param parallel conductors in parallel on each line
     * @param needed the thinnest line for its current
     */
    static Optional<Sourced<ConductorSize>> of(
            ConductorMaterial material, Current device, NecSize chosen, int parallel, Needed needed) {
        List<NecSize> sizes = NecSize.of(material);
        long line = parallel * chosen.circularMils();
        long least = needed.parallel() * sizes.get(needed.size()).circularMils();
        return ProtectiveConductors.northAmerican(material, device).map(table -> {
            long mils = NecConductors.circularMils(table.value()).orElseThrow().value();
            ConductorSize size = sizes.stream()
                    .filter(s -> s.circularMils() >= mils)
                    // s / table ≥ line / least, in whole numbers: a rounded ratio can cost a size
                    .filter(s -> s.circularMils() * least >= mils * line)
                    .findFirst()
                    .filter(s -> s.circularMils() < line)
                    .map(NecSize::size)
                    .orElse(chosen.size());
            return new Sourced<>(size, table.source());
        });
    }
}
