package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.BrakingUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The study of one DC bus.
 *
 * @param group its axes
 * @param bus its electrical data
 * @param verdict what it needs
 * @param unit the braking unit chosen, if any
 * @param run the cases with that unit, or with none
 * @param rejected braking units tried in vain
 */
record GroupStudy(
        BusGroup group,
        Bus bus,
        BrakingVerdict verdict,
        @Nullable BrakingUnit unit,
        GroupRun run,
        List<RejectedUnit> rejected) {

    /** Studies one bus. */
    static GroupStudy of(BusGroup group, BrakingRequest request) {
        Bus bus = group.bus(request.mains());
        GroupLoads loads = GroupLoads.of(group.axes(), request.zones(), true);
        GroupRun bare = loads.on(bus, Chopper.NONE);
        if (bare.fits(bus)) {
            GroupLoads lossless = GroupLoads.of(group.axes(), request.zones(), false);
            BrakingVerdict verdict = lossless.on(bus, Chopper.NONE).fits(bus)
                    ? BrakingVerdict.ABSORBED
                    : BrakingVerdict.ABSORBED_WITH_LOSSES;
            return new GroupStudy(group, bus, verdict, null, bare, List.of());
        }
        UnitChoice choice = UnitChoice.of(request.brakingUnits(), bus, loads, request.ambient());
        UnitTrial chosen = choice.chosen();
        GroupRun run = chosen == null ? null : chosen.run();
        return chosen == null || run == null
                ? new GroupStudy(group, bus, BrakingVerdict.NONE_FITS, null, bare, choice.rejected())
                : new GroupStudy(group, bus, BrakingVerdict.NEEDS_BRAKING_UNIT, chosen.unit(), run, choice.rejected());
    }
}
