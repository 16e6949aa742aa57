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
 * @param chosen the braking unit chosen, if any
 * @param run the cases with that unit, or with none
 * @param bare the cases without any braking unit
 * @param loads what the bus is put through
 * @param rejected braking units tried in vain
 */
record GroupStudy(
        BusGroup group,
        Bus bus,
        BrakingVerdict verdict,
        @Nullable UnitTrial chosen,
        GroupRun run,
        GroupRun bare,
        GroupLoads loads,
        List<RejectedUnit> rejected) {

    /** Studies one bus. */
    static GroupStudy of(BusGroup group, BrakingRequest request) {
        Bus bus = group.bus(request.mains());
        GroupLoads loads = GroupLoads.of(group.axes(), request.zones(), true);
        GroupRun bare = loads.on(bus, Chopper.NONE);
        if (bare.fits(bus)) {
            GroupLoads lossless = GroupLoads.of(group.axes(), request.zones(), false);
            BrakingVerdict verdict =
                    lossless.fit(bus, Chopper.NONE) ? BrakingVerdict.ABSORBED : BrakingVerdict.ABSORBED_WITH_LOSSES;
            return new GroupStudy(group, bus, verdict, null, bare, bare, loads, List.of());
        }
        UnitChoice choice = UnitChoice.of(
                request.brakingUnits(), bus, loads, request.ambient(), group.stopsPerHour(request.zones()));
        UnitTrial chosen = choice.chosen();
        GroupRun run = chosen == null ? null : chosen.run();
        return chosen == null || run == null
                ? new GroupStudy(group, bus, BrakingVerdict.NONE_FITS, null, bare, bare, loads, choice.rejected())
                : new GroupStudy(
                        group, bus, BrakingVerdict.NEEDS_BRAKING_UNIT, chosen, run, bare, loads, choice.rejected());
    }

    /** The braking unit chosen, if any. */
    @Nullable
    BrakingUnit unit() {
        return chosen == null ? null : chosen.unit();
    }

    /** How many of it, in parallel. */
    int count() {
        return chosen == null ? 0 : chosen.count();
    }

    /** The chopper at work, with some of the units dead. */
    Chopper chopper(Bus on, int dead) {
        return chosen == null ? Chopper.NONE : Chopper.of(chosen.unit(), chosen.count() - dead, on);
    }

    /** What happens with one unit dead. */
    GroupRun withOneDead() {
        return count() <= 1 ? bare : loads.on(bus, chopper(bus, 1));
    }
}
