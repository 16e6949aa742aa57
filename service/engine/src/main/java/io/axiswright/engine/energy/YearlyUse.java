package io.axiswright.engine.energy;

import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Power;
import org.jspecify.annotations.Nullable;

/**
 * What is used in a year.
 *
 * @param meanPower mean power while the machine runs
 * @param energy energy a year
 * @param cost its cost a year, rounded half up to the minor unit of the currency; absent without an energy price, and where
 *     more is given back than taken
 */
public record YearlyUse(
        Power meanPower, Energy energy, @Nullable Money cost) {}
