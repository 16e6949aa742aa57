package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.design.Axis;
import org.jspecify.annotations.Nullable;

/** How much longer the motions of an axis would have to take for a candidate that misses its duty to hold it. */
final class LongerMoves {

    private static final double MOST = 10;
    private static final double STEP = 1.25;
    private static final double TOLERANCE = 1e-3;

    private final Axis axis;
    private final Trial trial;
    private final @Nullable VentilationKit kit;
    private final BrakeStock brakes;

    private LongerMoves(Axis axis, Trial trial, @Nullable VentilationKit kit, BrakeStock brakes) {
        this.axis = axis;
        this.trial = trial;
        this.kit = kit;
        this.brakes = brakes;
    }

    /**
     * The factor on the time of every motion, dwells as they are, to a thousandth; the candidate holds with it, and does not
     * with one a thousandth less. Absent if ten times as long is not enough.
     */
    static @Nullable Double factor(Axis axis, Choice.Judged miss, BrakeStock brakes) {
        return new LongerMoves(axis, miss.trial(), miss.kit(), brakes).search();
    }

    private @Nullable Double search() {
        double below = 1;
        double above = STEP;
        if (!trial.canBeFed()) {
            return null;
        }
        while (!holds(above)) {
            if (above >= MOST) {
                return null;
            }
            below = above;
            above = Math.min(MOST, above * STEP);
        }
        while (above - below > TOLERANCE) {
            double middle = (below + above) / 2;
            if (holds(middle)) {
                above = middle;
            } else {
                below = middle;
            }
        }
        return above;
    }

    private boolean holds(double slowness) {
        GearedLoad slower = trial.way().changed(axis, CycleChange.slower(slowness));
        return new Contender(new Trial(slower, trial.offer(), axis.drive(), brakes), kit, 0).feasible();
    }
}
