package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.Ratio;
import java.util.List;

/** The highest harmonic currents at the point of common coupling, as shares of the demand current (IEEE 519 Table 2). */
public final class CurrentDistortionLimits {

    /** The highest order the table limits. */
    public static final int HIGHEST_ORDER = 50;

    private static final double PERCENT = 0.01;
    private static final List<TableRow> ROWS = TableFile.rows("ieee-519-table-2");

    private final TableRow row;

    private CurrentDistortionLimits(TableRow row) {
        this.row = row;
    }

    /** The limits at a ratio of short-circuit to demand current; between two rows the stricter one counts. */
    public static CurrentDistortionLimits at(double ratio) {
        return new CurrentDistortionLimits(ROWS.stream()
                .filter(r -> r.number("ratio_from") <= ratio)
                .reduce(ROWS.getFirst(), (lower, higher) -> higher));
    }

    /**
     * The limit of an odd order.
     *
     * @param order 3 to 50
     */
    public Sourced<Ratio> order(int order) {
        return share(
                order < 11
                        ? "below_11"
                        : order < 17 ? "below_17" : order < 23 ? "below_23" : order < 35 ? "below_35" : "up_to_50");
    }

    /** The limit of the total demand distortion. */
    public Sourced<Ratio> total() {
        return share("tdd");
    }

    private Sourced<Ratio> share(String column) {
        return row.sourced(new Ratio(row.number(column) * PERCENT));
    }
}
