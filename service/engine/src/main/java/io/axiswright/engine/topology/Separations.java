package io.axiswright.engine.topology;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Groups of axes that are to hang on gateways of their own, and what it costs where they do not. */
final class Separations {

    /** In place of a price: no two axes of the group may share a gateway. */
    static final long NEVER = -1;

    private static final int[] NO_GROUPS = {};

    private final long[] prices;
    private final int[][] members;
    private final int[][] groupsOf;

    /**
     * The groups.
     *
     * @param prices of each group, for every axis beyond the first on one gateway; or {@link #NEVER}
     * @param members the axes of each group
     * @param axes how many axes there are
     */
    Separations(long[] prices, List<List<Integer>> members, int axes) {
        this.prices = prices;
        this.members = members.stream()
                .map(group -> group.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
        List<List<Integer>> groups = new ArrayList<>();
        for (int axis = 0; axis < axes && prices.length > 0; axis++) {
            groups.add(new ArrayList<>());
        }
        for (int group = 0; group < prices.length; group++) {
            for (int axis : this.members[group]) {
                groups.get(axis).add(group);
            }
        }
        this.groupsOf = groups.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    private Separations(long[] prices, int[][] members, int[][] groupsOf) {
        this.prices = prices;
        this.members = members;
        this.groupsOf = groupsOf;
    }

    /** No wishes. */
    static Separations none() {
        return new Separations(new long[0], List.of(), 0);
    }

    /** The same wishes among the first axes alone. */
    Separations among(int axes) {
        return new Separations(
                prices,
                Arrays.stream(members)
                        .map(group -> Arrays.stream(group)
                                .filter(axis -> axis < axes)
                                .boxed()
                                .toList())
                        .toList(),
                axes);
    }

    /** The same, but that the axes of some groups may share gateways. */
    Separations allowing(IntPredicate groups) {
        long[] allowed = prices.clone();
        for (int group = 0; group < allowed.length; group++) {
            allowed[group] = groups.test(group) ? 0 : allowed[group];
        }
        return new Separations(allowed, members, groupsOf);
    }

    /** Whether the wishes are the same. */
    boolean alike(Separations other) {
        return Arrays.equals(prices, other.prices) && Arrays.deepEquals(members, other.members);
    }

    boolean any() {
        return prices.length > 0;
    }

    int count() {
        return prices.length;
    }

    /** Whether no two axes of a group may share a gateway. */
    boolean never(int group) {
        return prices[group] == NEVER;
    }

    long price(int group) {
        return prices[group];
    }

    /** The axes of a group; not to be changed. */
    int[] members(int group) {
        return members[group];
    }

    /** Whether the axes of one gateway may hang together. */
    boolean hold(List<Integer> together) {
        int[] groups = groups(together);
        for (int k = 1; k < groups.length; k++) {
            if (groups[k] == groups[k - 1] && never(groups[k])) {
                return false;
            }
        }
        return true;
    }

    /** What it costs that the axes of one gateway hang together, where they may. */
    long cost(List<Integer> together) {
        int[] groups = groups(together);
        long cost = 0;
        for (int k = 1; k < groups.length; k++) {
            if (groups[k] == groups[k - 1] && !never(groups[k])) {
                cost += prices[groups[k]];
            }
        }
        return cost;
    }

    /** What it costs that one more axis joins those of a gateway. */
    long cost(List<Integer> together, int joining) {
        if (!any() || groupsOf[joining].length == 0) {
            return 0;
        }
        return cost(joined(together, joining)) - cost(together);
    }

    /** Whether one more axis may join those of a gateway. */
    boolean hold(List<Integer> together, int joining) {
        return !any() || groupsOf[joining].length == 0 || hold(joined(together, joining));
    }

    /** Gateways the largest group asks for that must be kept apart. */
    int fewestGateways() {
        return IntStream.range(0, prices.length)
                .filter(this::never)
                .map(group -> members[group].length)
                .max()
                .orElse(0);
    }

    /** What no layout of at most so many gateways comes below: each group has but one axis without a price on each. */
    long leastCost(int gateways) {
        return IntStream.range(0, prices.length)
                .filter(group -> !never(group))
                .mapToLong(group -> prices[group] * Math.max(0, members[group].length - gateways))
                .sum();
    }

    private static List<Integer> joined(List<Integer> together, int joining) {
        List<Integer> all = new ArrayList<>(together);
        all.add(joining);
        return all;
    }

    /** The groups of all the axes, sorted: a group stands in it as often as axes of it are among them. */
    private int[] groups(List<Integer> together) {
        return any()
                ? together.stream()
                        .flatMapToInt(axis -> Arrays.stream(groupsOf[axis]))
                        .sorted()
                        .toArray()
                : NO_GROUPS;
    }
}
