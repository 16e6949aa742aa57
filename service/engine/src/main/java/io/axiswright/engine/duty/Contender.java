package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.GearUnit;
import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.quantity.Money;
import org.jspecify.annotations.Nullable;

/**
 * A candidate in the running. Whether it holds, and else which limit it breaks first, is known from bounds where they decide
 * it; the use is worked out only when the place of the candidate hangs on it.
 */
final class Contender {

    private final Trial trial;
    private final @Nullable VentilationKit kit;
    private final int number;
    private final @Nullable Money price;
    private final @Nullable DutyLimit broken;

    /** What ranks it among those of its kind, or less until it is settled: the use of the tightest limit, else the shortfall. */
    private double rank;

    private Known known = Known.BOUND;

    /** How well its rank is known. */
    private enum Known {
        BOUND,
        SAMPLED,
        EXACTLY
    }

    Contender(Trial trial, @Nullable VentilationKit kit, int number) {
        this.trial = trial;
        this.kit = kit;
        this.number = number;
        price = price(trial, kit);
        UseBounds bounds = new UseBounds(trial, kit);
        broken = firstBroken(bounds);
        rank = broken == null ? highestLeast(bounds) : leastShortfall();
    }

    Trial trial() {
        return trial;
    }

    @Nullable
    VentilationKit kit() {
        return kit;
    }

    /** Its place among all candidates. */
    int number() {
        return number;
    }

    @Nullable
    Money price() {
        return price;
    }

    boolean feasible() {
        return broken == null;
    }

    /** What ranks it, or less as long as it is not settled. */
    double rank() {
        return rank;
    }

    boolean settled() {
        return known == Known.EXACTLY;
    }

    /** Comes nearer to what ranks it. */
    void settle() {
        if (broken == null) {
            rank = trial.use(tightest(), kit);
            known = Known.EXACTLY;
        } else if (known == Known.BOUND) {
            rank = Math.max(rank, farther(trial.sampledShortfall()));
            known = Known.SAMPLED;
        } else {
            rank = shortfall();
            known = Known.EXACTLY;
        }
    }

    /** Tells all of a settled one. */
    Choice.Judged judge() {
        LimitUse use = BestUnit.limit(broken == null ? tightest() : broken, trial, kit);
        GearUnit gear = trial.way().gear();
        Candidate candidate = new Candidate(
                trial.offer().unit().id(),
                gear == null ? null : gear.id(),
                kit == null ? null : kit.id(),
                trial.brake() == null ? null : trial.brake().id(),
                price,
                broken == null,
                use.limit(),
                use.value(),
                use.allowed(),
                use.use(),
                broken == null ? null : rank,
                trial.inertiaRatio());
        return new Choice.Judged(trial, kit, candidate);
    }

    /** At least what it falls short by: what costs next to nothing to tell. */
    private double leastShortfall() {
        double most = 1;
        for (DutyLimit limit : DutyLimit.values()) {
            if (limit != DutyLimit.INTERMITTENT && limit != DutyLimit.WINDING) {
                most = Math.max(most, trial.shortfall(limit, kit, most));
            }
        }
        return farther(most);
    }

    /** What it falls short by: the most of all its limits. */
    private double shortfall() {
        double most = 1;
        for (DutyLimit limit : DutyLimit.values()) {
            most = Math.max(most, trial.shortfall(limit, kit, most));
        }
        return farther(most);
    }

    /** What cannot be fed is farther than anything else. */
    private double farther(double shortfall) {
        return broken == DutyLimit.FEED ? shortfall + DutyLimit.HIGHEST_USE : shortfall;
    }

    private static double highestLeast(UseBounds bounds) {
        double highest = 0;
        for (DutyLimit limit : DutyLimit.values()) {
            highest = limit.leavesMargin() ? Math.max(highest, bounds.least(limit)) : highest;
        }
        return highest;
    }

    private @Nullable DutyLimit firstBroken(UseBounds bounds) {
        for (DutyLimit limit : DutyLimit.values()) {
            if (bounds.surelyHeld(limit)) {
                continue;
            }
            if (bounds.surelyBroken(limit) || DutyLimit.broken(trial.use(limit, kit))) {
                return limit;
            }
        }
        return null;
    }

    /** The limit that leaves least margin; the winding is left out where it surely is not. */
    private DutyLimit tightest() {
        DutyLimit tightest = DutyLimit.SPEED;
        double highest = 0;
        for (DutyLimit limit : DutyLimit.values()) {
            boolean surelyNot = limit == DutyLimit.WINDING && trial.windingBound(kit) <= Math.min(1, highest);
            if (surelyNot || !limit.leavesMargin()) {
                continue;
            }
            double use = trial.use(limit, kit);
            if (use > highest) {
                highest = use;
                tightest = limit;
            }
        }
        return tightest;
    }

    private static @Nullable Money price(Trial trial, @Nullable VentilationKit kit) {
        Money price = trial.offer().unit().price();
        GearUnit gear = trial.way().gear();
        if (gear != null) {
            price = sum(price, gear.price());
        }
        if (kit != null) {
            price = sum(price, kit.price());
        }
        return trial.brake() == null ? price : sum(price, trial.brake().price());
    }

    private static @Nullable Money sum(@Nullable Money one, @Nullable Money other) {
        return one == null || other == null ? null : one.plus(other);
    }
}
