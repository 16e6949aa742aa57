package io.axiswright.engine.supply;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The conductors from the supply terminals to the mains panel, and the device that protects them; or those from the secondary
 * terminals of a transformer to the panel behind it, where the device stands at their end.
 *
 * @param lines the lines of the supply
 * @param neutral whether any circuit needs the neutral
 * @param conductors conductors it needs: 3, 4 or 5, the protective one included
 * @param voltage nominal voltage of the mains, or of the secondary
 * @param current sum of the rated currents on the heaviest line; currents between lines count in full on both, which is
 *     never too little
 * @param largestLoad rated current of the largest load on that line
 * @param designCurrent what it must carry: by the code's rule for several loads, with the diversity it allows
 * @param deviceCeiling highest rating the code allows its device; absent if the code sets none
 * @param device item id of its protective device; absent if the catalogue has none that serves
 * @param deviceRating rating of that device, or the standard rating it would need; absent if there is neither
 * @param poles poles of the device
 * @param neutralCurrent most its neutral can carry beside three lines; absent without a neutral, and on fewer lines, where it
 *     carries no more than they do
 * @param leakageCurrent sum of all protective-conductor currents
 * @param length its length
 * @param inrush what its device meets when its loads are switched on; absent if none of them states it
 */
public record Feeder(
        List<String> lines,
        boolean neutral,
        @Bounds(min = 3, max = 5) int conductors,
        Voltage voltage,
        Current current,
        Current largestLoad,
        Current designCurrent,
        @Nullable Current deviceCeiling,
        @Nullable String device,
        @Nullable Current deviceRating,
        @Bounds(min = 1, max = 4) int poles,
        @Nullable Current neutralCurrent,
        Current leakageCurrent,
        Length length,
        @Nullable Inrush inrush) {

    /** What the conductors call it. */
    public static final String ID = "feeder";

    /** What they call that behind a transformer. */
    public static String behind(String transformer) {
        return transformer + "/" + ID;
    }

    /** JSON Pointer, in the request, to what a finding about the feeder follows from: there is no feeder in it. */
    public static final String POINTER = "/design/mains";
}
