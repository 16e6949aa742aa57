package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.LaidCable;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Temperature;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What the protection of a chain's output circuit has to reach and to spare, whatever supply feeds it.
 *
 * @param plan the chain; every cable picked
 * @param terminal at the end of the way of most resistance
 * @param resistance of that way, Ω
 * @param ampacity of the smallest conductor, A; none if the table lists none of them
 */
record FarTerminal(ChainPlan plan, Terminal terminal, double resistance, OptionalDouble ampacity) {

    static FarTerminal of(ChainPlan plan, Site site, CodeBasis basis) {
        double[] ways = plan.network().wayResistances(plan.resistances(Conductors.temperature(site)));
        int farthest = ChainNetwork.farthest(ways);
        return new FarTerminal(
                plan, plan.network().terminals().get(farthest), ways[farthest], ampacity(plan, site, basis));
    }

    /** Of the smallest feed or spur conductor. */
    private static OptionalDouble ampacity(ChainPlan plan, Site site, CodeBasis basis) {
        var air = new Temperature(
                Math.max(site.ambient().si(), site.enclosureAmbient().si()));
        Stream<LaidCable> spurs = plan.network().gateways().stream()
                .flatMap(node -> node.loads().stream())
                .map(ControlLoad::spur);
        return Stream.concat(plan.cables().stream().flatMap(Optional::stream), spurs)
                .flatMap(cable -> Stream.ofNullable(cable.powerConductor()))
                .distinct()
                .flatMap(size -> ConductorLoad.of(basis, size, air).stream())
                .mapToDouble(Current::si)
                .min();
    }
}
