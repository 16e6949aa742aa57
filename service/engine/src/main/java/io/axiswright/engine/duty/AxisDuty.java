package io.axiswright.engine.duty;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The duty of one axis and the drive unit for it.
 *
 * @param axis id of the axis
 * @param driveUnit catalogue id of its drive unit: the one stated, the best that holds, or the nearest miss if none does;
 *     absent if the catalogue has none at all
 * @param gearUnit catalogue id of the gear unit that goes with it; absent if only the stated gears are used
 * @param ventilationKit catalogue id of the ventilation kit that goes with it; absent if it runs without
 * @param holdingBrake catalogue id of the holding brake that goes with it; absent if none is asked for or none fits
 * @param feasible whether the drive unit holds every limit
 * @param figures torque, speed, power and energy at the motor shaft, the drive unit's own inertia included
 * @param unit what the duty does to the drive unit; absent without one
 * @param shaft the radial force on the shaft of the drive unit and the life of its bearing; absent without a drive unit, and
 *     where nothing pulls at the shaft or a gear or a coupling stands between
 * @param sideThrust how hard the connecting rod of a crank presses its slider against the guide; absent for all other mechanisms,
 *     for a crank without rod, and where a segment states the torque itself
 * @param limits each limit and how much of it is used; empty without a drive unit
 * @param feasibleCandidates how many candidates hold
 * @param rejectedCandidates how many do not
 * @param candidates the best of those that hold, cheapest first, then those rejected, nearest first; at most 20 of each
 * @param hardestStop the controlled stop that uses most of the drive unit's intermittent curve; its instant is when in the
 *     cycle it begins. Absent where there are no controlled stops or no drive unit
 * @param longerMoves how many times as long its motions would have to take for the nearest miss to hold; absent if it holds,
 *     or if no more than tenfold helps
 * @param reserves how fast and how loaded the axis could run at most; absent unless asked for, without a drive unit, and where
 *     the cycles of all axes that ask have more than 4000 pieces of motion together
 * @param reversing whether the torque changes its sign over the cycle
 * @param course speed and torque of the motor over the cycle
 * @param stopModel the controlled stops of its stop zone from any instant; absent for an axis without stop zone
 * @param coasting the axis as it would move without torque from any instant of its cycle
 */
public record AxisDuty(
        String axis,
        @Nullable String driveUnit,
        @Nullable String gearUnit,
        @Nullable String ventilationKit,
        @Nullable String holdingBrake,
        boolean feasible,
        DutyFigures figures,
        @Nullable UnitFigures unit,
        @Nullable ShaftFigures shaft,
        @Nullable SideThrust sideThrust,
        List<LimitUse> limits,
        int feasibleCandidates,
        int rejectedCandidates,
        List<Candidate> candidates,
        @Nullable LimitUse hardestStop,
        @Nullable Double longerMoves,
        @Nullable Reserves reserves,
        boolean reversing,
        @JsonIgnore Course course,
        @JsonIgnore @Nullable StopModel stopModel,
        @JsonIgnore Coasting coasting) {

    /** Keeps the lists from being changed. */
    public AxisDuty {
        limits = List.copyOf(limits);
        candidates = List.copyOf(candidates);
    }
}
