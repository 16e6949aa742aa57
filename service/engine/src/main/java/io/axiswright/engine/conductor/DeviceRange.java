package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.standard.DeviceRatings;
import io.axiswright.engine.standard.MotorDevices;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What a load lets its protective device be rated.
 *
 * @param least the least it asks for
 * @param wanted what the device is chosen from: the next standard rating
 * @param most the most it allows; null where the conductor alone limits it
 */
record DeviceRange(Current least, Current wanted, @Nullable Current most) {

    /** A load that asks for a rating and leaves the rest to the conductor. */
    static DeviceRange above(Current least) {
        return new DeviceRange(least, least, null);
    }

    /**
     * Motors on one circuit (NFPA 70 430.52(C)(1), 430.53(C)(4)): what the largest alone may have, rounded up, and the currents
     * of the others, rounded down; not below what protects conductors of the demanded ampacity (240.4(B)).
     *
     * @param all the current of all, the least the device may be rated
     * @param largest that of the largest, in A
     * @param demand what their conductors must carry
     */
    static DeviceRange ofMotors(DeviceKind kind, Current all, double largest, Current demand) {
        OptionalDouble ceiling = MotorDevices.permitted(kind, largest, all.si() - largest);
        if (ceiling.isEmpty()) {
            var multiple = new Current(MotorDevices.multiple(kind).value().si() * largest);
            return new DeviceRange(all, multiple, multiple);
        }
        double rounded = DeviceRatings.nextDown(CodeBasis.NFPA_79, kind, new Current(ceiling.getAsDouble()))
                .map(rating -> rating.value().si())
                .orElse(0.0);
        double conductors = DeviceRatings.nextUp(CodeBasis.NFPA_79, kind, demand)
                .map(rating -> rating.value().si())
                .orElse(demand.si());
        var most = new Current(Math.max(rounded, conductors));
        return new DeviceRange(all, most, most);
    }
}
