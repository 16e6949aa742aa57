package io.axiswright.engine.supply;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import java.util.List;

/**
 * How evenly the lines are loaded.
 *
 * @param lines what each line carries
 * @param heaviest rated current on the heaviest line
 * @param heaviestAtLeast no way to connect these circuits makes the heaviest line lighter than this
 * @param spread heaviest less lightest line
 * @param unbalance largest deviation of a line from the mean, over the mean
 * @param proven whether no other way has a lighter heaviest line, nor one as light and a smaller spread
 */
public record Balance(
        List<LineLoading> lines,
        Current heaviest,
        Current heaviestAtLeast,
        Current spread,
        @Bounds(min = 0, max = 2) double unbalance,
        boolean proven) {}
