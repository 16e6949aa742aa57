package io.axiswright.engine.supply;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A branch circuit: loads behind one protective device.
 *
 * @param id "C1", "C2" …; behind transformer T1 "T1/C1" …
 * @param use what its loads do
 * @param transformer id of the transformer behind which it starts; absent if it starts at the mains panel
 * @param connection how it is connected
 * @param lines the lines it uses ("L1" …), of the mains or of the secondary it starts from
 * @param voltage nominal voltage across it
 * @param loads ids of its loads, the largest first
 * @param zone the zone of its loads; absent if they have none
 * @param current sum of the rated currents of its loads (Ib)
 * @param largestLoad rated current of its largest load
 * @param designCurrent what its conductors and device must carry: {@code current} with the factors of the code
 * @param deviceLimit highest protective device all its loads allow; absent if none of them states one
 * @param device item id of its protective device; absent if the catalogue has none that serves
 * @param deviceRating rating of that device, or the standard rating it would need; absent if there is neither
 * @param poles poles of the device
 * @param conductors conductors it needs, the protective one included
 * @param leakageCurrent sum of the protective-conductor currents of its loads
 * @param longestRoute longest route of its loads from its panel; the panels of transformers stand beside the mains panel
 * @param inrush what its device meets when its loads are switched on; absent if none of them states it
 */
public record BranchCircuit(
        String id,
        LoadUse use,
        @Nullable String transformer,
        Connection connection,
        List<String> lines,
        Voltage voltage,
        List<String> loads,
        @Nullable String zone,
        Current current,
        Current largestLoad,
        Current designCurrent,
        @Nullable Current deviceLimit,
        @Nullable String device,
        @Nullable Current deviceRating,
        @Bounds(min = 1, max = 4) int poles,
        @Bounds(min = 3, max = 5) int conductors,
        Current leakageCurrent,
        Length longestRoute,
        @Nullable Inrush inrush) {}
