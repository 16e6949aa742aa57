package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.OutputProtection;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Time;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The protection of a chain's output circuit. It has to carry the largest current, to clear a short circuit at the far end
 * with what the supply gives, and to be rated no higher than the smallest conductor. Of the devices the one that misses
 * least, in this order, then the cheapest.
 *
 * @param far the far end of the chain
 * @param device what protects it
 * @param faultCurrent of a short circuit there, A
 * @param clearingTime within what time it is cleared; absent if that is not sure
 */
record CircuitProtection(
        FarTerminal far,
        OutputProtection device,
        double faultCurrent,
        @Nullable Time clearingTime) {

    private static final Comparator<CircuitProtection> BEST = Comparator.comparing(CircuitProtection::carries)
            .thenComparing(CircuitProtection::clears)
            .thenComparing(CircuitProtection::suitsConductors)
            .reversed()
            .thenComparing(protection -> Price.of(protection.device()))
            .thenComparing(protection -> protection.device().rating().si())
            .thenComparing(protection -> protection.device().id());

    /** The best of the devices; none if there are none. */
    static Optional<CircuitProtection> of(FarTerminal far, List<OutputProtection> devices, FaultSource source) {
        return devices.stream()
                .map(device -> new CircuitProtection(
                        far, device, source.current(far.resistance()), source.clearingTime(device, far.resistance())))
                .min(BEST);
    }

    ChainPlan plan() {
        return far.plan();
    }

    boolean carries() {
        return device.rating().si() >= plan().currents().worstCurrent();
    }

    boolean clears() {
        return clearingTime != null;
    }

    boolean suitsConductors() {
        return far.ampacity().isEmpty()
                || device.rating().si() <= far.ampacity().getAsDouble();
    }

    boolean holds() {
        return carries() && clears() && suitsConductors();
    }

    OutputCircuit result(String supply) {
        return new OutputCircuit(
                plan().network().chain(),
                plan().network().gateways().getFirst().id(),
                supply,
                device.id(),
                new Current(plan().currents().worstCurrent()),
                far.terminal().subject(),
                new Resistance(far.resistance()),
                new Current(faultCurrent),
                device.operatingCurrent(new Time(ControlConstants.CLEARING_TIME)),
                clearingTime);
    }
}
