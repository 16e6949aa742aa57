package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.Ratio;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** How much of each surface of an enclosure gives off heat (IEC TR 60890). */
public final class SurfaceFactors {

    private enum Surface {
        TOP,
        TOP_COVERED,
        WALL,
        WALL_COVERED
    }

    private static final Map<Surface, Sourced<Ratio>> TABLE = TableFile.rows("iec-60890-surface-factors").stream()
            .collect(Collectors.toMap(
                    r -> r.word("surface", Surface.class), r -> r.sourced(new Ratio(r.number("factor")))));

    private SurfaceFactors() {}

    /** Of the top. */
    public static Sourced<Ratio> top(boolean covered) {
        return Objects.requireNonNull(TABLE.get(covered ? Surface.TOP_COVERED : Surface.TOP));
    }

    /** Of front, rear or a side. */
    public static Sourced<Ratio> wall(boolean covered) {
        return Objects.requireNonNull(TABLE.get(covered ? Surface.WALL_COVERED : Surface.WALL));
    }
}
