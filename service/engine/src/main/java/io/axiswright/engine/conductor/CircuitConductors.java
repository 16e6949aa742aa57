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
 * @param deviceRating rated current of the protective device, given or chosen
 * @param protectiveConductor smallest protective conductor
 * @param correctedAmpacity ampacity of the conductor after ambient and grouping
 * @param voltageDrop voltage drop at the design current, conductor hot
 * @param voltageDropShare the same as a fraction of the nominal voltage
 * @param decidingLimit the limit that the next smaller size fails, or that the largest size fails where none serves
 * @param ampacityTable the table the ampacity was taken from
 * @param tried every size tried, thinnest first
 */
public record CircuitConductors(
        String id,
        @Nullable ConductorSize conductor,
        @Nullable Current deviceRating,
        @Nullable ConductorSize protectiveConductor,
        @Nullable Current correctedAmpacity,
        @Nullable Voltage voltageDrop,
        @Nullable Double voltageDropShare,
        Limit decidingLimit,
        String ampacityTable,
        List<Trial> tried) {}
