package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.Ratio;

/** The highest voltage distortion at a point of common coupling up to 1 kV, as shares of the nominal voltage (IEEE 519 Table 1). */
public final class VoltageDistortionLimits {

    private static final double PERCENT = 0.01;
    private static final TableRow ROW = TableFile.rows("ieee-519-table-1").getFirst();

    private VoltageDistortionLimits() {}

    /** Of any single order. */
    public static Sourced<Ratio> individual() {
        return ROW.sourced(new Ratio(ROW.number("individual") * PERCENT));
    }

    /** Of all orders together. */
    public static Sourced<Ratio> total() {
        return ROW.sourced(new Ratio(ROW.number("total") * PERCENT));
    }
}
