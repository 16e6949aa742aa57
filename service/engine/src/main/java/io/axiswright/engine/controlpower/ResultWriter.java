package io.axiswright.engine.controlpower;

import static io.axiswright.engine.finding.FindingCode.CONTROL_KEEP_ALIVE_ABSENT;
import static io.axiswright.engine.finding.FindingCode.CONTROL_SPUR_WITHOUT_POWER;
import static io.axiswright.engine.finding.FindingCode.CONTROL_SUPPLY_NONE;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
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
        chains.add(new ChainFeed(network.chain(), null, new Current(state.steadyCurrent()), worst, null));
        findings.add(CONTROL_SUPPLY_NONE.at(
                network.chain(), ControlFindings.POINTER, ControlFindings.PRACTICE, worst, null));
    }

    /** A supply with all chains on it. */
    void supply(SupplyGroup group) {
        PlacedControlSupply placed = Placing.of(group, "control-supply-" + (supplies.size() + 1), request);
        supplies.add(placed);
        findings.addAll(SupplyFindings.of(group, placed, request));
        derivations.addAll(ControlDerivations.of(group, placed, request));
        group.plans().forEach(plan -> chain(plan, placed.id()));
    }

    private void chain(ChainPlan plan, String supply) {
        ChainState currents = plan.currents();
        Double collapse = collapse(plan);
        chains.add(new ChainFeed(
                plan.network().chain(),
                supply,
                new Current(currents.steadyCurrent()),
                new Current(currents.worstCurrent()),
                collapse));
        for (int k = 0; k < plan.cables().size(); k++) {
            links.add(link(plan, k));
        }
        plan.state().ifPresent(state -> {
            for (int k = 0; k < plan.network().terminals().size(); k++) {
                voltages.add(voltage(plan.network().terminals().get(k), state, k));
            }
        });
        findings.addAll(ControlFindings.of(plan, collapse, longestCable));
        derivations.addAll(ControlDerivations.of(plan, conductor, collapse));
    }

    /** In the load case with the lowest voltage; with all brakes that may pull in together if there is no working point. */
    private @Nullable Double collapse(ChainPlan plan) {
        if (!plan.isCabled()) {
            return null;
        }
        BitSet worst = plan.state().map(ChainState::worstCase).orElseGet(() -> heaviest(plan));
        var multiple = plan.network()
                .tree(plan.resistances(conductor), worst)
                .collapseMultiple(plan.source().low());
        return multiple.isPresent() ? multiple.getAsDouble() : null;
    }

    private BitSet heaviest(ChainPlan plan) {
        return plan.network().pullInCases(request.spec().brakesReleaseTogether()).stream()
                .min(Comparator.comparingDouble(pulling -> plan.network()
                        .tree(plan.resistances(conductor), pulling)
                        .collapseMultiple(plan.source().low())
                        .orElse(Double.POSITIVE_INFINITY)))
                .orElseGet(BitSet::new);
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
                cable.map(c -> c.id()).orElse(null),
                resistance.map(Resistance::new).orElse(null),
                current.map(Current::new).orElse(null),
                current.flatMap(i -> resistance.map(r -> new Voltage(i * r))).orElse(null));
    }

    private static ControlVoltage voltage(Terminal terminal, ChainState state, int index) {
        double required = state.tightestAtRelease(index) ? terminal.requiredToRelease() : terminal.required();
        return new ControlVoltage(
                terminal.subject(),
                terminal.kind(),
                new Voltage(state.steady(index)),
                new Voltage(state.pullIn(index)),
                new Voltage(required),
                new Voltage(state.margin(index)));
    }

    ControlPowerResult result() {
        ControlVoltage worst = voltages.stream()
                .min(Comparator.comparingDouble(v -> v.margin().si()))
                .orElse(null);
        return new ControlPowerResult(supplies, chains, links, voltages, worst, findings, derivations);
    }
}
