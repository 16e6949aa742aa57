package io.axiswright.engine.braking;

import io.axiswright.engine.numeric.WorstInstant;
import org.jspecify.annotations.Nullable;

/**
 * One case in bare numbers (SI units); instants are NaN where there is none.
 *
 * @param kind what the bus was put through
 * @param zone the stop zone, for its stop
 * @param criterion what its instant is the worst for
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
 * @param pulse energy of the largest pulse of the resistor, J: see {@link ResistorPulses}; a stop or a run down is one
 * @param peakRise highest temperature rise of the resistor, K
 * @param peakPower highest power the axes return together, W
 * @param highest the run in which the bus rose highest; absent for a bound
 * @param worst how the instant of a stop was found; absent but for stops
 * @param replay what it takes to follow it once more; absent for a bound
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
        double pulse,
        double peakRise,
        double peakPower,
        @Nullable BusTrace highest,
        @Nullable Worst worst,
        @Nullable Replay replay) {

    /**
     * How the instant of a stop was found.
     *
     * @param found the instant, and the bound of what was searched
     * @param bound no instant lets the energy of the bus rise above this, J; NaN if another criterion was searched
     */
    record Worst(WorstInstant found, double bound) {}

    /** The same outcome under another name. */
    CaseOutcome as(CaseKind otherKind, String otherZone) {
        return new CaseOutcome(
                otherKind,
                otherZone,
                criterion,
                duration,
                startEnergy,
                endEnergy,
                peakEnergy,
                peakInstant,
                tripInstant,
                returned,
                drawn,
                supplied,
                burned,
                pulse,
                peakRise,
                peakPower,
                highest,
                worst,
                replay);
    }

    /** Mean power into the resistor, W. */
    double meanBurned() {
        return duration > 0 ? burned / duration : 0;
    }

    /** Energy that the bus is proven not to exceed in this case, J. */
    double provenEnergy() {
        return worst == null || Double.isNaN(worst.bound()) ? peakEnergy : worst.bound();
    }

    /** Whether the bus is proven to stay under its trip voltage. */
    boolean fits(Bus bus) {
        return provenEnergy() < bus.tripEnergy();
    }
}
