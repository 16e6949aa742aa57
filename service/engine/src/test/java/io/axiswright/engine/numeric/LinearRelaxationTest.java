package io.axiswright.engine.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import io.axiswright.engine.numeric.LinearRelaxation.Prices;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Bounds and prices against an independent simplex method (Hipparchus) and against every solution of small models. */
class LinearRelaxationTest {

    private static final int MODELS = 300;
    private static final int VARIABLES = 9;
    /** Of them those that come as columns. */
    private static final int COLUMNS = 3;

    @BeforeAll
    static void natives() {
        assumeThat(NativeSolver.available()).isTrue();
    }

    /** A model as a sum of costs and as rows "factors · x ≥ side", which both sides are written from. */
    private record Small(double[] costs, List<double[]> factors, List<Double> sides) {

        static Small random(SplittableRandom random) {
            var small = new Small(
                    random.doubles(VARIABLES, 1, 20).map(Math::rint).toArray(), new ArrayList<>(), new ArrayList<>());
            for (int row = 0; row < 5; row++) {
                double[] factors =
                        random.ints(VARIABLES, -1, 4).mapToDouble(f -> f).toArray();
                small.factors.add(factors);
                small.sides.add(
                        Math.floor(random.nextDouble() * Arrays.stream(factors).sum() * 0.7));
            }
            return small;
        }

        boolean holds(int solution) {
            return IntStream.range(0, factors.size())
                    .allMatch(row -> sum(factors.get(row), solution) >= sides.get(row));
        }

        double cost(int solution) {
            return sum(costs, solution);
        }

        private static double sum(double[] factors, int solution) {
            return IntStream.range(0, VARIABLES)
                    .filter(k -> (solution >> k & 1) == 1)
                    .mapToDouble(k -> factors[k])
                    .sum();
        }

        double simplex() {
            var rows = new ArrayList<LinearConstraint>();
            for (int row = 0; row < factors.size(); row++) {
                rows.add(new LinearConstraint(factors.get(row), Relationship.GEQ, sides.get(row)));
            }
            for (int k = 0; k < VARIABLES; k++) {
                var one = new double[VARIABLES];
                one[k] = 1;
                rows.add(new LinearConstraint(one, Relationship.LEQ, 1));
            }
            return new SimplexSolver()
                    .optimize(
                            new LinearObjectiveFunction(costs, 0),
                            new LinearConstraintSet(rows),
                            GoalType.MINIMIZE,
                            new NonNegativeConstraint(true))
                    .getValue();
        }

        Prices relaxed() {
            var cp = new CpModel();
            int first = VARIABLES - COLUMNS;
            var variables = new BoolVar[first];
            for (int k = 0; k < first; k++) {
                variables[k] = cp.newBoolVar("");
            }
            var indices = new int[factors.size()];
            for (int row = 0; row < indices.length; row++) {
                long[] whole = Arrays.stream(factors.get(row))
                        .limit(first)
                        .mapToLong(Math::round)
                        .toArray();
                indices[row] = cp.addGreaterOrEqual(
                                LinearExpr.weightedSum(variables, whole), Math.round(sides.get(row)))
                        .getIndex();
            }
            cp.minimize(LinearExpr.weightedSum(
                    variables,
                    Arrays.stream(costs).limit(first).mapToLong(Math::round).toArray()));
            try (var relaxation = new LinearRelaxation(cp.model())) {
                for (int k = first; k < VARIABLES; k++) {
                    int column = k;
                    relaxation.add(
                            costs[k],
                            1,
                            indices,
                            factors.stream()
                                    .mapToLong(row -> Math.round(row[column]))
                                    .toArray());
                }
                return relaxation.solve().orElseThrow();
            }
        }
    }

    @Test
    void boundsAreThoseOfTheSimplexMethodAndReducedCostsHoldForEverySolution() {
        var random = new SplittableRandom(2711);
        int decided = 0;
        for (int k = 0; k < MODELS; k++) {
            Small small = Small.random(random);
            int[] solutions =
                    IntStream.range(0, 1 << VARIABLES).filter(small::holds).toArray();
            if (solutions.length == 0) {
                continue;
            }
            Prices prices = small.relaxed();
            assertThat(prices.bound()).isCloseTo(small.simplex(), within(1e-6));
            for (int solution : solutions) {
                double beyond = 0;
                for (int variable = 0; variable < VARIABLES; variable++) {
                    double reduced = prices.reduced()[variable];
                    boolean away = (solution >> variable & 1) == (reduced > 0 ? 1 : 0);
                    beyond += away ? Math.abs(reduced) : 0;
                    decided += reduced == 0 ? 0 : 1;
                }
                assertThat(small.cost(solution)).isGreaterThanOrEqualTo(prices.bound() + beyond - 1e-6);
            }
        }
        assertThat(decided).isPositive();
    }

    /** x + y = 1, x ⇒ z, y ∨ ¬z: with x at cost 1, y 3, z 1 half of everything would cost less than y alone, but z forces y. */
    @Test
    void clausesAreRows() {
        var cp = new CpModel();
        BoolVar x = cp.newBoolVar("x");
        BoolVar y = cp.newBoolVar("y");
        BoolVar z = cp.newBoolVar("z");
        cp.addExactlyOne(List.of(x, y));
        cp.addImplication(x, z);
        cp.addBoolOr(List.of(y, z.not()));
        cp.minimize(LinearExpr.weightedSum(new BoolVar[] {x, y, z}, new long[] {1, 3, 1}));

        try (var relaxation = new LinearRelaxation(cp.model())) {
            // y ≥ z ≥ x and x + y = 1: with x = z = t ≤ 1/2 the cost is t + 3(1 − t) + t = 3 − t
            assertThat(relaxation.solve().orElseThrow().bound()).isCloseTo(2.5, within(1e-9));
        }
    }

    /** A constraint on a condition is left out: x ≥ 1 holds only with y. */
    @Test
    void conditionsAreLeftOut() {
        var cp = new CpModel();
        BoolVar x = cp.newBoolVar("x");
        BoolVar y = cp.newBoolVar("y");
        cp.addGreaterOrEqual(x, 1).onlyEnforceIf(y);
        cp.addEquality(y, 1);
        cp.minimize(x);

        try (var relaxation = new LinearRelaxation(cp.model())) {
            assertThat(relaxation.solve().orElseThrow().bound()).isCloseTo(0, within(1e-9));
        }
    }

    @Test
    void aProgramWithoutSolutionHasNoPrices() {
        var cp = new CpModel();
        BoolVar x = cp.newBoolVar("x");
        cp.addGreaterOrEqual(x, 2);
        cp.minimize(x);

        try (var relaxation = new LinearRelaxation(cp.model())) {
            assertThat(relaxation.solve()).isEmpty();
        }
    }
}
