package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.Temperature;

/**
 * Comparison with a table value or a limit. 13.6 A · 1.25 is 17 A to everybody but floating-point arithmetic; one part in
 * 10⁹ keeps it from costing a size.
 */
public final class Limits {

    private static final double RELATIVE = 1e-9;
    private static final double ICE_POINT = 273.15;
    private static final double MICRO = 1e6;

    private Limits() {}

    /** Whether a value does not exceed a limit, both in the same unit. */
    public static boolean within(double value, double limit) {
        return value <= limit + Math.abs(limit) * RELATIVE;
    }

    /** A temperature in whole µ°C, so that 313.15 K is 40 °C and not a hair more. */
    public static double celsius(Temperature temperature) {
        return Math.rint((temperature.si() - ICE_POINT) * MICRO) / MICRO;
    }

    /** A temperature given in °C. */
    static Temperature ofCelsius(double celsius) {
        return new Temperature(celsius + ICE_POINT);
    }
}
