package io.axiswright.engine.duty;

import java.util.Optional;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Where a state that depends on one number stops holding.
 *
 * @param verdict what came of the search
 * @param at the last number that holds; NaN without an answer
 * @param limit the first limit that breaks just beyond; absent without an answer
 */
record HoldingEdge(
        ReserveVerdict verdict, double at, @Nullable DutyLimit limit) {

    /** The bracket is halved down to this share of its ends: a thousandth of the tolerance that is promised. */
    private static final double CLOSE = 1e-9;

    /** Enough to halve any bracket down to neighbouring numbers. */
    private static final int MOST_HALVINGS = 200;

    /**
     * Searches from the first number of a way of harder states, or, if the first does not hold, along a way of easier ones.
     *
     * @param state the first limit broken at a number
     * @param harder numbers from the asked one on
     * @param alike which of the harder ones is so near to the asked one that, if both hold, all between do
     * @param easier numbers from the asked one on the other way
     */
    static HoldingEdge of(DoubleFunction<Optional<DutyLimit>> state, double[] harder, int alike, double[] easier) {
        Optional<DutyLimit> asked = state.apply(harder[0]);
        return asked.map(broken -> easing(state, easier, broken)).orElseGet(() -> hardening(state, harder, alike));
    }

    private static HoldingEdge hardening(DoubleFunction<Optional<DutyLimit>> state, double[] harder, int alike) {
        int held = alike > 0 && state.apply(harder[alike]).isEmpty() ? alike : 0;
        for (int k = held + 1; k < harder.length; k++) {
            Optional<DutyLimit> broken = state.apply(harder[k]);
            if (broken.isPresent()) {
                return between(state, harder[k - 1], harder[k], broken.get());
            }
        }
        return new HoldingEdge(ReserveVerdict.UNBOUND, Double.NaN, null);
    }

    private static HoldingEdge easing(DoubleFunction<Optional<DutyLimit>> state, double[] easier, DutyLimit asked) {
        DutyLimit beyond = asked;
        for (int k = 1; k < easier.length; k++) {
            Optional<DutyLimit> broken = state.apply(easier[k]);
            if (broken.isEmpty()) {
                return between(state, easier[k], easier[k - 1], beyond);
            }
            beyond = broken.get();
        }
        return new HoldingEdge(ReserveVerdict.NEVER_HOLDS, Double.NaN, null);
    }

    private static HoldingEdge between(
            DoubleFunction<Optional<DutyLimit>> state, double holds, double breaks, DutyLimit beyond) {
        double good = holds;
        double bad = breaks;
        DutyLimit limit = beyond;
        for (int k = 0; k < MOST_HALVINGS; k++) {
            double middle = (good + bad) / 2;
            if (Math.abs(bad - good) <= CLOSE * Math.max(Math.abs(good), Math.abs(bad))
                    || middle == good
                    || middle == bad) {
                break;
            }
            Optional<DutyLimit> broken = state.apply(middle);
            if (broken.isPresent()) {
                bad = middle;
                limit = broken.get();
            } else {
                good = middle;
            }
        }
        return new HoldingEdge(ReserveVerdict.BOUND, good, limit);
    }
}
