package io.axiswright.engine.catalogue;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Separately driven fan for a drive unit (IC 416, IEC 60034-6).
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit (one metre for bulk cable); on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param frameSize frame size it fits
 * @param continuousTorqueFactor by what it raises the continuous torque
 * @param inputPower power of its fan
 * @param ratedVoltage rated voltage of its fan
 * @param feed what its fan is fed from
 */
public record VentilationKit(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs,
        String frameSize,
        @Bounds(min = 1, max = 3) double continuousTorqueFactor,
        @Bounds(above = 0) Power inputPower,
        @Bounds(above = 0) Voltage ratedVoltage,
        Feed feed)
        implements Item {}
