package io.axiswright.engine.enclosure;

import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.VolumeFlow;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The heat balance of an enclosure in steady operation.
 *
 * @param place the place it stands at
 * @param sources what gives off heat in it
 * @param losses their sum
 * @param effectiveArea surface that gives off heat
 * @param insideTemperature mean temperature of the air inside, at the highest ambient
 * @param limit temperature what is in it was chosen for
 * @param removable losses that would just bring the air inside to that limit; 0 W where the air outside is as warm
 * @param airFlowNeeded flow of outside air with which the air inside is at the limit, beside the walls and the stated exchanger;
 *     0 where those are enough, absent where the air outside is too warm for any
 */
public record EnclosureBalance(
        String place,
        List<HeatSource> sources,
        Power losses,
        Area effectiveArea,
        Temperature insideTemperature,
        Temperature limit,
        Power removable,
        @Nullable VolumeFlow airFlowNeeded) {}
