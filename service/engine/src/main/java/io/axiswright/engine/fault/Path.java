package io.axiswright.engine.fault;

import org.jspecify.annotations.Nullable;

/**
 * The conductors from the supply terminals to a place.
 *
 * @param line of one line
 * @param neutral of the neutral; absent where there is none
 * @param protective of the protective conductor; absent where none was found
 */
record Path(
        Impedance line,
        @Nullable Impedance neutral,
        @Nullable Impedance protective) {

    /** At the supply terminals. */
    static final Path START = new Path(Impedance.NONE, Impedance.NONE, Impedance.NONE);

    /** Further along a circuit. */
    Path then(Path further) {
        return new Path(line.plus(further.line), sum(neutral, further.neutral), sum(protective, further.protective));
    }

    private static @Nullable Impedance sum(@Nullable Impedance one, @Nullable Impedance other) {
        return one == null || other == null ? null : one.plus(other);
    }
}
