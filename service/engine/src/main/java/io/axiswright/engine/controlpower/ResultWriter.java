package io.axiswright.engine.controlpower;

import static io.axiswright.engine.finding.FindingCode.CONTROL_KEEP_ALIVE_ABSENT;
import static io.axiswright.engine.finding.FindingCode.CONTROL_SPUR_WITHOUT_POWER;
import static io.axiswright.engine.finding.FindingCode.CONTROL_SUPPLY_NONE;

import io.axiswright.engine.catalogue.LaidCable;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Puts the parts of the result together, supply by supply. */
final class ResultWriter {

    private static final String CATALOGUE = "catalogue data of the item";

    private final ControlPowerRequest request;
    private final Temperature conductor;
    private final double longestCable;
    private final List<PlacedControlSupply> supplies = new ArrayList<>();
    private final List<ChainFeed> chains = new ArrayList<>();
    private final List<FeedLink> links = new ArrayList<>();
    private final List<ControlVoltage> voltages = new ArrayList<>();
    private final List<OutputCircuit> circuits = new ArrayList<>();
    private final List<HoldUp> holdUps = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Derivation> derivations = new ArrayList<>();

    ResultWriter(ControlPowerRequest request, Temperature conductor, double longestCable) {
        this.request = request;
        this.conductor = conductor;
        this.longestCable = longestCable;
    }

    /** Remarks about single axes that hold whatever is picked. */
    void loads() {
        for (ControlNode node : request.nodes()) {
            for (ControlLoad load : node.loads()) {
                String pointer = ControlFindings.axisPointer(load);
                if (load.spur().powerConductor() == null) {
                    findings.add(CONTROL_SPUR_WITHOUT_POWER.at(
                            load.axis(), pointer, CATALOGUE, load.driveUnit().logicPower(), null));
                }
                if (load.keepAlive() && !load.driveUnit().keepAliveInput()) {
                    findings.add(CONTROL_KEEP_ALIVE_ABSENT.at(load.axis(), pointer, CATALOGUE, null, null));
                }
            }
        }
    }

    /** A chain no supply of the catalogue can feed: only what it would take without losses is known. */
    void unfed(ChainNetwork network) {
        var nominal = new SourceVoltages(ControlConstants.NOMINAL, ControlConstants.NOMINAL);
        ChainState state = network.lossless(nominal, request.spec().brakesReleaseTogether());
        Current worst = new Current(state.worstCurrent());
        chains.add(
                new ChainFeed(network.chain(), null, null, new Current(state.steadyCurrent()), worst, null, List.of()));
        findings.add(CONTROL_SUPPLY_NONE.at(
                network.chain(), ControlFindings.POINTER, ControlFindings.PRACTICE, worst, null));
    }

    /** A supply with all chains on it. */
    void supply(SupplyGroup group) {
        Buffering buffering = Buffering.of(group, Placing.holdUp(group).si(), request);
        PlacedControlSupply placed = Placing.of(group, buffering, "control-supply-" + (supplies.size() + 1), request);
        supplies.add(placed);
        holdUps.addAll(buffering.results(group, placed.id()));
        group.protections().forEach(protection -> circuits.add(protection.result(placed.id())));
        findings.addAll(SupplyFindings.of(group, placed, buffering, request));
        derivations.addAll(ControlDerivations.of(group, placed, request));
        derivations.addAll(ControlDerivations.of(buffering, placed));
        group.protections().forEach(circuit -> derivations.addAll(ControlDerivations.of(circuit)));
        group.plans().forEach(plan -> chain(plan, placed.id()));
    }

    private void chain(ChainPlan plan, String supply) {
        ChainState currents = plan.currents();
        Double collapse = collapse(plan);
        Map<ControlMode, Optional<ModeState>> modes = modes(plan);
        chains.add(new ChainFeed(
                plan.network().chain(),
                plan.network().gateways().getFirst().id(),
                supply,
                new Current(currents.steadyCurrent()),
                new Current(currents.worstCurrent()),
                collapse,
                modes.entrySet().stream()
                        .map(mode -> new ModeCurrent(
                                mode.getKey(),
                                mode.getValue()
                                        .map(state -> new Current(state.current()))
                                        .orElse(null)))
                        .toList()));
        for (int k = 0; k < plan.cables().size(); k++) {
            links.add(link(plan, k));
        }
        plan.state().ifPresent(state -> {
            for (int k = 0; k < plan.network().terminals().size(); k++) {
                voltages.add(voltage(plan.network().terminals().get(k), state, modes, k));
            }
        });
        findings.addAll(ControlFindings.of(plan, collapse, longestCable));
        derivations.addAll(ControlDerivations.of(plan, conductor, collapse));
    }

    /** Every mode that exists; none of them without all cables. */
    private Map<ControlMode, Optional<ModeState>> modes(ChainPlan plan) {
        Map<ControlMode, Optional<ModeState>> modes = new EnumMap<>(ControlMode.class);
        for (ControlMode mode : ControlMode.values()) {
            if (plan.isCabled() && !plan.network().cases(mode).isEmpty()) {
                modes.put(mode, ModeState.of(plan, mode, conductor));
            }
        }
        return modes;
    }

    /** In the load case with the lowest voltage; with all brakes that may pull in together if there is no working point. */
    private @Nullable Double collapse(ChainPlan plan) {
        if (!plan.isCabled()) {
            return null;
        }
        LoadCase worst = plan.state().map(ChainState::worstCase).orElseGet(() -> heaviest(plan));
        var multiple = plan.network()
                .tree(plan.resistances(conductor), worst)
                .collapseMultiple(plan.source().low());
        return multiple.isPresent() ? multiple.getAsDouble() : null;
    }

    private LoadCase heaviest(ChainPlan plan) {
        return plan.network().judgedCases(request.spec().brakesReleaseTogether()).stream()
                .min(Comparator.comparingDouble((LoadCase loads) -> plan.network()
                        .tree(plan.resistances(conductor), loads)
                        .collapseMultiple(plan.source().low())
                        .orElse(Double.POSITIVE_INFINITY)))
                .orElseThrow();
    }

    private FeedLink link(ChainPlan plan, int index) {
        ControlNode node = plan.network().gateways().get(index);
        var cable = plan.cables().get(index);
        Optional<Double> resistance = cable.map(c -> Conductors.loopResistance(c, conductor));
        Optional<Double> current = plan.state().map(state -> state.linkCurrent(index));
        return new FeedLink(
                node.id(),
                node.upstream(),
                node.feedLength(),
                cable.map(c -> c.pieces().getFirst().id()).orElse(null),
                cable.map(LaidCable::extension).orElse(null),
                resistance.map(Resistance::new).orElse(null),
                current.map(Current::new).orElse(null),
                current.flatMap(i -> resistance.map(r -> new Voltage(i * r))).orElse(null));
    }

    private static ControlVoltage voltage(
            Terminal terminal, ChainState state, Map<ControlMode, Optional<ModeState>> modes, int index) {
        double required = state.tightestAtRelease(index) ? terminal.requiredToRelease() : terminal.required();
        return new ControlVoltage(
                terminal.subject(),
                terminal.kind(),
                new Voltage(state.steady(index)),
                new Voltage(state.pullIn(index)),
                new Voltage(required),
                modes.values().stream()
                        .flatMap(Optional::stream)
                        .map(mode -> new ModeVoltage(mode.mode(), new Voltage(mode.voltages()[index])))
                        .toList(),
                new Voltage(state.margin(index)));
    }

    ControlPowerResult result() {
        ControlVoltage worst = voltages.stream()
                .min(Comparator.comparingDouble(v -> v.margin().si()))
                .orElse(null);
        return new ControlPowerResult(
                supplies, chains, links, voltages, circuits, holdUps, worst, findings, derivations);
    }
}
