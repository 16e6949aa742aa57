package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.OutputProtection;
import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.standard.IecAmpacity;
import io.axiswright.engine.standard.IecCorrection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The protection of a chain's output circuit. It has to carry the largest current, to clear a short circuit at the far end
 * with what the supply gives, and to be rated no higher than the smallest conductor. Of the devices the one that misses
 * least, in this order, then the cheapest.
 *
 * @param plan the chain
 * @param device what protects it
 * @param farthest terminal at the end of the way of most resistance
 * @param resistance of that way, Ω
 * @param faultCurrent of a short circuit there, A
 * @param clearingTime within what time it is cleared; absent if that is not sure
 * @param ampacity of the smallest conductor, A; none if the table lists none of them
 */
record CircuitProtection(
        ChainPlan plan,
        OutputProtection device,
        int farthest,
        double resistance,
        double faultCurrent,
        @Nullable Time clearingTime,
        OptionalDouble ampacity) {

    private static final Comparator<CircuitProtection> BEST = Comparator.comparing(CircuitProtection::carries)
            .thenComparing(CircuitProtection::clears)
            .thenComparing(CircuitProtection::suitsConductors)
            .reversed()
            .thenComparing(protection -> Price.of(protection.device()))
            .thenComparing(protection -> protection.device().rating().si())
            .thenComparing(protection -> protection.device().id());

    /** The best of the devices; none if there are none, or a cable is missing. */
    static Optional<CircuitProtection> of(
            ChainPlan plan, List<OutputProtection> devices, FaultSource source, Site site) {
        if (!plan.isCabled() || devices.isEmpty()) {
            return Optional.empty();
        }
        Temperature conductor = Conductors.temperature(site);
        double[] ways = plan.network().wayResistances(plan.resistances(conductor));
        int farthest = ChainNetwork.farthest(ways);
        OptionalDouble ampacity = ampacity(plan, site);
        return devices.stream()
                .map(device -> new CircuitProtection(
                        plan,
                        device,
                        farthest,
                        ways[farthest],
                        source.current(ways[farthest]),
                        source.clearingTime(device, ways[farthest]),
                        ampacity))
                .min(BEST);
    }

    boolean carries() {
        return device.rating().si() >= plan.currents().worstCurrent();
    }

    boolean clears() {
        return clearingTime != null;
    }

    boolean suitsConductors() {
        return ampacity.isEmpty() || device.rating().si() <= ampacity.getAsDouble();
    }

    boolean holds() {
        return carries() && clears() && suitsConductors();
    }

    OutputCircuit result(String supply) {
        return new OutputCircuit(
                plan.network().chain(),
                plan.network().gateways().getFirst().id(),
                supply,
                device.id(),
                new Current(plan.currents().worstCurrent()),
                end().subject(),
                new Resistance(resistance),
                new Current(faultCurrent),
                device.operatingCurrent(new Time(ControlConstants.CLEARING_TIME)),
                clearingTime);
    }

    /** The terminal at the end of the longest way. */
    Terminal end() {
        return plan.network().terminals().get(farthest);
    }

    /**
     * Of the smallest feed or spur conductor, as a multicore cable in conduit; zero where the air is hotter than the table of
     * corrections goes.
     */
    private static OptionalDouble ampacity(ChainPlan plan, Site site) {
        var air = new Temperature(
                Math.max(site.ambient().si(), site.enclosureAmbient().si()));
        double correction =
                IecCorrection.machineAmbient(air).map(row -> row.value().si()).orElse(0.0);
        Stream<CableAssembly> spurs = plan.network().gateways().stream()
                .flatMap(node -> node.loads().stream())
                .map(ControlLoad::spur);
        return Stream.concat(plan.cables().stream().flatMap(Optional::stream), spurs)
                .flatMap(cable -> Stream.ofNullable(cable.powerConductor()))
                .flatMap(size -> IecAmpacity.machine(size, InstallationMethod.B2).stream())
                .mapToDouble(row -> row.value().si() * correction)
                .min();
    }
}
