package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.design.Operation;
import io.axiswright.engine.energy.ConductorLoss;
import io.axiswright.engine.energy.ControlSupplyPower;
import io.axiswright.engine.energy.EnergyRequest;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.supply.TransformerNeed;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** What takes energy or turns it into heat. */
final class EnergyParts {

    private EnergyParts() {}

    static EnergyRequest request(StudyRun run, Operation operation) {
        MeanPowers powers = run.meanPowers();
        var heat = new CableHeat(run);
        return new EnergyRequest(
                operation,
                powers.axes(),
                powers.buses(),
                run.controlPower().supplies().stream()
                        .map(supply -> new ControlSupplyPower(supply.id(), supply.inputPower(), supply.heat()))
                        .toList(),
                new Power(run.supply().transformers().stream()
                        .map(TransformerNeed::loss)
                        .filter(Objects::nonNull)
                        .mapToDouble(Power::si)
                        .sum()),
                conductors(run, heat),
                operation.life() == null ? List.of() : new CableChoices(run, heat).all());
    }

    private static List<ConductorLoss> conductors(StudyRun run, CableHeat heat) {
        List<ConductorLoss> losses = new ArrayList<>();
        for (var cable : run.conductoring().cables()) {
            heat.watts(cable, run.stock().get(BulkCable.class, cable.item()))
                    .ifPresent(watts -> losses.add(new ConductorLoss(cable.circuit(), new Power(watts))));
        }
        return List.copyOf(losses);
    }
}
