package io.axiswright.engine.fault;

import io.axiswright.engine.quantity.Resistance;
import org.jspecify.annotations.Nullable;

/**
 * A place and the currents of a fault there.
 *
 * @param place what sort of place it is
 * @param id the load, "mains panel" or "supply terminals"
 * @param circuit the circuit that leads there; absent for the supply terminals
 * @param resistance resistance of one line from the source to it, conductors at 20 °C
 * @param reactance reactance of one line from the source to it
 * @param maximum highest currents: highest voltage, conductors at 20 °C
 * @param minimum lowest currents: lowest voltage, conductors at their highest temperature in operation
 */
public record FaultPoint(
        FaultPlace place,
        String id,
        @Nullable String circuit,
        Resistance resistance,
        Resistance reactance,
        FaultCurrents maximum,
        FaultCurrents minimum) {}
