package io.axiswright.engine.study;

import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.supply.BusFeed;
import io.axiswright.engine.supply.Connection;
import io.axiswright.engine.supply.SupplyLoad;
import io.axiswright.engine.supply.SupplyRequest;
import io.axiswright.engine.supply.SupplyResult;
import io.axiswright.engine.supply.TransformerNeed;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

/** The currents that heat the cables of the loads over their cycles, what they pass on to others of their DC bus included. */
final class ThermalCurrents {

    private final SupplyResult supply;
    private final Map<String, Double> amperes = new HashMap<>();

    ThermalCurrents(SupplyRequest asked, SupplyResult supply) {
        this.supply = supply;
        Map<String, Double> rated = new HashMap<>();
        for (SupplyLoad load : asked.loads()) {
            amperes.put(load.id(), load.thermalCurrent().si());
            rated.put(load.id(), load.ratedCurrent().si());
        }
        for (BusFeed bus : supply.buses()) {
            double all = bus.feeders().stream().mapToDouble(rated::get).sum();
            for (String feeder : bus.feeders()) {
                amperes.merge(
                        feeder,
                        bus.thermalPassedOn().si() * Objects.requireNonNull(rated.get(feeder)) / all,
                        Double::sum);
            }
        }
        for (TransformerNeed transformer : supply.transformers()) {
            double ratio =
                    transformer.secondary().si() / asked.mains().voltage().si();
            double behind = transformer.loads().stream().mapToDouble(this::of).sum();
            amperes.put(transformer.id(), ratio * behind);
        }
    }

    /** That of a load or of a transformer's primary, A; of a transformer the loads behind it added up. */
    double of(String load) {
        return Objects.requireNonNull(amperes.get(load));
    }

    /**
     * The squared currents of all conductors of the mains' feeder added up, A²: on each line the loads added up, which is never too
     * little; beside three lines what {@link io.axiswright.engine.supply.Feeder#neutralCurrent the neutral can carry}. What starts
     * behind a transformer is left out: its primary stands for it.
     */
    double feederSquares() {
        Map<String, Double> lines = new HashMap<>();
        Map<String, Double> toNeutral = new HashMap<>();
        for (BranchCircuit circuit : supply.circuits()) {
            if (circuit.transformer() == null) {
                double sum = circuit.loads().stream().mapToDouble(this::of).sum();
                circuit.lines().forEach(line -> lines.merge(line, sum, Double::sum));
                if (circuit.connection() == Connection.LINE_TO_NEUTRAL) {
                    toNeutral.merge(circuit.lines().getFirst(), sum, Double::sum);
                }
            }
        }
        return switch (supply.feeder().lines().size()) {
            case 1 -> 2 * squares(lines);
            case 2 -> squares(lines);
            default -> squares(lines) + squares(toNeutral);
        };
    }

    private static double squares(Map<String, Double> currents) {
        return currents.values().stream().mapToDouble(i -> i * i).sum();
    }
}
