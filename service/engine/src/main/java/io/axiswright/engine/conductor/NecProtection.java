package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.standard.DeviceRatings;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.Sourced;
import org.jspecify.annotations.Nullable;

/** Protection of the conductor by its device, NFPA 70 240.4. */
final class NecProtection {

    /** 240.4(B): up to this rating the device may be the next standard one above the ampacity. */
    private static final double NEXT_SIZE_UP_ENDS = 800;

    private NecProtection() {}

    /**
     * Small conductors, then the next standard rating; both do not bind motor circuits (240.4(G)).
     *
     * @param usable ampacity after correction, no higher than the terminals allow
     */
    static @Nullable Breach breach(NecLoad load, Device device, NecSize size, Current usable) {
        if (load.motor()) {
            return null;
        }
        double rating = device.rating().si();
        var maxDevice = size.maxDevice();
        if (maxDevice != null && !Limits.within(rating, maxDevice.value().si())) {
            return new Breach(Limit.SMALL_CONDUCTOR, device.rating(), maxDevice.value(), maxDevice.clause());
        }
        var maxLoad = size.maxContinuousLoad();
        if (maxLoad != null
                && load.continuous()
                && !Limits.within(load.actual().si(), maxLoad.value().si())) {
            return new Breach(Limit.SMALL_CONDUCTOR, load.actual(), maxLoad.value(), maxLoad.clause());
        }
        Current allowed = rating <= NEXT_SIZE_UP_ENDS
                ? DeviceRatings.nextUp(CodeBasis.NFPA_79, load.circuit().device(), usable)
                        .map(Sourced::value)
                        .orElse(usable)
                : usable;
        return Limits.within(rating, allowed.si())
                ? null
                : new Breach(Limit.DEVICE_COORDINATION, device.rating(), allowed, "NFPA 70:2023 240.4(B)");
    }
}
