package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.AltitudeRule;
import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.design.Site;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Chains that share one output, fed by one control supply or several of a kind in parallel.
 *
 * @param supply the supply
 * @param count how many in parallel
 * @param spare how many of them may fail
 * @param wanted how many may have to fail
 * @param matchesMains whether its rated voltage is one the mains offers
 * @param plans the chains with their cables
 * @param steadyCurrent A, in steady operation
 * @param worstCurrent A, largest
 * @param neededCurrent A, largest with the reserve
 * @param startCurrent A, largest while the output rises
 * @param availableCurrent A, rated current of those that have not failed, derated for temperature and altitude
 * @param protections the protection of each chain's circuit, as far as the catalogue has any
 */
record SupplyGroup(
        ControlSupply supply,
        int count,
        int spare,
        int wanted,
        boolean matchesMains,
        List<ChainPlan> plans,
        double steadyCurrent,
        double worstCurrent,
        double neededCurrent,
        double startCurrent,
        double availableCurrent,
        List<CircuitProtection> protections) {

    static SupplyGroup of(
            ControlSupply supply,
            int count,
            boolean matchesMains,
            List<ChainPlan> plans,
            ControlPowerRequest request,
            Function<ChainPlan, FarTerminal> farTerminals) {
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
        double start = StartThreshold.largestCurrent(plans.stream()
                .flatMap(p -> StartThreshold.of(p.network()).stream())
                .toList());
        int wanted = spec.isRedundant() ? 1 : 0;
        int spare = Math.min(wanted, count - 1);
        double available = (count - spare) * supply.ratedCurrent().si() * derating(supply, request.site());
        return new SupplyGroup(
                supply,
                count,
                spare,
                wanted,
                matchesMains,
                plans,
                steady,
                worst,
                worst * (1 + spec.reserve()),
                start,
                available,
                protections(supply, count - spare, plans, available, request, farTerminals));
    }

    private static List<CircuitProtection> protections(
            ControlSupply supply,
            int count,
            List<ChainPlan> plans,
            double available,
            ControlPowerRequest request,
            Function<ChainPlan, FarTerminal> farTerminals) {
        if (request.protections().isEmpty()) {
            return List.of();
        }
        double all =
                plans.stream().mapToDouble(p -> p.currents().worstCurrent()).sum();
        return plans.stream()
                .filter(ChainPlan::isCabled)
                .map(plan -> CircuitProtection.of(
                        farTerminals.apply(plan),
                        request.protections(),
                        FaultSource.of(
                                plan.source().low(),
                                available,
                                supply.overload(),
                                count,
                                all - plan.currents().worstCurrent())))
                .flatMap(Optional::stream)
                .toList();
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

    /** A supply that gives just what its loads draw at some voltage on the way up stays there. */
    boolean starts() {
        return startCurrent < availableCurrent || startCurrent == 0;
    }

    SupplyCost cost() {
        Price cables =
                plans.stream().map(ChainPlan::price).reduce(Price.of(supply).times(count), Price::plus);
        Price all = protections.stream()
                .map(protection -> Price.of(protection.device()))
                .reduce(cables, Price::plus);
        return new SupplyCost(
                suffices() && starts() && isRedundantEnough() ? 0 : 1,
                (int) plans.stream().filter(plan -> !plan.suffices()).count(),
                (int) protections.stream().filter(p -> !p.holds()).count(),
                matchesMains ? 0 : 1,
                all);
    }
}
