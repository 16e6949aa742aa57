package io.axiswright.engine.fault;

import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * Disconnection of a fault to earth.
 *
 * @param loop loop impedance at the far end; absent where not known
 * @param limit highest loop impedance at which the device clears in time; absent where not known or none is asked for
 * @param asked longest time the code leaves; absent where it asks for none
 * @param taken longest time the device takes; absent where not known
 */
record Disconnection(
        @Nullable Resistance loop,
        @Nullable Resistance limit,
        @Nullable Time asked,
        @Nullable Time taken) {}
