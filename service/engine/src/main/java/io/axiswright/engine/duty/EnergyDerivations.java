package io.axiswright.engine.duty;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/** How the energies of a cycle came about: the areas under the power, stretch by stretch, the larger ones by themselves. */
final class EnergyDerivations {

    private static final int STRETCHES = 6;

    /** Stretches with less than this share of the energy are not named one by one. */
    private static final double NAMED = 0.01;

    /** Energies below this share of the whole are rounding at the ends of motions. */
    private static final double LEAST = 1e-10;

    private EnergyDerivations() {}

    /** Of one axis; what is no more than rounding beside the energy that passes either way is not derived. */
    static List<Derivation> of(String axis, List<PowerStretch> stretches, DutyFigures figures) {
        List<Derivation> derivations = new ArrayList<>();
        double least =
                LEAST * (figures.motoredEnergy().si() + figures.returnedEnergy().si());
        if (figures.motoredEnergy().si() > least) {
            derivations.add(one(axis, "E_motored", "the motor drives", stretches, 1, figures.motoredEnergy()));
        }
        if (figures.returnedEnergy().si() > least) {
            derivations.add(one(axis, "E_returned", "the shaft gives back", stretches, -1, figures.returnedEnergy()));
        }
        return derivations;
    }

    private static Derivation one(
            String axis, String symbol, String which, List<PowerStretch> stretches, double sign, Energy result) {
        List<PowerStretch> largest = stretches.stream()
                .filter(one -> one.energy() * sign > NAMED * result.si())
                .sorted(Comparator.comparingDouble(one -> -Math.abs(one.energy())))
                .limit(STRETCHES)
                .sorted(Comparator.comparingDouble(PowerStretch::start))
                .toList();
        double rest = stretches.stream()
                .filter(one -> one.energy() * sign > 0 && !largest.contains(one))
                .mapToDouble(one -> one.energy() * sign)
                .sum();
        var formula = new StringBuilder(symbol + " = ");
        SequencedMap<String, Quantity> inputs = new LinkedHashMap<>();
        for (int k = 1; k <= largest.size(); k++) {
            PowerStretch stretch = largest.get(k - 1);
            inputs.put("P_" + k, new Power(sign * stretch.energy() / stretch.duration()));
            inputs.put("t_" + k, new Time(stretch.duration()));
            formula.append(k > 1 ? " + " : "").append("P_" + k + "·t_" + k);
        }
        boolean more = rest > LEAST * result.si();
        if (more) {
            formula.append(largest.isEmpty() ? "E_rest" : " + E_rest");
            inputs.put("E_rest", new Energy(rest));
        }
        formula.append("; P, t: mean of T·w and length of each stretch of the cycle in which ")
                .append(which)
                .append(more ? ", E_rest: all lesser ones" : "");
        return new Derivation(axis, symbol, formula.toString(), inputs, "derived: integral of power over time", result);
    }
}
