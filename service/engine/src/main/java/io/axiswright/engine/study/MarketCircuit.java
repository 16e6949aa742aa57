package io.axiswright.engine.study;

import io.axiswright.engine.conductor.Limit;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A circuit in one of two markets, in short. What it lacks is absent, as in the study it is of.
 *
 * @param id its id in the study of that market; "feeder" for the feeder
 * @param lines the lines it uses
 * @param voltage nominal voltage across it
 * @param current current of its loads
 * @param designCurrent what its conductors and device must carry by the code
 * @param device item id of its protective device
 * @param deviceRating rated current of the device
 * @param conductor size of its loaded conductors
 * @param conductorsPerLine conductors in parallel on each line
 * @param protectiveConductor smallest protective conductor
 * @param correctedAmpacity ampacity of a line
 * @param voltageDrop voltage drop
 * @param voltageDropShare the same as a fraction of the nominal voltage
 * @param decidingLimit the limit that decided the size
 * @param decidingClause the rule behind it
 * @param ampacityTable the table of the ampacity
 */
public record MarketCircuit(
        String id,
        List<String> lines,
        Voltage voltage,
        Current current,
        Current designCurrent,
        @Nullable String device,
        @Nullable Current deviceRating,
        @Nullable ConductorSize conductor,
        int conductorsPerLine,
        @Nullable ConductorSize protectiveConductor,
        @Nullable Current correctedAmpacity,
        @Nullable Voltage voltageDrop,
        @Nullable Double voltageDropShare,
        Limit decidingLimit,
        String decidingClause,
        String ampacityTable) {}
