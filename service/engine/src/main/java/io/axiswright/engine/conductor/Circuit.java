package io.axiswright.engine.conductor;

import io.axiswright.engine.catalogue.TerminalRange;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.CircuitUse;
import io.axiswright.engine.standard.ConductorClass;
import io.axiswright.engine.standard.Raceway;
import org.jspecify.annotations.Nullable;

/**
 * One circuit to find conductors for.
 *
 * @param id the caller's own name for it, unique in the request
 * @param kind current and loaded conductors
 * @param use power or control
 * @param loadKind what it feeds
 * @param designCurrent load current in normal operation, without any 125 %
 * @param voltage nominal voltage; line to line on three phases
 * @param length one way, from the protective device to the load
 * @param powerFactor power factor of the load, lagging; 1 for direct current
 * @param method how the conductors are laid
 * @param insulation their insulation; in the other code's terms it is looked up as the class that is no hotter, and a finding
 *     says so
 * @param material what they are made of, with the protective conductor
 * @param ambient highest air temperature along the route
 * @param groupedCircuits loaded circuits running together, this one included; the others taken as like this one
 * @param terminationRating temperature rating of the terminals, the lower of both ends
 * @param voltageDropLimit highest voltage drop, as a fraction of nominal
 * @param device breaker or fuse
 * @param deviceRating its rated current; the next standard rating is chosen if absent
 * @param prospectiveFaultCurrent highest fault current at the device; no fault check if absent
 * @param clearingTime how long the device lets it flow; required with the fault current
 * @param raceway what the raceway is made of (NFPA 79); steel, the worst for reactance, if absent
 * @param conductorClass construction of the conductor (IEC); flexible if absent. Aluminium is never flexible
 * @param largestLoad rated current of the largest of several motors or drives on the circuit, part of the design current; one
 *     motor or drive takes all of it if absent
 * @param resistorPulse how a braking resistor is used; without pause if absent
 * @param leakageCurrent current in the protective conductor in normal operation; none if absent
 * @param thirdHarmonic third harmonic in the line current, as a share of it, on three phases with a neutral as thick as the
 *     lines; no neutral if absent
 * @param parallelLimit most conductors in parallel on a line, where no single one serves; 1 if absent. They lie together
 * @param terminals sizes the terminals take; any if absent
 * @param conductorsTogether conductors running together that carry current, those of this circuit included (NFPA 79); if absent,
 *     those of {@code groupedCircuits} circuits like this one
 * @param moving whether the conductors are flexed in service, as in a drag chain; not if absent
 * @param aluminiumTerminals whether the terminals at both ends are marked for aluminium; not known if absent
 */
public record Circuit(
        String id,
        CircuitKind kind,
        CircuitUse use,
        LoadKind loadKind,
        @Bounds(above = 0, max = 5000) Current designCurrent,
        @Bounds(above = 0, max = 1500) Voltage voltage,
        @Bounds(min = 0, max = 10000) Length length,
        @Bounds(above = 0, max = 1) double powerFactor,
        InstallationMethod method,
        Insulation insulation,
        ConductorMaterial material,
        @Bounds(min = 233.15, max = 358.15) Temperature ambient,
        @Bounds(min = 1, max = 100) int groupedCircuits,
        @Bounds(min = 333.15, max = 363.15) Temperature terminationRating,
        @Bounds(above = 0, max = 0.2) double voltageDropLimit,
        DeviceKind device,
        @Bounds(above = 0, max = 10000) @Nullable Current deviceRating,
        @Bounds(above = 0, max = 200000) @Nullable Current prospectiveFaultCurrent,
        @Bounds(above = 0, max = 5) @Nullable Time clearingTime,
        @Nullable Raceway raceway,
        @Nullable ConductorClass conductorClass,
        @Bounds(above = 0, max = 5000) @Nullable Current largestLoad,
        @Nullable ResistorPulse resistorPulse,
        @Bounds(min = 0, max = 100) @Nullable Current leakageCurrent,
        @Bounds(min = 0, max = 1) @Nullable Double thirdHarmonic,
        @Bounds(min = 1, max = 8) @Nullable Integer parallelLimit,
        @Nullable TerminalRange terminals,
        @Bounds(min = 1, max = 1000) @Nullable Integer conductorsTogether,
        @Nullable Boolean moving,
        @Nullable Boolean aluminiumTerminals) {

    /** The same circuit with other insulation. */
    Circuit insulated(Insulation other) {
        return new Circuit(
                id,
                kind,
                use,
                loadKind,
                designCurrent,
                voltage,
                length,
                powerFactor,
                method,
                other,
                material,
                ambient,
                groupedCircuits,
                terminationRating,
                voltageDropLimit,
                device,
                deviceRating,
                prospectiveFaultCurrent,
                clearingTime,
                raceway,
                conductorClass,
                largestLoad,
                resistorPulse,
                leakageCurrent,
                thirdHarmonic,
                parallelLimit,
                terminals,
                conductorsTogether,
                moving,
                aluminiumTerminals);
    }

    /** Circuits lying together where each line of this one has so many conductors in parallel. */
    int together(int parallel) {
        return groupedCircuits - 1 + parallel;
    }
}
