package io.axiswright.engine.catalogue;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Fuse or circuit-breaker.
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit (one metre for bulk cable); on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param kind fuse or breaker
 * @param codeBasis the code basis it is listed under
 * @param poles poles
 * @param rating rated current
 * @param interruptingRating highest fault current it clears
 * @param ratedVoltage rated voltage
 */
public record ProtectiveDevice(
        String id,
        String description,
        @Nullable Money price,
        List<Need> needs,
        DeviceKind kind,
        CodeBasis codeBasis,
        @Bounds(min = 1, max = 4) int poles,
        @Bounds(above = 0) Current rating,
        @Bounds(above = 0) Current interruptingRating,
        @Bounds(above = 0) Voltage ratedVoltage)
        implements Item {}
