package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.design.DriveSelection;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * What came of trying all candidates on an axis.
 *
 * @param best of those that hold the first that also makes the controlled stops of its zone, or the first of all if none does; else the
 *     nearest miss; absent if there was nothing to try
 * @param feasible how many hold
 * @param rejected how many do not
 * @param listed the best of both, those that hold first
 */
record Choice(@Nullable Judged best, int feasible, int rejected, List<Candidate> listed) {

    /** At most this many candidates of each kind are listed. */
    private static final int LISTED = 20;

    /** At most about as many candidates are asked whether they make the controlled stops, which is dear where loads are uneven. */
    private static final int MOST_STOPS = 200;

    /** A trial with or without a ventilation kit, and the verdict on it. */
    record Judged(Trial trial, @Nullable VentilationKit kit, Candidate candidate) {}

    /** What its control is tuned for comes before price: no buyer keeps a cheap unit that never settles. */
    private static final Comparator<Contender> CHEAPEST = Comparator.comparing(
                    (Contender contender) -> !contender.trial().tunable())
            .thenComparing(Contender::price, BrakeStock.BY_PRICE)
            .thenComparingDouble(Contender::rank)
            .thenComparingInt(Contender::number);

    private static final Comparator<Contender> NEAREST =
            Comparator.comparingDouble(Contender::rank).thenComparingInt(Contender::number);

    /**
     * Tries the offers on an axis, with every gear unit that fits and every ventilation kit.
     *
     * @param ways what the axis asks with each gear unit and without
     * @param offers the drive units to try
     * @param selection what the axis wishes
     * @param brakes the holding brakes on offer
     */
    static Choice among(List<GearedLoad> ways, List<Offer> offers, DriveSelection selection, BrakeStock brakes) {
        List<Contender> holding = new ArrayList<>();
        List<Contender> broken = new ArrayList<>();
        int number = 0;
        for (GearedLoad way : ways) {
            for (Offer offer : offers) {
                if (!way.fits(offer.unit().frameSize())) {
                    continue;
                }
                Trial trial = new Trial(way, offer, selection, brakes);
                sort(new Contender(trial, null, number++), holding, broken);
                if (selection.forcedVentilationAllowed()) {
                    for (VentilationKit kit : offer.kits()) {
                        sort(new Contender(trial, kit, number++), holding, broken);
                    }
                }
            }
        }
        var ranking = new Ranking(holding, CHEAPEST);
        List<Judged> first = ranking.next(LISTED);
        List<Judged> listed = new ArrayList<>(first);
        listed.addAll(new Ranking(broken, NEAREST).next(LISTED));
        Judged stopping = ranking.firstThatStops(first);
        return new Choice(
                stopping != null ? stopping : listed.isEmpty() ? null : listed.getFirst(),
                holding.size(),
                broken.size(),
                listed.stream().map(Judged::candidate).toList());
    }

    private static void sort(Contender contender, List<Contender> holding, List<Contender> broken) {
        (contender.feasible() ? holding : broken).add(contender);
    }

    /**
     * Contenders in an order, as if all were judged. One that is not settled ranks no later than it will once it is; so when its
     * turn comes it is settled, and put back.
     */
    private static final class Ranking {

        private final PriorityQueue<Contender> queue;

        Ranking(List<Contender> contenders, Comparator<Contender> order) {
            queue = new PriorityQueue<>(order);
            queue.addAll(contenders);
        }

        /** The next of them, at most so many. */
        List<Judged> next(int most) {
            List<Judged> next = new ArrayList<>();
            while (next.size() < most && !queue.isEmpty()) {
                Contender contender = queue.remove();
                if (contender.settled()) {
                    next.add(contender.judge());
                } else {
                    contender.settle();
                    queue.add(contender);
                }
            }
            return next;
        }

        /** The first that makes the controlled stops, of those taken already and those still to come; null if none of many does. */
        @Nullable
        Judged firstThatStops(List<Judged> taken) {
            List<Judged> some = taken;
            for (int tried = 0; tried < MOST_STOPS && !some.isEmpty(); tried += some.size(), some = next(1)) {
                for (Judged one : some) {
                    if (one.trial().stops()) {
                        return one;
                    }
                }
            }
            return null;
        }
    }
}
