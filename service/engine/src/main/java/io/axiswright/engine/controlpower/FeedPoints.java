package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.Temperature;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where cables of the control supply arrive at a chain. A gateway that is fed straight from the supply divides the chain into
 * parts that do not act on each other, so the cheapest division of a row of gateways follows from the cheapest of every
 * shorter one. Divisions are looked for only where one feed point does not do with the cheapest cables, in rows of up to
 * {@value #MOST_GATEWAYS} gateways; branched chains keep their feed.
 */
final class FeedPoints {

    private static final int MOST_GATEWAYS = 12;

    private final CablePicker cables;
    private final Temperature conductor;
    private final Price eachFeed;

    /**
     * Feed points with cables out of a stock.
     *
     * @param eachFeed what every feed costs besides its cables: the protection of its output circuit
     */
    FeedPoints(CablePicker cables, Temperature conductor, Price eachFeed) {
        this.cables = cables;
        this.conductor = conductor;
        this.eachFeed = eachFeed;
    }

    private record Division(int uncabled, int failing, Price price, List<ChainPlan> parts) {

        static final Division NOTHING = new Division(0, 0, Price.NOTHING, List.of());

        private static final Comparator<Division> ORDER = Comparator.comparingInt(Division::uncabled)
                .thenComparingInt(Division::failing)
                .thenComparing(Division::price);

        Division behind(ChainPlan part, Price eachFeed) {
            List<ChainPlan> all = new ArrayList<>(List.of(part));
            all.addAll(parts);
            return new Division(
                    uncabled + (part.isCabled() ? 0 : 1),
                    failing + (part.suffices() ? 0 : 1),
                    price.plus(part.price()).plus(eachFeed),
                    all);
        }

        boolean isBetterThan(Division other) {
            return ORDER.compare(this, other) < 0;
        }
    }

    /** The chain's parts, the one next to the host first; just one if nothing is gained by more. */
    List<ChainPlan> plan(ChainNetwork chain, SourceVoltages source) {
        ChainPlan whole = cables.pick(chain, source);
        int count = chain.gateways().size();
        if (count > MOST_GATEWAYS || !chain.isRow() || cables.isCheapest(whole)) {
            return List.of(whole);
        }
        List<Division> best = new ArrayList<>(List.of(Division.NOTHING));
        for (int from = count - 1; from >= 0; from--) {
            Division division = null;
            for (int to = count; to > from; to--) {
                ChainPlan part =
                        from == 0 && to == count ? whole : cables.pick(chain.part(from, to, conductor), source);
                Division other = best.get(to - from - 1).behind(part, eachFeed);
                if (division == null || other.isBetterThan(division)) {
                    division = other;
                }
            }
            best.addFirst(division == null ? Division.NOTHING : division);
        }
        return best.getFirst().parts();
    }
}
