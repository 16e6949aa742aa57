package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.design.DriveSelection;
import io.axiswright.engine.quantity.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What came of trying all candidates on an axis.
 *
 * @param best the best of those that hold, else the nearest miss; absent if there was nothing to try
 * @param feasible how many hold
 * @param rejected how many do not
 * @param listed the best of both, those that hold first
 */
record Choice(@Nullable Judged best, int feasible, int rejected, List<Candidate> listed) {

    /** At most this many candidates of each kind are listed. */
    private static final int LISTED = 20;

    /** A trial with or without a ventilation kit, and the verdict on it. */
    record Judged(Trial trial, @Nullable VentilationKit kit, Candidate candidate) {

        /** The limit most used, all counted; what cannot be fed is farther than anything else. */
        double distance() {
            double worst = 0;
            for (DutyLimit limit : DutyLimit.values()) {
                worst = Math.max(worst, trial.use(limit, kit));
            }
            return candidate.limit() == DutyLimit.FEED ? worst + DutyLimit.HIGHEST_USE : worst;
        }
    }

    /** What its control is tuned for comes before price: no buyer keeps a cheap unit that never settles. */
    private static final Comparator<Judged> CHEAPEST = Comparator.comparing(
                    (Judged judged) -> !judged.trial().tunable())
            .thenComparing(judged -> judged.candidate().price(), BrakeStock.BY_PRICE)
            .thenComparingDouble(judged -> judged.candidate().use());

    /** Those that came through more limits before they broke one come first. */
    private static final Comparator<Judged> NEAREST = Comparator.comparing(
                    (Judged judged) -> judged.candidate().limit(), Comparator.reverseOrder())
            .thenComparingDouble(judged -> judged.candidate().use());

    /**
     * Tries the offers on an axis.
     *
     * @param load what the axis asks
     * @param sums its integrals
     * @param offers the drive units to try
     * @param selection what the axis wishes
     * @param brakes the holding brakes on offer
     */
    static Choice among(AxisLoad load, LoadSums sums, List<Offer> offers, DriveSelection selection, BrakeStock brakes) {
        List<Judged> holding = new ArrayList<>();
        List<Judged> broken = new ArrayList<>();
        for (Offer offer : offers) {
            Trial trial = new Trial(load, sums, offer, selection, brakes);
            sort(judge(trial, null), holding, broken);
            if (selection.forcedVentilationAllowed()) {
                offer.kits().forEach(kit -> sort(judge(trial, kit), holding, broken));
            }
        }
        holding.sort(CHEAPEST);
        broken.sort(NEAREST);
        List<Candidate> listed = Stream.concat(
                        holding.stream().limit(LISTED), broken.stream().limit(LISTED))
                .map(Judged::candidate)
                .toList();
        return new Choice(best(holding, broken), holding.size(), broken.size(), listed);
    }

    private static void sort(Judged judged, List<Judged> holding, List<Judged> broken) {
        (judged.candidate().feasible() ? holding : broken).add(judged);
    }

    private static @Nullable Judged best(List<Judged> holding, List<Judged> broken) {
        if (!holding.isEmpty()) {
            return holding.getFirst();
        }
        Judged nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (Judged judged : broken) {
            double distance = judged.distance();
            if (distance < least) {
                least = distance;
                nearest = judged;
            }
        }
        return nearest;
    }

    private static Judged judge(Trial trial, @Nullable VentilationKit kit) {
        DutyLimit tightest = DutyLimit.FEED;
        double highest = 0;
        for (DutyLimit limit : DutyLimit.values()) {
            if (limit == DutyLimit.WINDING && trial.windingBound(kit) <= Math.min(1, highest)) {
                continue;
            }
            double use = trial.use(limit, kit);
            if (DutyLimit.broken(use)) {
                return judged(trial, kit, false, limit, use);
            }
            if (use > highest) {
                highest = use;
                tightest = limit;
            }
        }
        return judged(trial, kit, true, tightest, highest);
    }

    private static Judged judged(
            Trial trial, @Nullable VentilationKit kit, boolean feasible, DutyLimit limit, double use) {
        Candidate candidate = new Candidate(
                trial.offer().unit().id(),
                kit == null ? null : kit.id(),
                trial.brake() == null ? null : trial.brake().id(),
                price(trial, kit),
                feasible,
                limit,
                use,
                trial.inertiaRatio());
        return new Judged(trial, kit, candidate);
    }

    private static @Nullable Money price(Trial trial, @Nullable VentilationKit kit) {
        Money price = trial.offer().unit().price();
        if (kit != null) {
            price = sum(price, kit.price());
        }
        return trial.brake() == null ? price : sum(price, trial.brake().price());
    }

    private static @Nullable Money sum(@Nullable Money one, @Nullable Money other) {
        return one == null || other == null ? null : one.plus(other);
    }
}
