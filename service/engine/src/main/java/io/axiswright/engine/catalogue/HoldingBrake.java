package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Spring-applied brake that holds a load at rest, built onto a drive unit. Of those that hold a load the cheapest is chosen that also
 * stops it when power is lost, from the highest speed and without counting on friction, as far as it states what it takes; if there is
 * none, the cheapest that holds it.
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit (one metre for bulk cable); on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param frameSize frame size it fits
 * @param torque static holding torque
 * @param inertia inertia it adds to the rotor
 * @param pullInPower power at 24 V while it releases
 * @param holdPower power at 24 V once released
 * @param minimumVoltage lowest voltage at which it releases
 * @param releaseDelay from voltage to released
 * @param engageDelay from no voltage to holding
 * @param stopTorqueShare share of the static torque it brakes with when it has to stop a turning shaft, hot and at the end of
 *     its wear; all of it if absent
 * @param stopEnergy the most energy it takes up in one such stop; not checked if absent
 */
public record HoldingBrake(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs,
        String frameSize,
        @Bounds(above = 0) Torque torque,
        @Bounds(min = 0) Inertia inertia,
        @Bounds(above = 0) Power pullInPower,
        @Bounds(above = 0) Power holdPower,
        @Bounds(above = 0) Voltage minimumVoltage,
        @Bounds(min = 0, max = 1000000) Time releaseDelay,
        @Bounds(min = 0, max = 1000000) Time engageDelay,
        @Bounds(above = 0, max = 1) @Nullable Double stopTorqueShare,
        @Bounds(above = 0) @Nullable Energy stopEnergy)
        implements Item {

    /** Torque it brakes a turning shaft with, N·m. */
    public double brakingTorque() {
        return torque.si() * (stopTorqueShare == null ? 1 : stopTorqueShare);
    }
}
