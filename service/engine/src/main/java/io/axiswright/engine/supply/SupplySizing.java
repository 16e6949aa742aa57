package io.axiswright.engine.supply;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.graph.NaturalOrder;
import io.axiswright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
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
                .sorted(Comparator.comparing(SupplyLoad::id, NaturalOrder.OF_NAMES))
                .toList();
        var mains = MainsLines.of(request.mains());
        var currents = new DesignCurrents(request.codeBasis());
        var place = FeederPlace.ofMains(request.installation());

        var feeds = new FeedCheck(request.codeBasis(), mains, request.throughTransformer()).of(loads);
        var behind = feeds.behindTransformers();
        var onlyBehind = feeds.busFed().stream()
                .filter(load -> isFedBy(behind, load) && !isFedBy(feeds.fed().keySet(), load))
                .toList();
        var transformers = new TransformerFeeding(request, mains, currents).of(behind, onlyBehind);
        var buses = new BusFeeding(request.codeBasis(), mains, feeds.fed())
                .of(feeds.busFed().stream()
                        .filter(load -> !onlyBehind.contains(load))
                        .toList());
        var fed = new LinkedHashMap<>(buses.fed());
        fed.putAll(transformers.primaries());
        var sizing = new PanelSizing(request, place);
        Panel panel = sizing.of(fed);
        var circuits = panel.circuits();
        var feeder = panel.feeder();
        var disconnect = Disconnect.of(request, feeder);
        var residual = new ResidualProtectionSizing(request.codeBasis(), request.mains());
        var residualProtection = residual.of(circuits, feeder);

        var derivations = new ArrayList<Derivation>(buses.derivations());
        derivations.addAll(sizing.derivations());
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
        findings.addAll(sizing.findings());
        findings.addAll(LeakageCheck.ofMains(request.codeBasis(), panel, place));
        if (!circuits.isEmpty()) {
            panel.selectivity().finding(feeder).ifPresent(findings::add);
            findings.add(disconnect.finding(request.codeBasis()));
            residual.ratingFinding(residualProtection).ifPresent(findings::add);
            residual.finding(residualProtection).ifPresent(findings::add);
        }
        findings.addAll(transformers.findings());
        return new SupplyResult(
                Stream.concat(circuits.stream(), transformers.panels().stream().flatMap(p -> p.circuits().stream()))
                        .toList(),
                feeder,
                disconnect,
                residualProtection,
                panel.placing().balance(),
                Stream.of(transformers.unfed(), feeds.phaseless(), buses.unfed())
                        .flatMap(List::stream)
                        .map(SupplyLoad::id)
                        .sorted(NaturalOrder.OF_NAMES)
                        .toList(),
                Stream.concat(buses.buses().stream(), transformers.buses().stream())
                        .toList(),
                transformers.needs(circuits),
                List.copyOf(findings),
                List.copyOf(derivations));
    }

    private static boolean isFedBy(Collection<SupplyLoad> feeders, SupplyLoad busFed) {
        return busFed.busGroup() != null
                && feeders.stream().anyMatch(feeder -> busFed.busGroup().equals(feeder.busGroup()));
    }
}
