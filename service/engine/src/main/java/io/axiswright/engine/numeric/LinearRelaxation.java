package io.axiswright.engine.numeric;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import com.google.ortools.sat.BoolArgumentProto;
import com.google.ortools.sat.ConstraintProto;
import com.google.ortools.sat.CpModelProto;
import com.google.ortools.sat.CpObjectiveProto;
import com.google.ortools.sat.IntegerVariableProto;
import com.google.ortools.sat.LinearConstraintProto;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The linear program that is left of a constraint model without its whole numbers and without those of its constraints that are not
 * linear or hold on a condition only. Every solution of the model is one of the program, so the model costs at least what the program
 * does. Columns may be added to it. Needs {@link NativeSolver}; to be closed.
 */
public final class LinearRelaxation implements AutoCloseable {

    /** Limits of constraints beyond this stand for none. */
    private static final long NO_LIMIT = 1L << 60;

    private final MPSolver program = MPSolver.createSolver("GLOP");
    private final double offset;
    private final List<Column> columns = new ArrayList<>();
    /** By constraint of the model; null for those left out. */
    private final List<@Nullable Row> rows = new ArrayList<>();

    /**
     * What the constraints are worth in the cheapest solution of the program.
     *
     * @param bound what any solution costs at least; holds whatever the prices, by weak duality
     * @param constraints what relaxing each constraint of the model by one is worth; 0 for those left out
     * @param reduced by variable, in the order in which they came: how much more than the bound any solution costs at least in which
     *     the variable is one above its lower bound (if positive) or one below its upper bound (if negative: minus that)
     */
    public record Prices(double bound, double[] constraints, double[] reduced) {}

    private record Column(MPVariable variable, double cost, double least, double most) {}

    /** A row of the program: its limits and what it is made of. */
    private record Row(
            MPConstraint constraint, double least, double most, List<Integer> variables, List<Long> factors) {

        /** A price on a side without limit can only be a trace of rounding, and counts as none. */
        double price() {
            double price = constraint.dualValue();
            return Double.isInfinite(side(price)) ? 0 : price;
        }

        double side(double price) {
            return price > 0 ? least : most;
        }
    }

    /** The relaxation of a model that is to be minimised. */
    public LinearRelaxation(CpModelProto model) {
        CpObjectiveProto objective = model.getObjective();
        offset = objective.getOffset();
        var costs = new double[model.getVariablesCount()];
        for (int k = 0; k < objective.getVarsCount(); k++) {
            costs[objective.getVars(k)] += objective.getCoeffs(k);
        }
        for (int k = 0; k < costs.length; k++) {
            IntegerVariableProto variable = model.getVariables(k);
            column(costs[k], variable.getDomain(0), variable.getDomain(variable.getDomainCount() - 1));
        }
        model.getConstraintsList().forEach(constraint -> rows.add(row(constraint)));
        program.objective().setMinimization();
        program.objective().setOffset(offset);
    }

    private void column(double cost, double least, double most) {
        MPVariable variable = program.makeVar(least, most, false, "");
        program.objective().setCoefficient(variable, cost);
        columns.add(new Column(variable, cost, least, most));
    }

    private @Nullable Row row(ConstraintProto constraint) {
        List<Integer> conditions = constraint.getEnforcementLiteralList();
        return switch (constraint.getConstraintCase()) {
            case LINEAR -> conditions.isEmpty() ? linear(constraint.getLinear()) : null;
            case EXACTLY_ONE -> literals(constraint.getExactlyOne(), conditions, 1, 1);
            case AT_MOST_ONE ->
                conditions.isEmpty()
                        ? literals(constraint.getAtMostOne(), conditions, Double.NEGATIVE_INFINITY, 1)
                        : null;
            case BOOL_OR -> literals(constraint.getBoolOr(), conditions, 1, Double.POSITIVE_INFINITY);
            case BOOL_AND ->
                constraint.getBoolAnd().getLiteralsCount() == 1
                        ? literals(constraint.getBoolAnd(), conditions, 1, Double.POSITIVE_INFINITY)
                        : null;
            default -> null;
        };
    }

    private Row linear(LinearConstraintProto linear) {
        Row row = row(limit(linear.getDomain(0)), limit(linear.getDomain(linear.getDomainCount() - 1)));
        for (int k = 0; k < linear.getVarsCount(); k++) {
            add(row, linear.getVars(k), linear.getCoeffs(k));
        }
        return row;
    }

    private static double limit(long bound) {
        if (Math.abs(bound / 2) < NO_LIMIT / 2) {
            return bound;
        }
        return bound < 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }

    /** How many of the literals hold; "if all these, then one of those" is "one of those, or one of these not". */
    private Row literals(BoolArgumentProto literals, List<Integer> conditions, double least, double most) {
        List<Integer> all = new ArrayList<>(literals.getLiteralsList());
        conditions.forEach(condition -> all.add(-condition - 1));
        long negated = all.stream().filter(literal -> literal < 0).count();
        Row row = row(least - negated, most - negated);
        for (int literal : all) {
            add(row, literal >= 0 ? literal : -literal - 1, literal >= 0 ? 1 : -1);
        }
        return row;
    }

    private Row row(double least, double most) {
        return new Row(program.makeConstraint(least, most), least, most, new ArrayList<>(), new ArrayList<>());
    }

    private void add(Row row, int variable, long factor) {
        MPVariable column = columns.get(variable).variable();
        row.constraint().setCoefficient(column, row.constraint().getCoefficient(column) + factor);
        row.variables().add(variable);
        row.factors().add(factor);
    }

    /**
     * Adds a variable that is never negative.
     *
     * @param cost what one of it costs
     * @param most its upper bound
     * @param constraints the model's constraints it is in, by index; none that is left out
     * @param factors its factor in each of them
     */
    public void add(double cost, double most, int[] constraints, long[] factors) {
        column(cost, 0, most);
        for (int k = 0; k < constraints.length; k++) {
            Row row = rows.get(constraints[k]);
            if (row == null) {
                throw new IllegalArgumentException("constraint " + constraints[k] + " is not linear");
            }
            add(row, columns.size() - 1, factors[k]);
        }
    }

    /** Solves the program with the columns it has; empty if it has no solution or none was found. */
    public Optional<Prices> solve() {
        if (program.solve() != MPSolver.ResultStatus.OPTIMAL) {
            return Optional.empty();
        }
        var prices = new double[rows.size()];
        double[] reduced = columns.stream().mapToDouble(Column::cost).toArray();
        double bound = offset;
        for (int k = 0; k < prices.length; k++) {
            Row row = rows.get(k);
            prices[k] = row == null ? 0 : row.price();
            if (row != null && prices[k] != 0) {
                bound += prices[k] * row.side(prices[k]);
                for (int at = 0; at < row.variables().size(); at++) {
                    reduced[row.variables().get(at)] -=
                            prices[k] * row.factors().get(at);
                }
            }
        }
        for (int k = 0; k < reduced.length; k++) {
            Column column = columns.get(k);
            bound += reduced[k] * (reduced[k] > 0 ? column.least() : column.most());
        }
        return Optional.of(new Prices(bound, prices, reduced));
    }

    @Override
    public void close() {
        program.delete();
    }
}
