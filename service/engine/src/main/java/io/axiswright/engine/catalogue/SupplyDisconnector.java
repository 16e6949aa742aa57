package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Supply disconnecting device: isolates the machine from its mains, can be locked open and breaks its load (IEC 60204-1
 * 5.3).
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit (one metre for bulk cable); on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param poles poles
 * @param ratedVoltage rated voltage
 * @param ratedCurrent rated current
 * @param breakingCurrent highest load current it breaks
 */
public record SupplyDisconnector(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs,
        @Bounds(min = 1, max = 4) int poles,
        @Bounds(above = 0) Voltage ratedVoltage,
        @Bounds(above = 0) Current ratedCurrent,
        @Bounds(above = 0) Current breakingCurrent)
        implements Item {}
