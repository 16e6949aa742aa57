package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import org.jspecify.annotations.Nullable;

/**
 * The life of a machine as an investment; losses are paid at the end of each year.
 *
 * @param years how many years it runs
 * @param discountRate by which a payment is worth less for each year it is due later, as a fraction
 * @param priceGrowth by which energy gets dearer each year, as a fraction; not at all if absent
 * @param loadGrowth by which the currents grow each year, as a fraction; not at all if absent
 */
public record OperatingLife(
        @Bounds(min = 1, max = 100) int years,
        @Bounds(min = 0, max = 1) double discountRate,
        @Bounds(min = -0.5, max = 1) @Nullable Double priceGrowth,
        @Bounds(min = -0.5, max = 1) @Nullable Double loadGrowth) {}
