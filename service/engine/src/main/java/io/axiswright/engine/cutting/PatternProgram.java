package io.axiswright.engine.cutting;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import io.axiswright.engine.numeric.NativeSolver;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How often each pattern is used, in whole numbers (CP-SAT; one worker, fixed seed and a limit counted in work, so that the same
 * pieces are always cut alike). Over all patterns, where they are few, its answer is final; over some it can only improve.
 *
 * @param searchLimit most work, in the solver's deterministic seconds; 0 leaves a plan as it is
 */
record PatternProgram(double searchLimit) {

    private static final int SEED = 1;

    /** The plan, or one of fewer stock lengths, or one with a better bound. */
    Plan improve(Kinds kinds, Plan plan, List<List<Integer>> found) {
        if (searchLimit <= 0 || !NativeSolver.available()) {
            return plan;
        }
        List<List<Integer>> all = AllPatterns.of(kinds);
        Set<List<Integer>> patterns = new LinkedHashSet<>(all.isEmpty() ? found : all);
        var model = new Model(kinds, List.copyOf(patterns), plan);
        var solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(SEED).setMaxDeterministicTime(searchLimit);
        CpSolverStatus status = solver.solve(model.cp);
        return switch (status) {
            case OPTIMAL -> new Plan(model.uses(solver), all.isEmpty() ? plan.bound() : model.used(solver));
            case FEASIBLE -> new Plan(model.uses(solver), plan.bound());
            case INFEASIBLE ->
                all.isEmpty() ? plan : new Plan(plan.patterns(), plan.patterns().size());
            default -> plan;
        };
    }

    /** Asks for fewer stock lengths than a plan has. */
    private static final class Model {

        final CpModel cp = new CpModel();
        private final List<List<Integer>> patterns;
        private final List<IntVar> times = new ArrayList<>();

        Model(Kinds kinds, List<List<Integer>> patterns, Plan plan) {
            this.patterns = patterns;
            int fewer = plan.patterns().size() - 1;
            for (int k = 0; k < patterns.size(); k++) {
                times.add(cp.newIntVar(0, fewer, ""));
            }
            for (int kind = 0; kind < kinds.counts.length; kind++) {
                LinearExprBuilder cut = LinearExpr.newBuilder();
                for (int k = 0; k < patterns.size(); k++) {
                    cut.addTerm(times.get(k), patterns.get(k).get(kind));
                }
                cp.addGreaterOrEqual(cut, kinds.counts[kind]);
            }
            LinearExpr used = LinearExpr.sum(times.toArray(IntVar[]::new));
            cp.addLinearConstraint(used, plan.bound(), fewer);
            cp.minimize(used);
        }

        List<List<Integer>> uses(CpSolver solver) {
            return Stream.iterate(0, k -> k < patterns.size(), k -> k + 1)
                    .flatMap(k -> Collections.nCopies((int) solver.value(times.get(k)), patterns.get(k)).stream())
                    .toList();
        }

        int used(CpSolver solver) {
            return uses(solver).size();
        }
    }
}
