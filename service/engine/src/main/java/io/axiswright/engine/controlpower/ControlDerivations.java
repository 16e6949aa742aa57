package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.LaidCable;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.LineResistance;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.TemperatureRise;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** How the numbers of supplies, cables and voltages came about. */
final class ControlDerivations {

    private ControlDerivations() {}

    static List<Derivation> of(SupplyGroup group, PlacedControlSupply placed, ControlPowerRequest request) {
        var supply = group.supply();
        var site = request.site();
        return List.of(
                new Derivation(
                        placed.id(),
                        "I_available",
                        "n · I_rated · (1 − k · max(0, T − T_0)) · k_altitude",
                        Derivation.inputs(
                                "n",
                                new Ratio(group.count() - group.spare()),
                                "I_rated",
                                supply.ratedCurrent(),
                                "k_altitude",
                                new Ratio(SupplyGroup.thinAir(supply.altitude(), site)),
                                "k",
                                new Ratio(supply.deratePerKelvin()),
                                "T",
                                site.enclosureAmbient(),
                                "T_0",
                                supply.derateFrom()),
                        "catalogue data of the item",
                        placed.availableCurrent()),
                new Derivation(
                        placed.id(),
                        "I_needed",
                        "(1 + reserve) · I_worst",
                        Derivation.inputs(
                                "reserve", new Ratio(request.spec().reserve()), "I_worst", placed.worstCurrent()),
                        ControlFindings.PRACTICE,
                        new Current(group.neededCurrent())),
                new Derivation(
                        placed.id(),
                        "I_start",
                        "max over V of Σ P/V of all loads that have started at V",
                        Derivation.inputs("I_available", placed.availableCurrent()),
                        "derived",
                        new Current(group.startCurrent())),
                new Derivation(
                        placed.id(),
                        "P_input",
                        "V_out · I_steady / η",
                        Derivation.inputs(
                                "V_out", supply.outputVoltage(),
                                "I_steady", placed.steadyCurrent(),
                                "η", new Ratio(supply.efficiency())),
                        "catalogue data of the item",
                        placed.inputPower()),
                new Derivation(
                        placed.id(),
                        "t_hold",
                        "t_rated · n · I_rated / I_steady",
                        Derivation.inputs(
                                "n", new Ratio(group.count()),
                                "t_rated", supply.holdUpTime(),
                                "I_rated", supply.ratedCurrent(),
                                "I_steady", placed.steadyCurrent()),
                        "derived: the energy stored at the input is the same at any load",
                        placed.holdUp()));
    }

    /** How a short circuit at the end of an output circuit is cleared. */
    static List<Derivation> of(CircuitProtection circuit) {
        String subject = circuit.far().terminal().subject();
        return List.of(new Derivation(
                subject,
                "I_fault",
                "min(V_0 / R_loop, what the supply gives beside its other circuits)",
                Derivation.inputs(
                        "V_0", new Voltage(circuit.plan().source().low()),
                        "R_loop", new Resistance(circuit.far().resistance())),
                "derived: Ohm's law; catalogue data of the supply",
                new Current(circuit.faultCurrent())));
    }

    /** How long the first terminal to leave its band lasts with the buffer; none without one. */
    static List<Derivation> of(Buffering buffering, PlacedControlSupply placed) {
        var buffer = buffering.buffer();
        return buffer.isEmpty()
                ? List.of()
                : List.of(new Derivation(
                        placed.id(),
                        "t_in_band",
                        buffer.get().unit().heldVoltage() == null
                                ? "t_hold + ∫ C/I(V) dV, C = 2 E / V_out²"
                                : "t_hold + E / (V I), outputs on until the last stop is over, then standby",
                        Derivation.inputs(
                                "t_hold",
                                placed.holdUp(),
                                "E",
                                new Energy(buffer.get().energy())),
                        "derived: energy of the buffer at the end of its life",
                        new Time(Arrays.stream(buffering.inBand()).min().orElse(0))));
    }

    static List<Derivation> of(ChainPlan plan, Temperature conductor, @Nullable Double collapse) {
        List<Derivation> all = new ArrayList<>();
        for (int k = 0; k < plan.cables().size(); k++) {
            ControlNode node = plan.network().gateways().get(k);
            plan.cables()
                    .get(k)
                    .ifPresent(cable -> all.add(new Derivation(
                            node.id(),
                            "R_loop",
                            "2 · R20' · ℓ · (1 + α (T − 20 °C)) + R_connectors",
                            Derivation.inputs(
                                    "R20'",
                                    coldResistance(cable),
                                    "ℓ",
                                    cable.length(),
                                    "T",
                                    conductor,
                                    "T − 20 °C",
                                    new TemperatureRise(conductor.si() - Conductors.TWENTY_CELSIUS)),
                            "IEC 60228:2004 Table 3, class 5; other sizes ρ20 · k / A with IEC 60028 ρ20 = 1/58 Ω·mm²/m",
                            new Resistance(Conductors.loopResistance(cable, conductor)))));
        }
        plan.state().ifPresent(state -> {
            int worst = state.worstTerminal();
            all.add(new Derivation(
                    plan.network().terminals().get(worst).subject(),
                    "V",
                    "V_i = V_(i−1) − r_i Σ_(j beyond i) (P_j/V_j + G_j V_j)",
                    Derivation.inputs("V_0", new Voltage(plan.source().low())),
                    "derived: Kirchhoff's laws with constant-power and resistive loads; Newton's method on the tree",
                    new Voltage(Math.min(state.lowest(worst), state.release(worst)))));
        });
        if (collapse != null) {
            all.add(new Derivation(
                    plan.network().chain(),
                    "λ_collapse",
                    "largest λ with a solution of V = V_0 − R (λ P/V + λ G V)",
                    Derivation.inputs("V_0", new Voltage(plan.source().low())),
                    "derived: bisection on λ",
                    new Ratio(collapse)));
        }
        return all;
    }

    private static LineResistance coldResistance(LaidCable cable) {
        return new LineResistance(Conductors.coldResistance(Objects.requireNonNull(cable.powerConductor())));
    }
}
