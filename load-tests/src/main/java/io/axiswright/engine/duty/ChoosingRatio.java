package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.GearUnit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.DriveSelection;
import io.axiswright.engine.design.DriveWish;
import io.axiswright.engine.design.GearChoice;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Choosing among 200 drive units with 20 gear units or none, against working out every limit of 100 of these candidates singly,
 * side by side in one run. Stands in the engine's package, whose trials are not public.
 */
public final class ChoosingRatio {

    private static final double MOST = 10;
    private static final int UNITS = 200;
    private static final int GEARS = 20;
    private static final int SINGLY = 100;
    private static final int ROUNDS = 15;
    private static final long[] SEEDS = {9301, 9302, 9303, 9304};

    private ChoosingRatio() {}

    /** Whether both find the same and the choice costs no more than so many times the hundred. */
    public static boolean holds() {
        double worst = 0;
        for (long seed : SEEDS) {
            worst = Math.max(worst, ratio(seed));
        }
        print("choosing: at worst %.2f times the time of %d candidates singly; at most %.0f%n", worst, SINGLY, MOST);
        return worst < MOST;
    }

    private static double ratio(long seed) {
        DutyRequest request = new RandomShop(seed).next("seed " + seed, UNITS, GEARS);
        Axis axis = request.axes().getFirst();
        BrakeStock brakes = new BrakeStock(request.holdingBrakes());
        Choice chosen = choose(request, axis, brakes);
        ExhaustiveChoice all =
                new ExhaustiveChoice(axis, GearedLoad.all(axis, request), Offer.onMains(request), brakes);
        Choice.Judged best = chosen.best();
        if (best == null
                || chosen.feasible() != all.holding.size()
                || !all.holding.isEmpty() && !same(best, all.best())) {
            throw new IllegalStateException("seed " + seed + ": the exhaustive search finds another");
        }
        List<DutyRequest> singles = singles(request, seed);
        double fast = Double.POSITIVE_INFINITY;
        double slow = Double.POSITIVE_INFINITY;
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            int counted = choose(request, axis, brakes).feasible();
            long middle = System.nanoTime();
            for (DutyRequest single : singles) {
                counted += singly(single, brakes);
            }
            long end = System.nanoTime();
            if (counted < 0) {
                throw new IllegalStateException("nothing counted");
            }
            fast = Math.min(fast, (middle - start) / 1e6);
            slow = Math.min(slow, (end - middle) / 1e6);
        }
        print(
                "seed %d: %d hold, %d do not; %.2f ms to choose, %.2f ms for %d singly, %.2f times%n",
                seed, chosen.feasible(), chosen.rejected(), fast, slow, SINGLY, fast / slow);
        return fast / slow;
    }

    private static boolean same(Choice.Judged best, ExhaustiveChoice.Tried other) {
        return best.trial().offer().unit() == other.trial().offer().unit()
                && best.trial().way().gear() == other.trial().way().gear()
                && best.kit() == other.kit();
    }

    private static Choice choose(DutyRequest request, Axis axis, BrakeStock brakes) {
        return Choice.among(GearedLoad.all(axis, request), Offer.onMains(request), axis.drive(), brakes);
    }

    /** One drive unit with one gear unit, drawn at random. */
    private static List<DutyRequest> singles(DutyRequest request, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<DutyRequest> singles = new ArrayList<>();
        for (int k = 0; k < SINGLY; k++) {
            DriveUnit unit = request.driveUnits().get(random.nextInt(UNITS));
            GearUnit gear = request.gearUnits().get(random.nextInt(GEARS));
            DriveSelection named = DriveWish.like(request.axes().getFirst().drive())
                    .gear(GearChoice.STATED)
                    .gearUnit(gear.id())
                    .made();
            singles.add(new DutyRequest(
                    request.site(),
                    request.mains(),
                    List.of(request.axes().getFirst().with(named)),
                    request.stopZones(),
                    List.of(unit),
                    request.holdingBrakes(),
                    request.ventilationKits(),
                    List.of(gear)));
        }
        return singles;
    }

    /** The load with that gear unit, and every limit of the one candidate. */
    private static int singly(DutyRequest single, BrakeStock brakes) {
        Axis axis = single.axes().getFirst();
        GearedLoad way = GearedLoad.all(axis, single).getFirst();
        Trial trial = new Trial(way, Offer.onMains(single).getFirst(), axis.drive(), brakes);
        int held = 0;
        for (DutyLimit limit : DutyLimit.values()) {
            held += DutyLimit.broken(trial.use(limit, null)) ? 0 : 1;
        }
        return held;
    }

    @SuppressWarnings({"SystemOut", "AnnotateFormatMethod"}) // a report for the terminal
    private static void print(String format, Object... values) {
        System.out.printf(format, values);
    }
}
