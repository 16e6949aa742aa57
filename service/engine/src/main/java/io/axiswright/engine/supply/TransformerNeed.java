package io.axiswright.engine.supply;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A transformer that would feed loads whose voltage the mains do not have. The loads are rectifiers for the most part: it must
 * be made for harmonic currents.
 *
 * @param feed phases of its secondary
 * @param secondary its secondary voltage
 * @param power what its loads ask of it: North America by their rated currents, IEC by what heats over the cycles but never
 *     below the largest
 * @param secondaryCurrent current of its loads, by their ratings
 * @param primaryCurrent current they draw from the mains through it, losses left out
 * @param designCurrent what its secondary device and conductors must carry, by the code's rule for several loads
 * @param rating the standard rating that serves, with its devices; absent if none of the series does
 * @param loads ids of the loads it would feed
 */
public record TransformerNeed(
        Feed feed,
        Voltage secondary,
        ApparentPower power,
        Current secondaryCurrent,
        Current primaryCurrent,
        Current designCurrent,
        @Nullable TransformerRating rating,
        List<String> loads) {}
