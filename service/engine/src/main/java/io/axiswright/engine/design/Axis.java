package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Inertia;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One controlled motion and all that makes it.
 *
 * @param id the caller's own name for it, unique in the design
 * @param description what it does
 * @param mechanism what moves
 * @param gears gears in series, the one at the motor first; none if empty
 * @param couplingInertia inertia of the coupling at the motor shaft; none if absent
 * @param cycle what it does over and over
 * @param position where its drive unit stands
 * @param stopZone id of its stop zone; none if absent
 * @param busGroup name of the DC bus it shares; its own bus if absent
 * @param commandRate commands it is sent per second
 * @param drive its drive unit
 * @param mounting how the drive unit is fastened; not checked if absent
 * @param shaftLoad what is known of the radial load on the motor's shaft; usual values if absent
 */
public record Axis(
        String id,
        @Nullable String description,
        Mechanism mechanism,
        @Count(max = 8) List<Gear> gears,
        @Bounds(min = 0) @Nullable Inertia couplingInertia,
        Cycle cycle,
        Position position,
        @Nullable String stopZone,
        @Nullable String busGroup,
        @Bounds(above = 0, max = 100000) Frequency commandRate,
        DriveSelection drive,
        @Nullable ShaftMounting mounting,
        @Nullable ShaftLoad shaftLoad) {

    /** An axis that says nothing of the radial load on its motor's shaft. */
    public Axis(
            String id,
            @Nullable String description,
            Mechanism mechanism,
            List<Gear> gears,
            @Nullable Inertia couplingInertia,
            Cycle cycle,
            Position position,
            @Nullable String stopZone,
            @Nullable String busGroup,
            Frequency commandRate,
            DriveSelection drive,
            @Nullable ShaftMounting mounting) {
        this(
                id,
                description,
                mechanism,
                gears,
                couplingInertia,
                cycle,
                position,
                stopZone,
                busGroup,
                commandRate,
                drive,
                mounting,
                null);
    }

    /** Keeps the gears from being changed. */
    public Axis {
        gears = List.copyOf(gears);
    }

    /** The same with one more gear between motor and the stated gears. */
    public Axis withMotorGear(Gear gear) {
        return with(Stream.concat(Stream.of(gear), gears.stream()).toList(), drive);
    }

    /** The same with another drive unit. */
    public Axis with(DriveSelection other) {
        return with(gears, other);
    }

    private Axis with(List<Gear> otherGears, DriveSelection otherDrive) {
        return new Axis(
                id,
                description,
                mechanism,
                otherGears,
                couplingInertia,
                cycle,
                position,
                stopZone,
                busGroup,
                commandRate,
                otherDrive,
                mounting,
                shaftLoad);
    }
}
