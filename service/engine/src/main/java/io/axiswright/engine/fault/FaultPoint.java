package io.axiswright.engine.fault;

import io.axiswright.engine.quantity.Resistance;
import org.jspecify.annotations.Nullable;

/**
 * A place and the currents of a fault there.
 *
 * @param place what sort of place it is
 * @param id the load, the transformer, "mains panel" or "supply terminals"
 * @param circuit the circuit that leads there; absent for the supply terminals and transformers
 * @param resistance resistance of one line from the source to it, conductors at 20 °C; absent behind a transformer, of which
 *     the magnitude of the impedance is known
 * @param reactance reactance of one line from the source to it; absent behind a transformer
 * @param maximum highest currents: highest voltage, conductors at 20 °C
 * @param minimum lowest currents: lowest voltage, conductors at their highest temperature in operation
 */
public record FaultPoint(
        FaultPlace place,
        String id,
        @Nullable String circuit,
        @Nullable Resistance resistance,
        @Nullable Resistance reactance,
        FaultCurrents maximum,
        FaultCurrents minimum) {}
