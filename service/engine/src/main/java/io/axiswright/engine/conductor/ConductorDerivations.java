package io.axiswright.engine.conductor;

import static io.axiswright.engine.finding.Derivation.inputs;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.LineResistance;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.List;

/** How the numbers of a chosen conductor came about. */
final class ConductorDerivations {

    private ConductorDerivations() {}

    static List<Derivation> of(Circuit circuit, Judge judge, int k) {
        var derivations = new ArrayList<Derivation>(3);
        derivations.add(ampacity(circuit, judge.ampacity(k)));
        derivations.add(drop(circuit, judge.impedance(k)));
        Current fault = circuit.prospectiveFaultCurrent();
        Time clearing = circuit.clearingTime();
        if (fault != null && clearing != null) {
            derivations.add(withstand(circuit, judge, k, fault, clearing));
        }
        return derivations;
    }

    private static Derivation ampacity(Circuit circuit, Ampacity ampacity) {
        return new Derivation(
                circuit.id(),
                "Iz",
                "It · Ca · Cg",
                inputs(
                        "It",
                        ampacity.base().value(),
                        "Ca",
                        ampacity.ambient().value(),
                        "Cg",
                        ampacity.together().value()),
                ampacity.base().clause() + "; " + ampacity.ambient().clause() + "; "
                        + ampacity.together().clause(),
                ampacity.corrected());
    }

    private static Derivation drop(Circuit circuit, Impedance impedance) {
        return new Derivation(
                circuit.id(),
                "ΔU",
                VoltageDrop.formula(circuit.kind()),
                inputs(
                        "I",
                        circuit.designCurrent(),
                        "R",
                        new LineResistance(impedance.resistance()),
                        "X",
                        new LineResistance(impedance.reactance()),
                        "cos φ",
                        new Ratio(circuit.powerFactor()),
                        "L",
                        circuit.length()),
                impedance.source().clause(),
                new Voltage(Drops.volts(circuit, impedance)));
    }

    private static Derivation withstand(Circuit circuit, Judge judge, int k, Current fault, Time clearing) {
        var factor = FaultWithstand.factor(circuit, judge.area(k));
        return new Derivation(
                circuit.id(),
                "S",
                "I · √t / k",
                inputs("I", fault, "t", clearing, "k", new Ratio(factor.value())),
                FaultWithstand.CLAUSE + "; " + factor.clause(),
                new Area(FaultWithstand.section(fault.si(), clearing.si(), factor.value())));
    }
}
