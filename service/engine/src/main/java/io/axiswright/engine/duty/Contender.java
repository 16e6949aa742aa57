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

    /** Less than the use that ranks it, until that is worked out. */
    private double leastUse;

    private boolean judged;

    Contender(Trial trial, @Nullable VentilationKit kit, int number) {
        this.trial = trial;
        this.kit = kit;
        this.number = number;
        price = price(trial, kit);
        UseBounds bounds = new UseBounds(trial, kit);
        broken = firstBroken(bounds);
        leastUse = broken == null ? highestLeast(bounds) : bounds.least(broken);
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

    /** The first limit it breaks; those that hold come after all of them. */
    int cameThrough() {
        return broken == null ? DutyLimit.values().length : broken.ordinal();
    }

    /** The use that ranks it, or less as long as it is not judged. */
    double leastUse() {
        return leastUse;
    }

    boolean judged() {
        return judged;
    }

    /** Works the use out. */
    Choice.Judged judge() {
        DutyLimit limit = broken == null ? tightest() : broken;
        leastUse = trial.use(limit, kit);
        judged = true;
        GearUnit gear = trial.way().gear();
        Candidate candidate = new Candidate(
                trial.offer().unit().id(),
                gear == null ? null : gear.id(),
                kit == null ? null : kit.id(),
                trial.brake() == null ? null : trial.brake().id(),
                price,
                broken == null,
                limit,
                leastUse,
                trial.inertiaRatio());
        return new Choice.Judged(trial, kit, candidate);
    }

    /** The limit most used, all counted, or less; what cannot be fed is farther than anything else. */
    double leastDistance() {
        UseBounds bounds = new UseBounds(trial, kit);
        return farther(highestLeast(bounds));
    }

    /** The limit most used, all counted. */
    double distance() {
        double worst = 0;
        for (DutyLimit limit : DutyLimit.values()) {
            worst = limit.leavesMargin() ? Math.max(worst, trial.use(limit, kit)) : worst;
        }
        return farther(worst);
    }

    private double farther(double distance) {
        return broken == DutyLimit.FEED ? distance + DutyLimit.HIGHEST_USE : distance;
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
