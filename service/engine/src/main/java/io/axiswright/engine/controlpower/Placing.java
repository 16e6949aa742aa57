package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Time;

/** A chosen supply as it stands on the machine: its load, its input and its heat. */
final class Placing {

    private Placing() {}

    static PlacedControlSupply of(SupplyGroup group, Buffering buffering, String id, ControlPowerRequest request) {
        var supply = group.supply();
        double output = supply.outputVoltage().si() * group.steadyCurrent();
        double input = output / supply.efficiency();
        return new PlacedControlSupply(
                id,
                supply.id(),
                group.count(),
                group.spare(),
                group.place(),
                group.plans().stream()
                        .map(plan -> plan.network().chain())
                        .distinct()
                        .toList(),
                new Current(group.steadyCurrent()),
                new Current(group.worstCurrent()),
                new Current(group.availableCurrent()),
                loadShare(group),
                new Power(input),
                new ApparentPower(input / supply.powerFactor()),
                supply.inputInrush() == null
                        ? null
                        : new Current(supply.inputInrush().si() * group.count()),
                new Power(input - output),
                holdUp(group),
                buffering.buffer().map(Buffer::chosen).orElse(null),
                supply.feed());
    }

    /** A supply derated to nothing carries no load at all; its share is then told by its rated current. */
    private static double loadShare(SupplyGroup group) {
        double available = group.availableCurrent();
        return group.neededCurrent()
                / (available > 0 ? available : group.supply().ratedCurrent().si());
    }

    /** The energy stored at the input is the same at any load, so the time goes with the inverse of the current. */
    static Time holdUp(SupplyGroup group) {
        Time rated = group.supply().holdUpTime();
        double steady = group.steadyCurrent();
        double share = steady / group.supply().ratedCurrent().si() / group.count();
        return share > 0 ? new Time(rated.si() / share) : rated;
    }
}
