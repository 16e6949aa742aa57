package io.axiswright.engine.braking;

import org.jspecify.annotations.Nullable;

/**
 * One case in bare numbers (SI units); instants are NaN where there is none.
 *
 * @param kind what the bus was put through
 * @param zone the stop zone, for its stop
 * @param criterion from which instants the axes stop
 * @param duration length, s
 * @param startEnergy energy at the start, J
 * @param endEnergy energy at the end, J
 * @param peakEnergy highest energy, J
 * @param peakInstant when, s
 * @param tripInstant when the trip voltage was first reached, s
 * @param returned energy returned, J
 * @param drawn energy taken, J
 * @param supplied energy from the rectifier, J
 * @param burned energy into the resistor, J
 * @param peakRise highest temperature rise of the resistor, K
 */
record CaseOutcome(
        CaseKind kind,
        @Nullable String zone,
        @Nullable StopCriterion criterion,
        double duration,
        double startEnergy,
        double endEnergy,
        double peakEnergy,
        double peakInstant,
        double tripInstant,
        double returned,
        double drawn,
        double supplied,
        double burned,
        double peakRise) {

    /** Mean power into the resistor, W. */
    double meanBurned() {
        return duration > 0 ? burned / duration : 0;
    }

    /** Whether the bus stays under its trip voltage. */
    boolean fits(Bus bus) {
        return peakEnergy < bus.tripEnergy();
    }
}
