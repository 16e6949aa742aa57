package io.axiswright.engine.supply;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.standard.Sourced;
import io.axiswright.engine.standard.TransformerRatings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The loads behind transformers: a transformer for each secondary voltage, a panel behind it with circuits of their own, and
 * the transformer itself as a load of the mains panel. What flows to the secondary's earth does not flow in the mains.
 */
final class TransformerFeeding {

    private final SupplyRequest request;
    private final MainsLines mains;
    private final DesignCurrents currents;
    private final TransformerNeeds sizing;

    private final List<TransformerNeed> needs = new ArrayList<>();
    private final List<Panel> panels = new ArrayList<>();
    private final Map<SupplyLoad, Connection> primaries = new LinkedHashMap<>();
    private final List<SupplyLoad> unfed = new ArrayList<>();
    private final List<BusFeed> buses = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Derivation> derivations = new ArrayList<>();

    TransformerFeeding(SupplyRequest request, MainsLines mains, DesignCurrents currents) {
        this.request = request;
        this.mains = mains;
        this.currents = currents;
        this.sizing = new TransformerNeeds(request, currents);
    }

    /**
     * Feeds the loads.
     *
     * @param behind the loads that ask for a transformer
     * @param busFed loads on DC buses that only these feed
     */
    TransformerFeeding of(List<SupplyLoad> behind, List<SupplyLoad> busFed) {
        double window = Rule.VOLTAGE_WINDOW.under(request.codeBasis()).value();
        var waiting = new ArrayList<>(busFed);
        Secondary.of(behind, window).forEach(secondary -> feed(secondary, waiting));
        return this;
    }

    /** The transformers as loads of the mains, with their connection. */
    Map<SupplyLoad, Connection> primaries() {
        return primaries;
    }

    /** The transformers, once the circuits that feed them are known. */
    List<TransformerNeed> needs(List<BranchCircuit> ofMains) {
        return needs.stream().map(need -> need.fedBy(ofMains)).toList();
    }

    /** The panels behind them. */
    List<Panel> panels() {
        return panels;
    }

    /** The loads no transformer of the standard series serves. */
    List<SupplyLoad> unfed() {
        return unfed;
    }

    List<BusFeed> buses() {
        return buses;
    }

    List<Finding> findings() {
        return findings;
    }

    List<Derivation> derivations() {
        return Stream.of(sizing.derivations(), derivations)
                .flatMap(List::stream)
                .toList();
    }

    private void feed(Secondary asking, List<SupplyLoad> waiting) {
        var lines = MainsLines.of(asking.mains(request, request.mains().prospectiveFaultCurrent()));
        var own = waiting.stream().filter(asking::sharesBus).toList();
        waiting.removeAll(own);
        Map<SupplyLoad, Connection> fed = new LinkedHashMap<>();
        asking.loads().forEach(load -> fed.put(load, lines.whole()));
        var feeding = new BusFeeding(request.codeBasis(), lines, fed).of(own);
        var secondary = asking.with(List.copyOf(feeding.fed().keySet()));
        TransformerNeed need = sizing.need(freeId(), secondary);
        TransformerRating rating = need.rating();
        if (rating == null) {
            needs.add(need);
            unfed.addAll(asking.loads());
            unfed.addAll(own);
            noneServes(need, secondary);
            return;
        }
        findings.addAll(feeding.findings());
        derivations.addAll(feeding.derivations());
        buses.addAll(feeding.buses());
        unfed.addAll(feeding.unfed());
        Panel panel = panel(need, rating, secondary, feeding.fed());
        needs.add(need.feeding(panel.feeder()));
        panels.add(panel);
        SupplyLoad primary = primary(need, rating, secondary);
        primaries.put(primary, mains.primary(secondary.feed()));
        remark(need, secondary);
    }

    /** No load may have the name of a transformer. */
    private String freeId() {
        Set<String> taken = request.loads().stream().map(SupplyLoad::id).collect(Collectors.toSet());
        int number = needs.size() + 1;
        String id = "T" + number;
        return taken.contains(id) ? "transformer " + id : id;
    }

    private Panel panel(
            TransformerNeed need, TransformerRating rating, Secondary secondary, Map<SupplyLoad, Connection> fed) {
        Mains behind = secondary.mains(request, need.faultCurrent());
        var place = FeederPlace.behind(
                need.id(), secondary.pointer(), rating.secondaryDeviceLimit().si());
        var panelSizing = new PanelSizing(request.behind(behind), place);
        Panel panel = panelSizing.of(fed);
        if (wished(need)) { // else there is one cause, and it is told: the design does not decide on a transformer
            findings.addAll(panelSizing.findings());
            findings.addAll(LeakageCheck.ofCircuits(request.codeBasis(), panel, place));
            panel.selectivity().finding(panel.feeder()).ifPresent(findings::add);
        }
        derivations.addAll(panelSizing.derivations());
        return panel;
    }

    /** What its loads draw, seen from the mains; of their leakage nothing comes through. */
    private SupplyLoad primary(TransformerNeed need, TransformerRating rating, Secondary secondary) {
        double ratio = need.secondary().si() / request.mains().voltage().si();
        return new SupplyLoad(
                need.id(),
                LoadUse.TRANSFORMER,
                need.feed(),
                request.mains().voltage(),
                new Current(ratio * currents.heating(secondary.loads())),
                new Current(ratio * DesignCurrents.thermal(secondary.loads())),
                rating.primaryDeviceLimit(),
                1,
                null,
                new Current(0),
                new Length(0),
                secondary.pointer(),
                null,
                null,
                new Current(Math.sqrt(2) * rating.inrushCurrent().si()),
                null,
                null);
    }

    private void noneServes(TransformerNeed need, Secondary secondary) {
        if (wished(need)) {
            findings.add(FindingCode.SUPPLY_TRANSFORMER_NONE.at(
                    SupplyLoad.named(secondary.loads()),
                    secondary.pointer(),
                    largest(need.feed()).clause(),
                    need.power(),
                    largest(need.feed()).value()));
        }
    }

    private Sourced<ApparentPower> largest(Feed feed) {
        return TransformerRatings.of(request.codeBasis(), feed).getLast();
    }

    private void remark(TransformerNeed need, Secondary secondary) {
        if (!wished(need)) {
            return;
        }
        String loads = need.id() + " for " + SupplyLoad.named(secondary.loads());
        findings.add(FindingCode.SUPPLY_TRANSFORMER_NEEDED.at(
                loads,
                secondary.pointer(),
                "common practice, no source",
                Objects.requireNonNull(need.rating()).power(),
                need.secondary()));
        var installation = request.installation();
        if (installation.transformerImpedance() == null || need.regulation() == null) {
            findings.add(FindingCode.SUPPLY_TRANSFORMER_DATA_MISSING.at(
                    loads,
                    "/design/installation",
                    TransformerNeeds.REGULATION,
                    new Ratio(installation.transformerImpedance() == null ? 0 : 1),
                    new Ratio(2)));
        }
    }

    /** Whether the design decided on the transformer; else a finding says that its loads ask for one. */
    private boolean wished(TransformerNeed need) {
        return need.loads().stream().anyMatch(request.throughTransformer()::contains);
    }
}
