package io.axiswright.app.project;

import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Money;
import org.jspecify.annotations.Nullable;

/**
 * A bill in figures.
 *
 * @param lines how many lines are required
 * @param required what they cost together, as far as their prices are known
 * @param optional what all that is optional costs
 * @param spares what the spare parts cost
 * @param withoutPrice how many items have no known price
 * @param mass what the required lines weigh together, as far as that is known
 */
record BillFigures(
        int lines,
        Money required,
        @Nullable Money optional,
        @Nullable Money spares,
        int withoutPrice,
        Mass mass) {}
