package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.VentilationKit;
import org.jspecify.annotations.Nullable;

/**
 * What is certain of a candidate before its torque–speed course and its winding are worked out: bounds of the use of those two
 * limits that cost next to nothing. A margin far above rounding keeps them certain.
 *
 * @param trial the trial
 * @param kit its ventilation kit
 */
record UseBounds(Trial trial, @Nullable VentilationKit kit) {

    private static final double MARGIN = 1e-9;

    /** Whether the limit is surely held. */
    boolean surelyHeld(DutyLimit limit) {
        return switch (limit) {
            case INTERMITTENT -> trial.courseBound() <= 1 - MARGIN;
            case WINDING -> trial.windingBound(kit) <= 1 - MARGIN;
            default -> !DutyLimit.broken(trial.use(limit, kit));
        };
    }

    /** Whether the limit is surely broken. */
    boolean surelyBroken(DutyLimit limit) {
        return least(limit) > 1 + MARGIN;
    }

    /** A use the limit has at least; exact for those that cost nothing. */
    double least(DutyLimit limit) {
        return switch (limit) {
            case INTERMITTENT -> (1 - MARGIN) * trial.courseSampled();
            case WINDING -> (1 - MARGIN) * trial.windingMean(kit);
            default -> trial.use(limit, kit);
        };
    }
}
