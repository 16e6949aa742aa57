package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.Current;
import java.util.List;
import java.util.Optional;

/** Preferred rated residual operating currents of residual-current devices (IEC 60755). */
public final class ResidualCurrentRatings {

    private static final List<Sourced<Current>> TABLE = TableFile.rows("residual-current-ratings").stream()
            .map(r -> r.sourced(new Current(r.number("rating"))))
            .toList();

    private ResidualCurrentRatings() {}

    /** The smallest preferred rating that is not below the current; the current itself where it is one. */
    public static Optional<Sourced<Current>> nextUp(Current current) {
        return TABLE.stream()
                .filter(rating -> Limits.within(current.si(), rating.value().si()))
                .findFirst();
    }
}
