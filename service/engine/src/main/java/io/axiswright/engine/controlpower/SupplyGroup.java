package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.design.ControlPower;
import io.axiswright.engine.design.Site;
import java.util.List;
import java.util.Optional;

/**
 * Chains that share one control supply.
 *
 * @param supply the supply
 * @param matchesMains whether its rated voltage is one the mains offers
 * @param plans the chains with their cables
 * @param steadyCurrent A, in steady operation
 * @param worstCurrent A, largest
 * @param neededCurrent A, largest with the reserve
 * @param startCurrent A, largest while the output rises
 * @param availableCurrent A, rated current derated for temperature
 */
record SupplyGroup(
        ControlSupply supply,
        boolean matchesMains,
        List<ChainPlan> plans,
        double steadyCurrent,
        double worstCurrent,
        double neededCurrent,
        double startCurrent,
        double availableCurrent) {

    static SupplyGroup of(
            ControlSupply supply, boolean matchesMains, List<ChainPlan> plans, ControlPower spec, Site site) {
        double steady =
                plans.stream().mapToDouble(p -> p.currents().steadyCurrent()).sum();
        double worst = spec.brakesReleaseTogether()
                ? plans.stream().mapToDouble(p -> p.currents().worstCurrent()).sum()
                : steady + plans.stream().mapToDouble(SupplyGroup::rise).max().orElse(0);
        double start = StartThreshold.largestCurrent(plans.stream()
                .flatMap(p -> StartThreshold.of(p.network()).stream())
                .toList());
        return new SupplyGroup(
                supply,
                matchesMains,
                plans,
                steady,
                worst,
                worst * (1 + spec.reserve()),
                start,
                supply.ratedCurrent().si() * derating(supply, site));
    }

    private static double rise(ChainPlan plan) {
        return plan.currents().worstCurrent() - plan.currents().steadyCurrent();
    }

    /** Share of the rated current left at the enclosure's temperature. */
    static double derating(ControlSupply supply, Site site) {
        double above =
                Math.max(0, site.enclosureAmbient().si() - supply.derateFrom().si());
        return Math.max(0, 1 - supply.deratePerKelvin() * above);
    }

    boolean suffices() {
        return neededCurrent <= availableCurrent;
    }

    /** A supply that gives just what its loads draw at some voltage on the way up stays there. */
    boolean starts() {
        return startCurrent < availableCurrent || startCurrent == 0;
    }

    SupplyCost cost() {
        Price price = plans.stream()
                .flatMap(plan -> plan.cables().stream())
                .flatMap(Optional::stream)
                .map((Item cable) -> Price.of(cable))
                .reduce(Price.of(supply), Price::plus);
        return new SupplyCost(
                suffices() && starts() ? 0 : 1,
                (int) plans.stream().filter(plan -> !plan.holds()).count(),
                matchesMains ? 0 : 1,
                price);
    }
}
