package io.axiswright.engine.supply;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.graph.NaturalOrder;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.Limits;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Puts what is fed from DC buses on the loads whose rectifiers feed them. A bus stands at the peak of the mains behind its
 * rectifiers, and what it passes on comes through them from the mains, at the power factor of a rectifier without choke.
 */
final class BusFeeding {

    private final CodeBasis basis;
    private final MainsLines mains;
    private final Map<SupplyLoad, Connection> fed;

    private final List<SupplyLoad> unfed = new ArrayList<>();
    private final List<BusFeed> buses = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Derivation> derivations = new ArrayList<>();

    BusFeeding(CodeBasis basis, MainsLines mains, Map<SupplyLoad, Connection> fed) {
        this.basis = basis;
        this.mains = mains;
        this.fed = new LinkedHashMap<>(fed);
    }

    BusFeeding of(List<SupplyLoad> busFed) {
        var groups = new TreeMap<String, List<SupplyLoad>>(NaturalOrder.OF_NAMES);
        for (var load : busFed) {
            String bus = load.busGroup();
            if (bus == null || feedersOf(bus).isEmpty()) {
                unfed.add(load);
                findings.add(FindingCode.SUPPLY_DC_FED_LOAD.at(
                        load.id(), load.pointer(), "common practice, no source", load.ratedCurrent(), null));
            } else {
                groups.computeIfAbsent(bus, _ -> new ArrayList<>()).add(load);
            }
        }
        groups.forEach(this::feed);
        return this;
    }

    /** The loads on the mains with their connection; those that feed a bus draw more. */
    Map<SupplyLoad, Connection> fed() {
        return fed;
    }

    /** The loads no bus feeds. */
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
        return derivations;
    }

    private List<SupplyLoad> feedersOf(String bus) {
        return fed.keySet().stream().filter(l -> bus.equals(l.busGroup())).toList();
    }

    private void feed(String bus, List<SupplyLoad> asking) {
        var feeders = feedersOf(bus);
        var voltage = new Voltage(feeders.stream()
                .mapToDouble(f -> Math.sqrt(2) * supply(f).si())
                .max()
                .orElseThrow());
        var misfits = asking.stream().filter(l -> !fits(voltage, l)).toList();
        misfits.stream()
                .collect(Collectors.groupingBy(l -> l.ratedVoltage().si(), TreeMap::new, Collectors.toList()))
                .forEach((rated, loads) -> findings.add(FindingCode.SUPPLY_BUS_VOLTAGE_MISFIT.at(
                        SupplyLoad.named(loads),
                        loads.getFirst().pointer(),
                        Rule.VOLTAGE_WINDOW.under(basis).clause(),
                        voltage,
                        new Voltage(rated))));
        unfed.addAll(misfits);
        var loads = asking.stream().filter(l -> fits(voltage, l)).toList();
        if (!loads.isEmpty()) {
            passOn(bus, voltage, feeders, loads);
        }
    }

    private boolean fits(Voltage bus, SupplyLoad load) {
        return Limits.within(
                Math.abs(bus.si() / load.ratedVoltage().si() - 1),
                Rule.VOLTAGE_WINDOW.under(basis).value());
    }

    private void passOn(String bus, Voltage voltage, List<SupplyLoad> feeders, List<SupplyLoad> loads) {
        double rated = power(loads, false);
        double thermal = power(loads, true);
        double leakage =
                loads.stream().mapToDouble(l -> l.leakageCurrent().si()).sum();
        double all = DesignCurrents.sum(feeders);
        double passedOn = 0;
        double thermalPassedOn = 0;
        double drawn = 0;
        for (var feeder : feeders) {
            double share = feeder.rated() / all;
            double addedRated = share * rated / voltAmperesPerAmpere(feeder);
            double addedThermal = share * thermal / voltAmperesPerAmpere(feeder);
            passedOn += addedRated;
            thermalPassedOn += addedThermal;
            drawn += feeder.thermalCurrent().si() + addedThermal;
            replace(feeder, feeder.passingOn(addedRated, addedThermal, share * leakage));
            derive(feeder, share, rated, addedRated);
        }
        buses.add(new BusFeed(
                bus,
                voltage,
                feeders.stream().map(SupplyLoad::id).toList(),
                loads.stream().map(SupplyLoad::id).toList(),
                new Power(rated),
                new Current(passedOn),
                new Current(thermalPassedOn)));
        if (!Limits.within(drawn, all)) {
            findings.add(FindingCode.SUPPLY_BUS_FEED_OVERLOADED.at(
                    bus, feeders.getFirst().pointer(), "derived", new Current(drawn), new Current(all)));
        }
    }

    private static double power(List<SupplyLoad> loads, boolean thermal) {
        return loads.stream()
                .mapToDouble(l -> l.ratedVoltage().si() * (thermal ? l.thermalCurrent() : l.ratedCurrent()).si())
                .sum();
    }

    private Voltage supply(SupplyLoad feeder) {
        return mains.voltage(connection(feeder));
    }

    private Connection connection(SupplyLoad feeder) {
        return Objects.requireNonNull(fed.get(feeder));
    }

    private double voltAmperesPerAmpere(SupplyLoad feeder) {
        double phases = feeder.feed() == Feed.THREE_PHASE ? Math.sqrt(3) : 1;
        return phases * supply(feeder).si() * powerFactor(feeder).value();
    }

    private Rule.Entry powerFactor(SupplyLoad feeder) {
        return (feeder.feed() == Feed.THREE_PHASE
                        ? Rule.RECTIFIER_POWER_FACTOR_THREE_PHASE
                        : Rule.RECTIFIER_POWER_FACTOR_ONE_PHASE)
                .under(basis);
    }

    private void replace(SupplyLoad feeder, SupplyLoad drawingMore) {
        var connection = connection(feeder);
        fed.remove(feeder);
        fed.put(drawingMore, connection);
    }

    private void derive(SupplyLoad feeder, double share, double power, double added) {
        boolean three = feeder.feed() == Feed.THREE_PHASE;
        var factor = powerFactor(feeder);
        derivations.add(new Derivation(
                feeder.id(),
                "I_bus",
                three ? "k sum(U_dc I_dc) / (sqrt(3) U lambda)" : "k sum(U_dc I_dc) / (U lambda)",
                Derivation.inputs(
                        "k", new Ratio(share),
                        "sum(U_dc I_dc)", new Power(power),
                        "lambda", new Ratio(factor.value())),
                factor.clause(),
                new Current(added)));
    }
}
