package io.axiswright.engine.topology;

/**
 * Whether layouts exist for variants of one request: by counting, by the heuristic, then by exact search as far as the budget for all
 * of them goes.
 */
final class ExistenceCheck {

    /** Variants looked at for one answer. */
    private static final int MOST = 600;

    private final TopologyRequest request;
    private final Routes routes;
    private final LayoutSolver solver;
    private final WorkBudget budget;
    private int looked;
    private boolean open;

    ExistenceCheck(TopologyRequest request, Routes routes, LayoutSolver solver, WorkBudget budget) {
        this.request = request;
        this.routes = routes;
        this.solver = solver;
        this.budget = budget;
    }

    Existence of(LayoutModel model) {
        Existence found = Existence.OPEN;
        if (!Shortfalls.of(request, routes, model).isEmpty()) {
            found = Existence.NONE;
        } else if (++looked <= MOST) {
            found = solver.existence(model, budget);
        }
        open |= found == Existence.OPEN;
        return found;
    }

    /** Whether any variant was left open since this was last asked. */
    boolean anyOpen() {
        boolean any = open;
        open = false;
        return any;
    }
}
