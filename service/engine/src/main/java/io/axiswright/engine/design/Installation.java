package io.axiswright.engine.design;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Temperature;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How circuits are run and protected.
 *
 * @param mainsPanel where the machine's AC distribution stands
 * @param feederLength length of the feeder from the supply terminals to it
 * @param method how conductors are laid
 * @param insulation their insulation
 * @param material what they are made of, with the protective conductors
 * @param ambient highest air temperature along the route
 * @param groupedCircuits loaded circuits running together, this one included
 * @param terminationRating temperature marking of the terminals: 60, 75 or 90 °C
 * @param voltageDropLimit highest voltage drop, as a fraction of nominal
 * @param device preferred protective device
 * @param transformerImpedance impedance (short-circuit voltage) of the transformers the loads need, as a fraction of their
 *     rated voltage; faults behind them are not studied if absent
 * @param cableRoutes the routes of the power cables; where a circuit's cables are on one, what runs together is counted from the
 *     routes and {@code groupedCircuits} holds for the other circuits only. None if absent
 * @param enclosures enclosures whose heat is to be balanced; none if absent
 * @param transformers what is fed through transformers by decision; if absent, a load that asks for one is a violation
 * @param feederMaterial what the feeder is made of; {@code material} if absent
 * @param cyclesInStep whether axes whose cycles last equally long start them together, so that what they share (feeder and
 *     transformers, IEC) is heated by the sum of what they draw at each moment; if not, as if absent, by the sum of what each draws
 *     over its cycle, which holds however the cycles lie
 */
public record Installation(
        Position mainsPanel,
        @Bounds(min = 0, max = 1000) Length feederLength,
        InstallationMethod method,
        Insulation insulation,
        ConductorMaterial material,
        @Bounds(min = 233.15, max = 358.15) Temperature ambient,
        @Bounds(min = 1, max = 100) int groupedCircuits,
        @Bounds(min = 333.15, max = 363.15) Temperature terminationRating,
        @Bounds(above = 0, max = 0.2) double voltageDropLimit,
        DeviceKind device,
        @Bounds(above = 0, max = 0.5) @Nullable Double transformerImpedance,
        @AnyOrder @Count(max = 1024) @Nullable List<CableRoute> cableRoutes,
        @AnyOrder @Count(max = 256) @Nullable List<Enclosure> enclosures,
        @Nullable Transformers transformers,
        @Nullable ConductorMaterial feederMaterial,
        @Nullable Boolean cyclesInStep) {

    /** Keeps the lists from being changed. */
    public Installation {
        enclosures = enclosures == null ? null : List.copyOf(enclosures);
        cableRoutes = cableRoutes == null ? null : List.copyOf(cableRoutes);
    }

    /** The routes of the power cables; empty if none are stated. */
    public List<CableRoute> routes() {
        return cableRoutes == null ? List.of() : cableRoutes;
    }

    /** The enclosures whose heat is to be balanced; empty if none are stated. */
    public List<Enclosure> panels() {
        return enclosures == null ? List.of() : enclosures;
    }

    /** An installation without data of transformers, routes and enclosures. */
    public Installation(
            Position mainsPanel,
            Length feederLength,
            InstallationMethod method,
            Insulation insulation,
            ConductorMaterial material,
            Temperature ambient,
            int groupedCircuits,
            Temperature terminationRating,
            double voltageDropLimit,
            DeviceKind device) {
        this(
                mainsPanel,
                feederLength,
                method,
                insulation,
                material,
                ambient,
                groupedCircuits,
                terminationRating,
                voltageDropLimit,
                device,
                null,
                null,
                null,
                null,
                null,
                null);
    }

    /** What the feeder is made of. */
    public ConductorMaterial ofFeeder() {
        return feederMaterial == null ? material : feederMaterial;
    }

    /** Whether an axis gets its voltage from a transformer by decision. */
    public boolean throughTransformer(Axis axis) {
        return transformers != null && transformers.axes().contains(axis.id());
    }

    /** Whether the control supplies get theirs from one. */
    public boolean controlSuppliesThroughTransformer() {
        return transformers != null && transformers.ofControlSupplies();
    }
}
