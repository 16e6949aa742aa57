package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Device that turns the host's link into the drives' links.
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit (one metre for bulk cable); on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param drivePorts spurs it serves
 * @param chainDepth most gateways in one trunk
 * @param brakeOutputs holding brakes it can switch
 * @param stopScope what its stop input acts on
 * @param ownPower 24 V power it takes itself
 * @param minimumVoltage lowest voltage at which it works
 * @param passThroughCurrent 24 V current its terminals carry
 * @param inrushCurrent 24 V current it takes while it starts; what its power takes if absent
 * @param directRow how many of the type may be coupled directly in a row, side by side in one place, without trunk cables
 *     between them; none couples directly if absent. They count as gateways of the trunk like any
 */
public record GatewayType(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs,
        @Bounds(min = 1, max = 256) int drivePorts,
        @Bounds(min = 1, max = 64) int chainDepth,
        @Bounds(min = 0, max = 256) int brakeOutputs,
        StopScope stopScope,
        @Bounds(min = 0) Power ownPower,
        @Bounds(above = 0) Voltage minimumVoltage,
        @Bounds(above = 0) Current passThroughCurrent,
        @Bounds(above = 0) @Nullable Current inrushCurrent,
        @Bounds(min = 2, max = 64) @Nullable Integer directRow)
        implements Item {

    /** A gateway that starts with no more than its power takes and joins others by cables only. */
    public GatewayType(
            String id,
            String description,
            @Nullable Money price,
            List<Need> needs,
            int drivePorts,
            int chainDepth,
            int brakeOutputs,
            StopScope stopScope,
            Power ownPower,
            Voltage minimumVoltage,
            Current passThroughCurrent) {
        this(
                id,
                description,
                price,
                needs,
                drivePorts,
                chainDepth,
                brakeOutputs,
                stopScope,
                ownPower,
                minimumVoltage,
                passThroughCurrent,
                null,
                null);
    }
}
