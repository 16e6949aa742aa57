package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * How much a machine runs, and what its energy costs.
 *
 * @param timePerYear how long its cycles run in a year, up to a leap year of 8784 h; for the rest it is taken as switched off
 * @param energyPrice price of one kilowatt-hour at the supply terminals; no cost is worked out if absent
 * @param life the life over which the cost of cables is weighed, with an energy price only; not weighed if absent
 */
public record Operation(
        @Bounds(above = 0, max = 31_622_400) Time timePerYear,
        @Nullable Money energyPrice,
        @Nullable OperatingLife life) {}
