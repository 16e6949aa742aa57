package io.axiswright.engine.topology;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import io.axiswright.engine.numeric.NativeSolver;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The solver with proof: constraint programming over a linear relaxation (CP-SAT). One worker, a fixed seed and a
 * limit counted in work instead of time, so that the same model always has the same answer.
 */
final class ExactSolver implements LayoutSolver {

    /** Variables beyond which the model is no longer worth building. */
    private static final long MOST_VARIABLES = 150_000;

    private static final int SEED = 1;
    /** Level 2 brings "axis on slot, so slot used" into the relaxation: several times faster with one worker, measured. */
    private static final int LINEARIZATION = 2;

    private final double searchLimit;
    private final SearchGate gate;

    /**
     * A solver.
     *
     * @param searchLimit most work, in the solver's deterministic seconds
     * @param gate what every search passes
     */
    ExactSolver(double searchLimit, SearchGate gate) {
        this.searchLimit = searchLimit;
        this.gate = gate;
    }

    @Override
    public Answer solve(LayoutModel model, @Nullable Layout start) {
        return gate.pass(stop -> search(model, start, stop));
    }

    private Answer search(LayoutModel model, @Nullable Layout start, SearchStop stop) {
        Slots slots = Slots.of(model);
        if (outOfReach(model, slots)) {
            return new Answer(start, 0, false);
        }
        var budget = new WorkBudget(searchLimit);
        Optional<Answer> byRoutes = start == null || !slots.complete()
                ? Optional.empty()
                : new TrunkSearch(model, slots, start, budget, stop, limit -> solver(limit, stop)).run();
        if (byRoutes.isPresent() && (TrunkModel.tellsAll(model) || proven(model, byRoutes.get()))) {
            return byRoutes.get();
        }
        Answer byLinks = byLinks(model, slots, byRoutes.map(Answer::layout).orElse(start), budget, stop);
        return byRoutes.map(bounded -> byLinks.bounded(bounded.bound())).orElse(byLinks);
    }

    private static boolean proven(LayoutModel model, Answer answer) {
        return answer.layout() != null && Score.of(model, answer.layout()).cost() <= answer.bound();
    }

    private Answer byLinks(LayoutModel model, Slots slots, @Nullable Layout start, WorkBudget budget, SearchStop stop) {
        var chains = new ExactChains(new ExactModel(model, slots));
        CpModel cp = chains.exact.cp;
        cp.minimize(chains.cost());
        if (start != null) {
            ExactHint.give(chains, start);
        }
        var solver = solver(budget.share(searchLimit), stop);
        CpSolverStatus status = solver.solve(cp);
        if (status == CpSolverStatus.INFEASIBLE) {
            return new Answer(start, 0, start == null && slots.complete());
        }
        // Objective and bound are whole numbers far below 2^53; the small step back only guards the conversion.
        long bound = slots.complete() ? (long) Math.ceil(solver.bestObjectiveBound() - 1e-3) : 0;
        if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
            return new Answer(start, Math.max(0, bound), false);
        }
        Layout found = ExactReading.of(chains, solver);
        if (status == CpSolverStatus.OPTIMAL) {
            found = shortest(model, slots, found, stop);
        }
        return new Answer(LocalImprovement.polished(model, found), Math.max(0, bound), false);
    }

    @Override
    public Existence existence(LayoutModel model, WorkBudget budget) {
        return gate.pass(stop -> search(model, budget, stop));
    }

    private Existence search(LayoutModel model, WorkBudget budget, SearchStop stop) {
        Slots slots = Slots.of(model);
        double limit = budget.share(searchLimit / 4);
        if (limit <= 0 || outOfReach(model, slots)) {
            return Existence.OPEN;
        }
        var solver = solver(limit, stop);
        CpSolverStatus status = solver.solve(new ExactChains(new ExactModel(model, slots)).exact.cp);
        budget.spend(solver.response().getDeterministicTime());
        if (status == CpSolverStatus.INFEASIBLE && slots.complete()) {
            return Existence.NONE;
        }
        return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE
                ? Existence.EXISTS
                : Existence.OPEN;
    }

    private static boolean outOfReach(LayoutModel model, Slots slots) {
        long variables = (long) slots.count() * (slots.count() + model.axes().size());
        return slots.tooMany() || variables > MOST_VARIABLES || !NativeSolver.available();
    }

    /** Of the layouts of that cost the one with the least cable, as far as a share of the search limit allows. */
    private Layout shortest(LayoutModel model, Slots slots, Layout cheapest, SearchStop stop) {
        var chains = new ExactChains(new ExactModel(model, slots));
        CpModel cp = chains.exact.cp;
        cp.addLessOrEqual(chains.cost(), Score.of(model, cheapest).cost());
        cp.minimize(chains.length());
        ExactHint.give(chains, cheapest);
        var solver = solver(searchLimit / 2, stop);
        CpSolverStatus status = solver.solve(cp);
        return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE
                ? ExactReading.of(chains, solver)
                : cheapest;
    }

    private static CpSolver solver(double limit, SearchStop stop) {
        var solver = new CpSolver();
        solver.getParameters()
                .setNumWorkers(1)
                .setRandomSeed(SEED)
                .setLinearizationLevel(LINEARIZATION)
                .setMaxDeterministicTime(limit);
        stop.by(solver::stopSearch);
        return solver;
    }
}
