package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.AltitudeRule;
import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.catalogue.OutputProtection;
import io.axiswright.engine.design.Site;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Chains that share one output, fed by one control supply or several of a kind in parallel.
 *
 * @param supply the supply
 * @param place id of the place they stand at
 * @param count how many in parallel
 * @param spare how many of them may fail
 * @param wanted how many may have to fail
 * @param matchesMains whether its rated voltage is one the mains offers
 * @param plans the chains with their cables
 * @param steadyCurrent A, in steady operation
 * @param worstCurrent A, largest
 * @param neededCurrent A, largest with the reserve
 * @param availableCurrent A, rated current of those that have not failed, derated for temperature and altitude
 * @param protections the protection of each chain's circuit, as far as it is worked out and the catalogue has any
 * @param cost how good it is, with the protections worked out so far
 */
record SupplyGroup(
        ControlSupply supply,
        String place,
        int count,
        int spare,
        int wanted,
        boolean matchesMains,
        List<ChainPlan> plans,
        double steadyCurrent,
        double worstCurrent,
        double neededCurrent,
        double availableCurrent,
        List<CircuitProtection> protections,
        SupplyCost cost) {

    /** Without protections: no dearer than with them, so that a group too dear already needs none worked out. */
    static SupplyGroup of(
            ControlSupply supply,
            String place,
            int count,
            boolean matchesMains,
            List<ChainPlan> plans,
            ControlPowerRequest request) {
        var spec = request.spec();
        double steady =
                plans.stream().mapToDouble(p -> p.currents().steadyCurrent()).sum();
        double release = spec.brakesReleaseTogether()
                ? plans.stream().mapToDouble(p -> p.currents().releaseCurrent()).sum()
                : steady + plans.stream().mapToDouble(SupplyGroup::rise).max().orElse(0);
        // all chains start at the same moment, however their brakes are released
        double startUp = plans.stream()
                .mapToDouble(p -> p.currents().startUpCurrent() > 0
                        ? p.currents().startUpCurrent()
                        : p.currents().steadyCurrent())
                .sum();
        double worst = Math.max(release, startUp);
        double needed = worst * (1 + spec.reserve());
        int wanted = spec.isRedundant() ? 1 : 0;
        int spare = Math.min(wanted, count - 1);
        double available = (count - spare) * supply.ratedCurrent().si() * derating(supply, request.site());
        boolean feeds = needed <= available && spare >= wanted && starts(startCurrent(plans), available);
        Price price =
                plans.stream().map(ChainPlan::price).reduce(Price.of(supply).times(count), Price::plus);
        var cost = new SupplyCost(
                feeds ? 0 : 1,
                (int) plans.stream().filter(plan -> !plan.suffices()).count(),
                0,
                matchesMains ? 0 : 1,
                price);
        return new SupplyGroup(
                supply,
                place,
                count,
                spare,
                wanted,
                matchesMains,
                plans,
                steady,
                worst,
                needed,
                available,
                List.of(),
                cost);
    }

    /**
     * The same with the protection of each circuit.
     *
     * @param farTerminals of the plan of a chain
     */
    SupplyGroup protectedBy(List<OutputProtection> devices, Function<ChainPlan, FarTerminal> farTerminals) {
        if (devices.isEmpty()) {
            return this;
        }
        double all =
                plans.stream().mapToDouble(p -> p.currents().worstCurrent()).sum();
        List<CircuitProtection> chosen = plans.stream()
                .filter(ChainPlan::isCabled)
                .map(plan -> CircuitProtection.of(
                        farTerminals.apply(plan),
                        devices,
                        FaultSource.of(
                                plan.source().low(),
                                availableCurrent,
                                supply.overload(),
                                count - spare,
                                all - plan.currents().worstCurrent())))
                .flatMap(Optional::stream)
                .toList();
        return new SupplyGroup(
                supply,
                place,
                count,
                spare,
                wanted,
                matchesMains,
                plans,
                steadyCurrent,
                worstCurrent,
                neededCurrent,
                availableCurrent,
                chosen,
                cost.with(chosen));
    }

    private static double rise(ChainPlan plan) {
        return plan.currents().releaseCurrent() - plan.currents().steadyCurrent();
    }

    /** Share of the rated current left at the enclosure's temperature and the site's altitude. */
    static double derating(ControlSupply supply, Site site) {
        double above =
                Math.max(0, site.enclosureAmbient().si() - supply.derateFrom().si());
        return Math.max(0, 1 - supply.deratePerKelvin() * above) * thinAir(supply.altitude(), site);
    }

    static double thinAir(@Nullable AltitudeRule rule, Site site) {
        return rule == null
                ? 1
                : Math.max(
                        0,
                        1
                                - rule.sharePerHundredMetres()
                                        * Math.max(
                                                0,
                                                site.altitude().si()
                                                        - rule.above().si())
                                        / 100);
    }

    boolean suffices() {
        return neededCurrent <= availableCurrent;
    }

    boolean isRedundantEnough() {
        return spare >= wanted;
    }

    /** Largest current while the output rises, A. */
    double startCurrent() {
        return startCurrent(plans);
    }

    /** A supply that gives just what its loads draw at some voltage on the way up stays there. */
    boolean starts() {
        return starts(startCurrent(), availableCurrent);
    }

    private static boolean starts(double startCurrent, double available) {
        return startCurrent < available || startCurrent == 0;
    }

    private static double startCurrent(List<ChainPlan> plans) {
        return StartThreshold.largestCurrent(plans.stream()
                .flatMap(p -> StartThreshold.of(p.network()).stream())
                .toList());
    }
}
