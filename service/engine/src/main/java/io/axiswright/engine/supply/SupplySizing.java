package io.axiswright.engine.supply;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Sizes the AC supply: connections, branch circuits, lines, protective devices, feeder, leakage. */
public final class SupplySizing {

    /**
     * Works the supply out. The order of loads and devices in the request does not matter.
     *
     * @throws InvalidDesign if two loads have one id, or a load's current or voltage is not positive
     */
    public SupplyResult size(SupplyRequest request) {
        LoadCheck.check(request.loads());
        var loads = request.loads().stream()
                .sorted(Comparator.comparing(SupplyLoad::id))
                .toList();
        var mains = MainsLines.of(request.mains());
        var fault = request.mains().prospectiveFaultCurrent();
        var currents = new DesignCurrents(request.codeBasis());
        var stock = new DeviceStock(request);
        var devices = new DeviceChoice(stock, fault);
        var derivations = new ArrayList<Derivation>();

        var feeds = new FeedCheck(request.codeBasis(), mains).of(loads);
        var grouping = new CircuitGrouping(currents, stock, mains);
        var buses = new BusFeeding(request.codeBasis(), mains, feeds.fed()).of(feeds.busFed());
        derivations.addAll(buses.derivations());
        var groups = grouping.of(buses.fed());
        var placing = LinePlacing.of(mains, groups);
        var circuits = new ArrayList<BranchCircuit>();
        for (int k = 0; k < groups.size(); k++) {
            circuits.add(circuit(k, groups.get(k), placing, grouping, devices));
            derivations.add(derivation(circuits.getLast(), request));
        }
        var feeder = new FeederSizing(request, mains, currents, devices).of(groups, circuits, derivations);
        var disconnect = Disconnect.of(request, feeder);
        var residual = new ResidualProtectionSizing(request.codeBasis(), request.mains());
        var residualProtection = residual.of(circuits, feeder);
        var transformers = new TransformerNeeds(request, currents);
        var needs = transformers.of(feeds.misfits());
        if (!circuits.isEmpty()) {
            derivations.add(disconnect.derivation(request.codeBasis()));
            residual.derivation(residualProtection).ifPresent(derivations::add);
        }
        derivations.addAll(transformers.derivations());

        var findings = new ArrayList<Finding>();
        var touch = Rule.TOUCH_VOLTAGE.under(request.codeBasis());
        findings.add(FindingCode.SUPPLY_MAINS_DANGER.at(
                "The machine", Feeder.POINTER, touch.clause(), request.mains().voltage(), new Voltage(touch.value())));
        findings.addAll(feeds.findings());
        findings.addAll(buses.findings());
        findings.addAll(devices.findings());
        findings.addAll(LeakageCheck.of(request.codeBasis(), groups, circuits, feeder));
        if (!circuits.isEmpty()) {
            new FeederSelectivity(request, circuits).finding(feeder).ifPresent(findings::add);
            findings.add(disconnect.finding(request.codeBasis()));
            residual.ratingFinding(residualProtection).ifPresent(findings::add);
            residual.finding(residualProtection).ifPresent(findings::add);
        }
        return new SupplyResult(
                List.copyOf(circuits),
                feeder,
                disconnect,
                residualProtection,
                placing.balance(),
                Stream.of(feeds.misfits(), feeds.phaseless(), buses.unfed())
                        .flatMap(List::stream)
                        .map(SupplyLoad::id)
                        .sorted()
                        .toList(),
                List.copyOf(buses.buses()),
                needs,
                List.copyOf(findings),
                List.copyOf(derivations));
    }

    private static BranchCircuit circuit(
            int k, LoadGroup group, LinePlacing placing, CircuitGrouping grouping, DeviceChoice devices) {
        String id = "C" + (k + 1);
        var loads = group.loads();
        var ask = grouping.ask(group);
        var choice = devices.choose("circuit " + id, group.pointer(), ask);
        return new BranchCircuit(
                id,
                group.use(),
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
                        .orElse(0)));
    }

    private static Derivation derivation(BranchCircuit circuit, SupplyRequest request) {
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
