package io.axiswright.engine.energy;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Ratio;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Balances the energy of a machine over a year: what it takes is what its shafts, its losses and its resistors use up. */
public final class EnergyBalance {

    private static final String POINTER = "/design/operation";
    private static final String CLAUSE = "conservation of energy";

    /** Balances a machine. */
    public EnergyResult balance(EnergyRequest request) {
        var year = new Year(request.operation());
        Map<String, AxisPower> axes =
                request.axes().stream().collect(Collectors.toMap(AxisPower::axis, Function.identity()));
        Map<EnergyPurpose, Double> watts = watts(request);
        double total = watts.values().stream().mapToDouble(w -> w).sum();
        YearlyUse whole = year.use(total);
        List<Finding> findings = new ArrayList<>(findings(request));
        List<Derivation> derivations = new ArrayList<>(List.of(derivation(watts, request, whole.energy())));
        List<CableEconomy> cables = null;
        if (request.operation().life() != null && sameCurrency(request)) {
            var least = new LeastCost(request.operation());
            cables = least.of(request.cables());
            findings.addAll(least.findings());
            derivations.add(least.derivation());
        }
        return new EnergyResult(
                request.operation().timePerYear(),
                whole,
                Arrays.stream(EnergyPurpose.values())
                        .map(purpose -> share(purpose, Objects.requireNonNull(watts.get(purpose)), total, year))
                        .toList(),
                request.axes().stream().map(axis -> energy(axis, year)).toList(),
                request.buses().stream().map(bus -> energy(bus, axes, year)).toList(),
                request.controlSupplies().stream()
                        .map(supply -> new ControlSupplyEnergy(
                                supply.id(),
                                year.use(supply.input().si()),
                                year.energy(supply.input().si() - supply.loss().si()),
                                year.energy(supply.loss().si())))
                        .toList(),
                request.conductors().stream()
                        .map(one -> new ConductorEnergy(
                                one.circuit(), year.use(one.loss().si())))
                        .toList(),
                cables,
                List.copyOf(findings),
                List.copyOf(derivations));
    }

    private static Map<EnergyPurpose, Double> watts(EnergyRequest request) {
        var watts = new EnumMap<EnergyPurpose, Double>(EnergyPurpose.class);
        for (EnergyPurpose purpose : EnergyPurpose.values()) {
            watts.put(
                    purpose,
                    switch (purpose) {
                        case SHAFT_WORK ->
                            sum(
                                    request.axes(),
                                    a -> a.motored().si() - a.returned().si());
                        case MOTOR_COPPER ->
                            sum(request.axes(), a -> a.copperLoss().si());
                        case ELECTRONICS_STANDBY ->
                            sum(request.axes(), a -> a.standbyLoss().si());
                        case ELECTRONICS_LOAD -> sum(request.axes(), AxisPower::byLoad);
                        case BRAKING_RESISTORS ->
                            sum(request.buses(), b -> b.burned().si());
                        case VENTILATION ->
                            sum(request.axes(), a -> a.ventilation().si());
                        case CONTROL_POWER ->
                            sum(
                                    request.controlSupplies(),
                                    s -> s.input().si() - s.loss().si());
                        case CONTROL_SUPPLIES ->
                            sum(request.controlSupplies(), s -> s.loss().si());
                        case TRANSFORMERS -> request.transformers().si();
                        case CONDUCTORS ->
                            sum(request.conductors(), c -> c.loss().si());
                    });
        }
        return watts;
    }

    private static <T> double sum(List<T> parts, Function<T, Double> watts) {
        return parts.stream().mapToDouble(watts::apply).sum();
    }

    private static EnergyShare share(EnergyPurpose purpose, double watts, double total, Year year) {
        return new EnergyShare(purpose, year.use(watts), total == 0 ? 0 : watts / total);
    }

    private static AxisEnergy energy(AxisPower axis, Year year) {
        return new AxisEnergy(
                axis.axis(),
                year.energy(axis.motored().si()),
                year.energy(axis.returned().si()),
                year.energy(axis.copperLoss().si()),
                year.energy(axis.standbyLoss().si()),
                axis.loadLoss() == null ? null : year.energy(axis.byLoad()),
                year.energy(axis.ventilation().si()),
                year.use(axis.net()));
    }

    /** In a cycle that repeats, the rectifiers supply what the axes take for good and what the resistors burn. */
    private static BusEnergy energy(BusPower bus, Map<String, AxisPower> axes, Year year) {
        double taken = bus.axes().stream()
                .mapToDouble(id -> Objects.requireNonNull(axes.get(id)).fromBus())
                .sum();
        double burned = bus.burned().si();
        return new BusEnergy(
                bus.id(),
                bus.axes(),
                year.use(taken + burned),
                year.energy(bus.returned().si()),
                year.use(burned),
                year.energy(bus.returned().si() - burned),
                bus.bound());
    }

    private static List<Finding> findings(EnergyRequest request) {
        List<Finding> findings = new ArrayList<>();
        long unknown = request.axes().stream().filter(a -> a.loadLoss() == null).count();
        if (unknown > 0) {
            findings.add(FindingCode.ENERGY_LOAD_LOSS_UNKNOWN.at(
                    "the machine",
                    POINTER,
                    CLAUSE,
                    new Ratio(unknown),
                    new Ratio(request.axes().size())));
        }
        if (request.operation().life() != null && !sameCurrency(request)) {
            findings.add(FindingCode.ENERGY_CURRENCIES_DIFFER.at("the machine", POINTER, "completeness", null, null));
        }
        return findings;
    }

    /** The prices of a catalogue are in one currency. */
    private static boolean sameCurrency(EnergyRequest request) {
        Money price = request.operation().energyPrice();
        return price != null
                && request.cables().stream()
                        .flatMap(c -> c.options().stream())
                        .allMatch(o -> o.price().currency().equals(price.currency()));
    }

    private static Derivation derivation(Map<EnergyPurpose, Double> watts, EnergyRequest request, Energy total) {
        Function<EnergyPurpose, Power> of = purpose -> new Power(Objects.requireNonNull(watts.get(purpose)));
        return new Derivation(
                "the machine",
                "E",
                "(P_shaft + P_Cu + P_0 + P_load + P_R + P_fan + P_24V + P_24V,loss + P_T + sum(I²R)) · t",
                Derivation.inputs(
                        "P_shaft", of.apply(EnergyPurpose.SHAFT_WORK),
                        "P_Cu", of.apply(EnergyPurpose.MOTOR_COPPER),
                        "P_0", of.apply(EnergyPurpose.ELECTRONICS_STANDBY),
                        "P_load", of.apply(EnergyPurpose.ELECTRONICS_LOAD),
                        "P_R", of.apply(EnergyPurpose.BRAKING_RESISTORS),
                        "P_fan", of.apply(EnergyPurpose.VENTILATION),
                        "P_24V", of.apply(EnergyPurpose.CONTROL_POWER),
                        "P_24V,loss", of.apply(EnergyPurpose.CONTROL_SUPPLIES),
                        "P_T", of.apply(EnergyPurpose.TRANSFORMERS),
                        "sum(I²R)", of.apply(EnergyPurpose.CONDUCTORS),
                        "t", request.operation().timePerYear()),
                CLAUSE,
                total);
    }
}
