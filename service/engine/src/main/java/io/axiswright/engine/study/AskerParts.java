package io.axiswright.engine.study;

import io.axiswright.engine.bill.Asker;
import io.axiswright.engine.condition.Facts;
import io.axiswright.engine.condition.FlagAttribute;
import io.axiswright.engine.condition.QuantityAttribute;
import io.axiswright.engine.condition.Reach;
import io.axiswright.engine.condition.WordAttribute;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.topology.SpurLink;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The machine, its axes and its circuits with what is known of them, for the demand rules of the catalogue. */
final class AskerParts {

    private final StudyRun run;
    private final Design design;
    private final Facts machine;
    private final Map<String, Length> spurs = new HashMap<>();

    private AskerParts(StudyRun run) {
        this.run = run;
        this.design = run.request().design();
        this.machine = machine();
        run.topology().gateways().stream()
                .flatMap(gateway -> gateway.spurs().stream())
                .forEach((SpurLink spur) -> spurs.put(spur.axis(), spur.cableLength()));
    }

    /** None where no rule asks. */
    static List<Asker> of(StudyRun run) {
        return run.request().catalogue().demandRuleList().isEmpty() ? List.of() : new AskerParts(run).all();
    }

    private List<Asker> all() {
        List<Asker> askers = new ArrayList<>();
        askers.add(new Asker(Reach.MACHINE, "the machine", "/design", List.of(), machine));
        for (int k = 0; k < design.axes().size(); k++) {
            Axis axis = design.axes().get(k);
            AxisDuty duty = run.duty().axes().get(k);
            askers.add(new Asker(
                    Reach.AXIS,
                    DemandCollection.asker(axis),
                    "/design/axes/" + k,
                    DemandCollection.conditions(axis, duty),
                    machine.and(facts(axis, duty))));
        }
        for (BranchCircuit circuit : run.supply().circuits()) {
            askers.add(new Asker(
                    Reach.CIRCUIT,
                    DemandCollection.asker(circuit),
                    "/design/installation",
                    List.of(),
                    machine.and(facts(circuit))));
        }
        return askers;
    }

    private Facts machine() {
        Map<QuantityAttribute, Quantity> quantities = new EnumMap<>(QuantityAttribute.class);
        quantities.put(QuantityAttribute.AXES, new Ratio(design.axes().size()));
        quantities.put(
                QuantityAttribute.CIRCUITS, new Ratio(run.supply().circuits().size()));
        quantities.put(
                QuantityAttribute.GATEWAYS, new Ratio(run.topology().gateways().size()));
        quantities.put(QuantityAttribute.MAINS_VOLTAGE, design.mains().voltage());
        quantities.put(
                QuantityAttribute.PROSPECTIVE_FAULT_CURRENT, design.mains().prospectiveFaultCurrent());
        quantities.put(QuantityAttribute.FEEDER_CURRENT, run.supply().feeder().designCurrent());
        quantities.put(QuantityAttribute.ALTITUDE, design.site().altitude());
        quantities.put(QuantityAttribute.AMBIENT, design.site().ambient());
        quantities.put(QuantityAttribute.ENCLOSURE_AMBIENT, design.site().enclosureAmbient());
        boolean braking = run.braking().groups().stream().anyMatch(group -> group.chosen() != null);
        return new Facts(
                quantities,
                Map.of(
                        WordAttribute.CODE_BASIS, run.request().codeBasis().name(),
                        WordAttribute.SUPPLY_SYSTEM, design.mains().system().name()),
                braking ? Set.of(FlagAttribute.BRAKING_UNIT) : Set.of());
    }

    private Facts facts(Axis axis, AxisDuty duty) {
        Map<QuantityAttribute, Quantity> quantities = new EnumMap<>(QuantityAttribute.class);
        quantities.put(QuantityAttribute.AXIS_PEAK_TORQUE, duty.figures().peakTorque());
        quantities.put(QuantityAttribute.AXIS_RMS_TORQUE, duty.figures().rmsTorque());
        quantities.put(QuantityAttribute.AXIS_PEAK_SPEED, duty.figures().peakSpeed());
        quantities.put(QuantityAttribute.AXIS_PEAK_POWER, duty.figures().peakMotoringPower());
        @Nullable Length spur = spurs.get(axis.id());
        if (spur != null) {
            quantities.put(QuantityAttribute.SPUR_LENGTH, spur);
        }
        Map<WordAttribute, String> words = new EnumMap<>(WordAttribute.class);
        put(words, WordAttribute.DRIVE_UNIT, duty.driveUnit());
        put(words, WordAttribute.GEAR_UNIT, duty.gearUnit());
        return new Facts(quantities, words, flags(axis, duty));
    }

    private static Set<FlagAttribute> flags(Axis axis, AxisDuty duty) {
        Set<FlagAttribute> flags = EnumSet.noneOf(FlagAttribute.class);
        raise(flags, FlagAttribute.FOOT_MOUNTED, DemandCollection.onFeet(axis));
        raise(flags, FlagAttribute.FORCED_VENTILATION, duty.ventilationKit() != null);
        raise(flags, FlagAttribute.HOLDING_BRAKE, duty.holdingBrake() != null);
        raise(flags, FlagAttribute.KEEP_ALIVE, axis.drive().keepAlive());
        raise(flags, FlagAttribute.SHARED_BUS, axis.busGroup() != null);
        raise(flags, FlagAttribute.STOP_ZONE, axis.stopZone() != null);
        return flags;
    }

    private static void raise(Set<FlagAttribute> flags, FlagAttribute flag, boolean is) {
        if (is) {
            flags.add(flag);
        }
    }

    private static Facts facts(BranchCircuit circuit) {
        Map<WordAttribute, String> words = new EnumMap<>(WordAttribute.class);
        words.put(WordAttribute.CIRCUIT_USE, circuit.use().name());
        words.put(WordAttribute.CIRCUIT_CONNECTION, circuit.connection().name());
        put(words, WordAttribute.CIRCUIT_DEVICE, circuit.device());
        return new Facts(
                Map.of(
                        QuantityAttribute.CIRCUIT_CURRENT, circuit.designCurrent(),
                        QuantityAttribute.CIRCUIT_VOLTAGE, circuit.voltage(),
                        QuantityAttribute.CIRCUIT_LOADS,
                                new Ratio(circuit.loads().size()),
                        QuantityAttribute.CIRCUIT_LENGTH, circuit.longestRoute()),
                words,
                Set.of());
    }

    private static void put(Map<WordAttribute, String> words, WordAttribute attribute, @Nullable String word) {
        if (word != null) {
            words.put(attribute, word);
        }
    }
}
