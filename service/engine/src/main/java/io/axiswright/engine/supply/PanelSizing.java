package io.axiswright.engine.supply;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sizes the circuits of one panel and the feeder that brings the power to it. */
final class PanelSizing {

    private final SupplyRequest request;
    private final FeederPlace place;
    private final MainsLines mains;
    private final DesignCurrents currents;
    private final DeviceStock stock;
    private final DeviceChoice devices;
    private final List<Derivation> derivations = new ArrayList<>();

    /**
     * A panel.
     *
     * @param request the request, its mains being what feeds this panel
     * @param place where its feeder lies
     */
    PanelSizing(SupplyRequest request, FeederPlace place) {
        this.request = request;
        this.place = place;
        this.mains = MainsLines.of(request.mains());
        this.currents = new DesignCurrents(request.codeBasis());
        this.stock = new DeviceStock(request);
        this.devices = new DeviceChoice(stock, request.mains().prospectiveFaultCurrent());
    }

    /** The panel of these loads. */
    Panel of(Map<SupplyLoad, Connection> fed) {
        var grouping = new CircuitGrouping(currents, stock, mains);
        var groups = grouping.of(fed);
        var placing = LinePlacing.of(mains, groups);
        var circuits = new ArrayList<BranchCircuit>();
        for (int k = 0; k < groups.size(); k++) {
            circuits.add(circuit(k, groups.get(k), placing, grouping));
            derivations.add(derivation(circuits.getLast()));
            inrushDerivation(circuits.getLast()).ifPresent(derivations::add);
        }
        var selectivity = new FeederSelectivity(request, place, circuits);
        var feeder = new FeederSizing(request, place, mains, currents, devices, selectivity)
                .of(groups, circuits, derivations);
        return new Panel(groups, placing, List.copyOf(circuits), feeder, selectivity);
    }

    /** What was missing. */
    List<Finding> findings() {
        return devices.findings();
    }

    /** How the currents came about. */
    List<Derivation> derivations() {
        return derivations;
    }

    private BranchCircuit circuit(int k, LoadGroup group, LinePlacing placing, CircuitGrouping grouping) {
        String id = place.circuit(k + 1);
        var loads = group.loads();
        var ask = grouping.ask(group);
        var choice = devices.choose("circuit " + id, group.pointer(), ask);
        return new BranchCircuit(
                id,
                group.use(),
                place.transformer(),
                group.connection(),
                placing.linesOf(k),
                ask.voltage(),
                loads.stream().map(SupplyLoad::id).toList(),
                group.zone(),
                new Current(DesignCurrents.sum(loads)),
                new Current(DesignCurrents.largest(loads)),
                new Current(ask.atLeast()),
                group.statedLimit(),
                choice.device(),
                choice.rating(),
                ask.poles(),
                group.connection().conductors(),
                new Current(group.leakage()),
                new Length(loads.stream()
                        .mapToDouble(l -> l.routeLength().si())
                        .max()
                        .orElse(0)),
                choice.inrush());
    }

    private static Optional<Derivation> inrushDerivation(BranchCircuit circuit) {
        return Optional.ofNullable(circuit.inrush())
                .flatMap(inrush -> inrush.derivation(circuit.id(), circuit.deviceRating()));
    }

    private Derivation derivation(BranchCircuit circuit) {
        boolean pauseless = circuit.use() == LoadUse.CONTROL_SUPPLY;
        var rule = (pauseless ? Rule.CONTINUOUS_FACTOR : Rule.LARGEST_LOAD_FACTOR).under(request.codeBasis());
        var others = new Current(circuit.current().si() - circuit.largestLoad().si());
        return new Derivation(
                circuit.id(),
                "I_d",
                pauseless ? "k sum(I)" : "k I_max + sum(I_others)",
                pauseless
                        ? Derivation.inputs("k", new Ratio(rule.value()), "sum(I)", circuit.current())
                        : Derivation.inputs(
                                "k", new Ratio(rule.value()), "I_max", circuit.largestLoad(), "sum(I_others)", others),
                rule.clause(),
                circuit.designCurrent());
    }
}
