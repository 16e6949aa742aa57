package io.axiswright.engine.braking;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Capacitance;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.util.LinkedHashMap;
import java.util.SequencedMap;

/** How the highest voltage of a bus came about: by what went into its capacitors and out of them until then. */
final class PeakVoltage {

    private static final String BALANCE = "derived: energy balance of the DC bus";

    private final GroupStudy study;
    private final Bus bus;
    private final Chopper chopper;

    PeakVoltage(GroupStudy study) {
        this.study = study;
        bus = study.bus();
        chopper = study.chopper(bus, 0);
    }

    /** Of one case, under a symbol of its own. */
    Derivation derivation(String symbol, CaseOutcome outcome) {
        BusTrace highest = outcome.highest();
        Replay replay = outcome.replay();
        if (highest != null && replay != null) {
            return followed(symbol, outcome, highest, replay.power());
        }
        return outcome.peakEnergy() == Math.max(bus.tripEnergy(), bus.floorEnergy())
                ? runaway(symbol, outcome)
                : bound(symbol, outcome);
    }

    private Derivation followed(String symbol, CaseOutcome outcome, BusTrace highest, BusPower power) {
        double returned = 0;
        double drawn = 0;
        for (PowerSegment segment : power.segments()) {
            double local = Math.min(segment.to(), segment.localOf(highest.peakInstant()));
            double energy = local > segment.from() ? segment.energy(segment.from(), local) : 0;
            returned += Math.max(0, energy);
            drawn += Math.max(0, -energy);
        }
        SequencedMap<String, Quantity> inputs = new LinkedHashMap<>();
        inputs.put("V_start", voltage(highest.start().energy()));
        inputs.put("E_returned", new Energy(returned));
        inputs.put("E_drawn", new Energy(drawn));
        inputs.put("E_supplied", new Energy(highest.suppliedToPeak()));
        String burned = "";
        if (chopper.present()) {
            inputs.put("E_resistor", new Energy(highest.burnedToPeak()));
            burned = " − E_resistor";
        }
        inputs.put("C", new Capacitance(bus.capacitance()));
        inputs.put("t_peak", new Time(highest.peakInstant()));
        inputs.put("p_most", new Power(outcome.peakPower()));
        if (chopper.present()) {
            inputs.put("R", new Resistance(2 / (chopper.decay() * bus.capacitance())));
        }
        return new Derivation(
                study.group().id(),
                symbol,
                "V_peak = sqrt(V_start² + 2·(E_returned − E_drawn + E_supplied" + burned
                        + ")/C); each from the start to t_peak, "
                        + "of the power p = −Σ(T·w + (T/Km)² + P_standby), p_most at the most"
                        + (chopper.present() ? ", the resistor taking V²/R while the chopper conducts" : ""),
                inputs,
                BALANCE,
                voltage(outcome.peakEnergy()));
    }

    private Derivation runaway(String symbol, CaseOutcome outcome) {
        Voltage trip = voltage(outcome.peakEnergy());
        return new Derivation(
                study.group().id(),
                symbol,
                "V_trip; a cycle returns more than it takes",
                Derivation.inputs("V_trip", trip),
                BALANCE,
                trip);
    }

    /** What every alignment stays under. */
    private Derivation bound(String symbol, CaseOutcome outcome) {
        double base = outcome.burned() > 0 ? chopper.onEnergy() : outcome.startEnergy();
        SequencedMap<String, Quantity> inputs = new LinkedHashMap<>();
        inputs.put("V_base", voltage(base));
        inputs.put("E_windows", new Energy(outcome.peakEnergy() - base));
        inputs.put("C", new Capacitance(bus.capacitance()));
        return new Derivation(
                study.group().id(),
                symbol,
                "V_peak = sqrt(V_base² + 2·E_windows/C); V_base: of the rectifier, or switch-on; E_windows: the most each axis returns "
                        + "in any stretch of time, summed, less what the resistor takes meanwhile",
                inputs,
                "derived: no alignment of the cycles returns more",
                voltage(outcome.peakEnergy()));
    }

    private Voltage voltage(double energy) {
        return new Voltage(bus.voltage(energy));
    }
}
