package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.OutputProtection;
import io.axiswright.engine.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Which protection opens at the far end of a circuit, as long as the supply has no other circuits to feed; what they take is
 * counted once it is known what shares a supply.
 *
 * @param devices protection to choose among; nothing is asked if there is none
 * @param source what the supply gives into a short circuit
 */
record FarEnd(List<OutputProtection> devices, FaultSource source) {

    /** Price of the cheapest that carries the circuit's current and opens; none if none does. */
    Optional<Price> price(ChainPlan plan, Temperature conductor) {
        double way = plan.longestWay(conductor);
        return devices.stream()
                .filter(device -> carries(device, plan) && source.clearingTime(device, way) != null)
                .map(device -> Price.of(device))
                .min(Price::compareTo);
    }

    boolean asksNothing() {
        return devices.isEmpty();
    }

    /** The longest ways, by resistance, at whose end one of the devices that carry the circuit's current opens, Ω. */
    DoubleStream longestWays(ChainPlan plan) {
        return devices.stream()
                .filter(device -> carries(device, plan))
                .map(source::longestWay)
                .flatMapToDouble(OptionalDouble::stream)
                .distinct();
    }

    private static boolean carries(OutputProtection device, ChainPlan plan) {
        return device.rating().si() >= plan.currents().worstCurrent();
    }
}
