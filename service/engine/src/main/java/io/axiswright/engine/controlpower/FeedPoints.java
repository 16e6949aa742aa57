package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.Temperature;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where cables of the control supply arrive at a chain, and which. A gateway that is fed straight from the supply divides the
 * chain into parts that do not act on each other, so the cheapest division of a row of gateways follows from the cheapest of
 * every shorter one. Divisions are looked for only where one feed point does not do with the cheapest cables, in rows of up
 * to {@value #MOST_GATEWAYS} gateways; branched chains keep their feed. Where no protection opens at the far end, cables are
 * taken that let one.
 */
final class FeedPoints {

    private static final int MOST_GATEWAYS = 12;

    private final CablePicker cables;
    private final Temperature conductor;
    private final Map<List<Object>, ChainPlan> fedOnce = new HashMap<>();

    FeedPoints(CablePicker cables, Temperature conductor) {
        this.cables = cables;
        this.conductor = conductor;
    }

    /** A part of a chain with the price of the protection that opens at its far end; none if nothing does. */
    private record Part(ChainPlan plan, Optional<Price> protection) {

        Price price() {
            return plan.price().plus(protection.orElse(Price.NOTHING));
        }
    }

    private record Division(int uncabled, int failing, int unprotected, Price price, List<ChainPlan> plans) {

        static final Division NOTHING = new Division(0, 0, 0, Price.NOTHING, List.of());

        private static final Comparator<Division> ORDER = Comparator.comparingInt(Division::uncabled)
                .thenComparingInt(Division::failing)
                .thenComparingInt(Division::unprotected)
                .thenComparing(Division::price);

        Division behind(Part part) {
            List<ChainPlan> all = new ArrayList<>(List.of(part.plan()));
            all.addAll(plans);
            return new Division(
                    uncabled + (part.plan().isCabled() ? 0 : 1),
                    failing + (part.plan().suffices() ? 0 : 1),
                    unprotected + (part.protection().isPresent() ? 0 : 1),
                    price.plus(part.price()),
                    all);
        }
    }

    /** The chain's parts, the one next to the host first; just one if nothing is gained by more. */
    List<ChainPlan> plan(ChainNetwork chain, SourceVoltages source, FarEnd farEnd) {
        // supplies of one voltage share it, whatever they give into a short circuit
        Part whole = part(fedOnce.computeIfAbsent(List.of(chain.chain(), source), key -> pick(chain, source)), farEnd);
        int count = chain.gateways().size();
        boolean isEasy = cables.isCheapest(whole.plan()) && whole.protection().isPresent();
        if (count > MOST_GATEWAYS || !chain.isRow() || isEasy) {
            return List.of(whole.plan());
        }
        List<Division> best = new ArrayList<>(List.of(Division.NOTHING));
        for (int from = count - 1; from >= 0; from--) {
            List<Division> divisions = new ArrayList<>();
            for (int to = count; to > from; to--) {
                Part part =
                        from == 0 && to == count ? whole : part(pick(chain.part(from, to, conductor), source), farEnd);
                divisions.add(best.get(to - from - 1).behind(part));
            }
            // of equals the first: the one with fewest feed points
            best.addFirst(divisions.stream().min(Division.ORDER).orElseThrow());
        }
        return best.getFirst().plans();
    }

    private ChainPlan pick(ChainNetwork network, SourceVoltages source) {
        return cables.pick(network, source, Double.POSITIVE_INFINITY);
    }

    /** With the cables given, or thicker ones where nothing opens at the far end of those. */
    private Part part(ChainPlan plan, FarEnd farEnd) {
        if (farEnd.asksNothing()) {
            return new Part(plan, Optional.of(Price.NOTHING));
        }
        Part cheapest = new Part(plan, farEnd.price(plan, conductor));
        if (!plan.suffices() || cheapest.protection().isPresent()) {
            return cheapest;
        }
        return farEnd.longestWays(plan)
                .mapToObj(way -> cables.pick(plan.network(), plan.source(), way))
                .map(thicker -> new Part(thicker, farEnd.price(thicker, conductor)))
                .filter(part -> part.plan().suffices() && part.protection().isPresent())
                .min(Comparator.comparing(Part::price))
                .orElse(cheapest);
    }
}
