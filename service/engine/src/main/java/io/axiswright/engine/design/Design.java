package io.axiswright.engine.design;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Count;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A machine as the caller states it.
 *
 * <p>The order in which axes, stop zones, places, ports and whatever else is told by an id are listed means nothing: answers to the same
 * design in another order differ in the order of the lists that follow it, such as that of the axes, and in nothing else. Where one of
 * several equals is taken, or parts such as circuits and gateways are counted, it goes by the order of ids, numbers in them by value:
 * {@code axis-2} comes before {@code axis-10}.
 *
 * @param name the caller's name for it
 * @param site where it stands
 * @param mains what it is supplied from
 * @param axes its axes
 * @param stopZones its stop zones
 * @param network its control network; needed for topology and all that follows from it
 * @param controlPower its control supply; needed for control power and all that follows from it
 * @param installation how circuits are run; needed for supply, conductors and the bill
 * @param wiring what else is to be known of its wiring, for the bill; all as {@link Wiring} says if absent
 * @param spares what spare parts to buy with the machine, one rule for a kind of item; none if absent
 * @param operation how much it runs, for its energy and what that costs; neither is worked out if absent
 * @param commonCoupling where harmonic currents are held against limits; not studied if absent
 * @param margins what margins the lines of the bill are sold at; the bill has no sale prices if absent
 */
public record Design(
        String name,
        Site site,
        Mains mains,
        @AnyOrder @Count(min = 1, max = 1024) List<Axis> axes,
        @AnyOrder @Count(max = 256) List<StopZone> stopZones,
        @Nullable Network network,
        @Nullable ControlPower controlPower,
        @Nullable Installation installation,
        @Nullable Wiring wiring,
        @Count(max = 32) @Nullable List<SpareRule> spares,
        @Nullable Operation operation,
        @Nullable CommonCoupling commonCoupling,
        @AnyOrder @Count(max = 64) @Nullable List<MarginRule> margins) {

    /** Its rules of spare parts, be they absent or none. */
    public List<SpareRule> spareRules() {
        return spares == null ? List.of() : spares;
    }

    /** Its rules of margins, be they absent or none. */
    public List<MarginRule> marginRules() {
        return margins == null ? List.of() : margins;
    }

    /** A design that says nothing of its wiring, spare parts, operation, coupling and margins. */
    public Design(
            String name,
            Site site,
            Mains mains,
            List<Axis> axes,
            List<StopZone> stopZones,
            @Nullable Network network,
            @Nullable ControlPower controlPower,
            @Nullable Installation installation) {
        this(name, site, mains, axes, stopZones, network, controlPower, installation, null, null, null, null, null);
    }
}
