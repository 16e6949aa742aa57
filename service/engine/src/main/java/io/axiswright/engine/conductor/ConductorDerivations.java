package io.axiswright.engine.conductor;

import static io.axiswright.engine.finding.Derivation.inputs;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.LineResistance;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.Sourced;
import java.util.ArrayList;
import java.util.List;

/** How the numbers of a chosen conductor came about. */
final class ConductorDerivations {

    private ConductorDerivations() {}

    static List<Derivation> of(Circuit circuit, Judge judge, int k) {
        var derivations = new ArrayList<Derivation>(3);
        Current largest = circuit.largestLoad();
        if (largest != null && judge.severalLoads() != null) {
            derivations.add(severalLoads(circuit, largest, judge.severalLoads()));
        }
        derivations.add(ampacity(circuit, judge.ampacity(k)));
        Current neutral = NeutralLoading.current(circuit);
        Double share = circuit.thirdHarmonic();
        if (neutral != null && share != null) {
            derivations.add(neutral(circuit, share, neutral));
        }
        derivations.add(drop(circuit, judge.impedance(k)));
        Current fault = circuit.prospectiveFaultCurrent();
        Time clearing = circuit.clearingTime();
        if (fault != null && clearing != null) {
            derivations.add(withstand(circuit, judge, k, fault, clearing));
        }
        return derivations;
    }

    private static Derivation severalLoads(Circuit circuit, Current largest, NecLoad load) {
        return new Derivation(
                circuit.id(),
                "Id",
                "1.25 · Imax + ΣIothers",
                inputs("Imax", largest, "ΣIothers", new Current(load.actual().si() - largest.si())),
                load.clause(),
                NecLoad.raised(circuit));
    }

    private static Derivation neutral(Circuit circuit, double share, Current neutral) {
        return new Derivation(
                circuit.id(),
                "IN",
                "3 · h3 · I",
                inputs("h3", new Ratio(share), "I", circuit.designCurrent()),
                "IEC 60364-5-52:2009 Annex E",
                neutral);
    }

    private static Derivation ampacity(Circuit circuit, Ampacity ampacity) {
        var factors = new AmpacityFactors();
        factors.add("It", ampacity.base().value(), ampacity.base().clause());
        factors.add("Ca", ampacity.ambient().value(), ampacity.ambient().clause());
        factors.add("Cg", ampacity.together().value(), ampacity.together().clause());
        Sourced<Ratio> neutral = ampacity.neutral();
        if (neutral != null) {
            factors.add("Cn", neutral.value(), neutral.clause());
        }
        if (ampacity.parallel() > 1) {
            factors.add(
                    "n",
                    new Ratio(ampacity.parallel()),
                    "NFPA 70:2023 310.10(G), IEC 60364-5-52:2009 523.7 (from memory)");
        }
        return factors.product(circuit.id(), ampacity.corrected());
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
