package io.axiswright.engine.topology;

import org.jspecify.annotations.Nullable;

/** Finds a cheap layout and proves how cheap any layout can be at best. Deterministic. */
interface LayoutSolver {

    /**
     * Solves the model.
     *
     * @param start a layout to set out from, if one is known; of answers as good as what it leads to, that is taken
     */
    Answer solve(LayoutModel model, @Nullable Layout start);

    /** Whether a layout exists, whatever it costs; exact searches for it take from the budget. */
    Existence existence(LayoutModel model, WorkBudget budget);

    /**
     * What a solver found.
     *
     * @param layout the best layout found; null if none
     * @param bound proven lower bound of the cost of every layout
     * @param impossible whether it is proven that there is no layout
     */
    record Answer(@Nullable Layout layout, long bound, boolean impossible) {

        /** The same with the better of two bounds. */
        Answer bounded(long other) {
            return new Answer(layout, Math.max(bound, other), impossible);
        }
    }
}
