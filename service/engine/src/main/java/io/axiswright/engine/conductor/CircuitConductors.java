package io.axiswright.engine.conductor;

import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The conductors of one circuit. Where no size serves, the conductor and what follows from it are absent.
 *
 * @param id the circuit
 * @param conductor the smallest size that meets every limit
 * @param conductorsPerLine conductors in parallel on each line
 * @param neutralCurrent current in the neutral, which is as thick as the lines; absent on a circuit without one
 * @param deviceRating rated current of the protective device, given or chosen
 * @param protectiveConductor smallest protective conductor, one beside each set of parallel conductors; where it must be
 *     reinforced for its leakage current, a second one of the size the other rules ask for serves as well
 * @param correctedAmpacity ampacity of a line after ambient, grouping and third harmonic, all its conductors together
 * @param voltageDrop voltage drop at the design current, conductor hot
 * @param voltageDropShare the same as a fraction of the nominal voltage
 * @param decidingLimit the limit that the next smaller size fails, or that the largest size fails where none serves
 * @param decidingClause the rule behind that limit; the ampacity table where the thinnest size it knows serves
 * @param ampacityTable the table the ampacity was taken from
 * @param tried every size tried, thinnest first
 */
public record CircuitConductors(
        String id,
        @Nullable ConductorSize conductor,
        int conductorsPerLine,
        @Nullable Current neutralCurrent,
        @Nullable Current deviceRating,
        @Nullable ConductorSize protectiveConductor,
        @Nullable Current correctedAmpacity,
        @Nullable Voltage voltageDrop,
        @Nullable Double voltageDropShare,
        Limit decidingLimit,
        String decidingClause,
        String ampacityTable,
        List<Trial> tried) {}
