package io.axiswright.engine.comparison;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleBiFunction;

/**
 * Pairs of two sets, each of which is better for the other than whatever else there is; then the same among those that are left,
 * until there are none. Where two are equally good for one it gets neither, so it matters neither how the sets are ordered nor
 * which is the first.
 */
final class MutualBest {

    private static final int NONE = -1;

    private interface Cost {
        double between(int place, int other);
    }

    /** What keeps two apart, by their places; endless where they cannot be a pair, or one has its partner already. */
    private final double[][] costs;

    private MutualBest(double[][] costs) {
        this.costs = costs;
    }

    /**
     * The pairs, in the order of the first set.
     *
     * @param cost what keeps two apart: the less the better
     * @param most two that are kept apart by more than this cannot be a pair
     */
    static <T> Map<String, String> of(
            Map<String, T> first, Map<String, T> second, ToDoubleBiFunction<T, T> cost, double most) {
        double[][] costs = first.values().stream()
                .map(one -> second.values().stream()
                        .mapToDouble(other -> cost.applyAsDouble(one, other))
                        .map(value -> value > most ? Double.POSITIVE_INFINITY : value)
                        .toArray())
                .toArray(double[][]::new);
        int[] partners = new MutualBest(costs).partners(second.size());
        List<String> others = List.copyOf(second.keySet());
        Map<String, String> pairs = new LinkedHashMap<>();
        int row = 0;
        for (String id : first.keySet()) {
            int partner = partners[row++];
            if (partner != NONE) {
                pairs.put(id, others.get(partner));
            }
        }
        return pairs;
    }

    private int[] partners(int columns) {
        int[] partners = new int[costs.length];
        Arrays.fill(partners, NONE);
        boolean more = true;
        while (more) {
            more = false;
            int[] bestOfRow = bests(costs.length, columns, (row, column) -> costs[row][column]);
            int[] bestOfColumn = bests(columns, costs.length, (column, row) -> costs[row][column]);
            for (int row = 0; row < costs.length; row++) {
                int column = bestOfRow[row];
                if (column != NONE && bestOfColumn[column] == row) {
                    partners[row] = column;
                    take(row, column);
                    more = true;
                }
            }
        }
        return partners;
    }

    private static int[] bests(int count, int others, Cost cost) {
        int[] bests = new int[count];
        for (int k = 0; k < count; k++) {
            bests[k] = best(k, others, cost);
        }
        return bests;
    }

    /** The place of the least cost; none if all are endless, or several are least. */
    private static int best(int place, int others, Cost cost) {
        int best = NONE;
        double least = Double.POSITIVE_INFINITY;
        for (int other = 0; other < others; other++) {
            double value = cost.between(place, other);
            if (value < least) {
                least = value;
                best = other;
            } else if (value == least) {
                best = NONE;
            }
        }
        return best;
    }

    private void take(int row, int column) {
        Arrays.fill(costs[row], Double.POSITIVE_INFINITY);
        for (double[] each : costs) {
            each[column] = Double.POSITIVE_INFINITY;
        }
    }
}
