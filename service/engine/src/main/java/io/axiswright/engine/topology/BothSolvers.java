package io.axiswright.engine.topology;

import org.jspecify.annotations.Nullable;

/** The heuristic first, then the exact search from where it got to; the better layout and the better bound of both. */
record BothSolvers(LayoutSolver quick, LayoutSolver exact) implements LayoutSolver {

    @Override
    public Answer solve(LayoutModel model, @Nullable Layout start) {
        Answer first = quick.solve(model, start);
        Answer second = exact.solve(model, first.layout());
        return new Answer(Score.better(model, first.layout(), second.layout()), second.bound(), second.impossible())
                .bounded(first.bound());
    }

    @Override
    public Existence existence(LayoutModel model, WorkBudget budget) {
        Existence found = quick.existence(model, budget);
        return found == Existence.OPEN ? exact.existence(model, budget) : found;
    }
}
