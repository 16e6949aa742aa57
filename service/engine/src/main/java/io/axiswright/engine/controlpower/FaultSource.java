package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.OutputProtection;
import io.axiswright.engine.catalogue.OverloadCurrent;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Time;
import java.util.Comparator;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a control supply gives into a short circuit at the end of one of its circuits.
 *
 * @param voltage its lowest output, V
 * @param lasting current it gives for as long as it may, beside its other circuits, A
 * @param brief current it gives for a short time, beside its other circuits, A
 * @param briefTime for how long, s
 */
record FaultSource(double voltage, double lasting, double brief, double briefTime) {

    static FaultSource of(
            double voltage, double available, @Nullable OverloadCurrent overload, int count, double others) {
        double lasting = Math.max(0, available - others);
        return overload == null
                ? new FaultSource(voltage, lasting, lasting, 0)
                : new FaultSource(
                        voltage,
                        lasting,
                        Math.max(lasting, overload.current().si() * count - others),
                        overload.time().si());
    }

    /** Largest current of a short circuit behind a loop resistance, A. */
    double current(double resistance) {
        return resistance > 0 ? Math.min(voltage / resistance, brief) : brief;
    }

    /** Resistance of the longest way at whose end a device is sure to open; none if it never gets current enough. */
    OptionalDouble longestWay(OutputProtection device) {
        return device.clearingPoints().stream()
                .filter(point -> point.time().si() <= briefTime
                        ? point.current().si() <= brief
                        : point.time().si() <= ControlConstants.CLEARING_TIME
                                && point.current().si() <= lasting)
                .mapToDouble(point -> voltage / point.current().si())
                .max();
    }

    /** Within what time a device is sure to clear it, the supply able to keep that current up for so long; absent if it is not. */
    @Nullable
    Time clearingTime(OutputProtection device, double resistance) {
        Time soon = device.clearingTime(new Current(current(resistance)));
        Time late = device.clearingTime(new Current(Math.min(current(resistance), lasting)));
        return Stream.concat(
                        Stream.ofNullable(soon).filter(time -> time.si() <= briefTime),
                        Stream.ofNullable(late).filter(time -> time.si() <= ControlConstants.CLEARING_TIME))
                .min(Comparator.comparingDouble(Time::si))
                .orElse(null);
    }
}
