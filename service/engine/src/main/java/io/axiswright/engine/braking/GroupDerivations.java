package io.axiswright.engine.braking;

import static io.axiswright.engine.finding.Derivation.inputs;

import io.axiswright.engine.catalogue.BrakingUnit;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Capacitance;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.TemperatureRise;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.List;
import java.util.SequencedMap;

/** How the important numbers of one DC bus came about. */
final class GroupDerivations {

    private final GroupStudy study;
    private final BrakingRequest request;
    private final List<Derivation> derivations = new ArrayList<>();

    GroupDerivations(GroupStudy study, BrakingRequest request) {
        this.study = study;
        this.request = request;
    }

    List<Derivation> all() {
        Bus bus = study.bus();
        Voltage nominal = new Voltage(RectifiedVoltage.nominal(study.group().axes(), request.mains()));
        Voltage floor = new Voltage(bus.voltage(bus.floorEnergy()));
        Voltage trip = new Voltage(bus.voltage(bus.tripEnergy()));
        Capacitance capacitance = new Capacitance(bus.capacitance());
        PeakVoltage peaks = new PeakVoltage(study);
        add(
                "V_floor",
                "V_nominal·(1 + highTolerance), V_nominal = √2·V_line (DC-fed: V_rated)",
                inputs(
                        "V_nominal",
                        nominal,
                        "highTolerance",
                        new Ratio(request.mains().highTolerance())),
                "derived: peak of the rectified line",
                floor);
        add(
                "E_absorbable",
                "½·C·(V_trip² − V_floor²)",
                inputs("C", capacitance, "V_trip", trip, "V_floor", floor),
                "derived: energy of a capacitor",
                new Energy(bus.tripEnergy() - bus.floorEnergy()));
        for (CaseOutcome outcome : study.run().cases()) {
            derivations.add(peaks.derivation("V_peak " + name(outcome), outcome));
        }
        BrakingUnit unit = study.unit();
        if (unit != null) {
            unit(unit);
        }
        return derivations;
    }

    private void unit(BrakingUnit unit) {
        Ratio tolerance = new Ratio(unit.resistanceTolerance());
        CaseOutcome cycle = study.run().cycle();
        add(
                "I_chopper",
                "V_on/(R·(1 − tolerance))",
                inputs("V_on", unit.chopperOn(), "R", unit.resistance(), "tolerance", tolerance),
                "derived: Ohm's law at the lowest resistance",
                new Current(UnitTrial.current(unit, unit.chopperOn().si())));
        add(
                "P_mean",
                "E_resistor/t_cycle",
                inputs("E_resistor", new Energy(cycle.burned()), "t_cycle", new Time(cycle.duration())),
                "derived: mean over the cycle in periodic steady state",
                new Power(cycle.meanBurned()));
        add(
                "theta_resistor",
                "theta_ambient + rise; m·c·rise' = P − rise/R_th, periodic over the cycle, the worst stop on top",
                inputs(
                        "theta_ambient", request.ambient(),
                        "mc", unit.heatCapacity(),
                        "R_th", unit.thermalResistance(),
                        "rise", new TemperatureRise(study.run().peakRise())),
                "derived: one thermal time constant",
                new Temperature(request.ambient().si() + study.run().peakRise()));
    }

    private static String name(CaseOutcome outcome) {
        String zone = outcome.zone();
        return outcome.kind() + (zone == null ? "" : " " + zone);
    }

    private void add(
            String symbol, String formula, SequencedMap<String, Quantity> inputs, String clause, Quantity result) {
        derivations.add(new Derivation(study.group().id(), symbol, formula, inputs, clause, result));
    }
}
