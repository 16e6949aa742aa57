package io.axiswright.engine.conductor;

import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.standard.Sourced;
import io.axiswright.engine.standard.ThirdHarmonic;
import org.jspecify.annotations.Nullable;

/**
 * What third-harmonic current in the neutral asks of the conductors, the neutral being as thick as the lines.
 *
 * <p>IEC 60364-5-52 Annex E lowers the ampacity and, above a third of the line current, holds the neutral current against it.
 * The same multiple is laid on the device's rating, so that a device in the lines alone protects the neutral too (IEC 60364-4-43
 * 431.2.3). NFPA 70 310.15(E)(3) counts the neutral among the conductors that carry current; every stated share is taken as the
 * "major portion" it speaks of; 220.61 makes the neutral carry its own current.
 */
final class NeutralLoading {

    private NeutralLoading() {}

    /** The neutral current; null on a circuit without a neutral. */
    static @Nullable Current current(Circuit circuit) {
        Double share = circuit.thirdHarmonic();
        return share == null
                ? null
                : new Current(
                        ThirdHarmonic.neutral(share) * circuit.designCurrent().si());
    }

    /** IEC: the reduction of ampacity; null on a circuit without a neutral. */
    static @Nullable Sourced<Ratio> factor(Circuit circuit) {
        Double share = circuit.thirdHarmonic();
        return share == null ? null : ThirdHarmonic.factor(share);
    }

    /** IEC: the current of the conductor that chooses the size, as a multiple of the line current. */
    static double iecMultiple(Circuit circuit) {
        Double share = circuit.thirdHarmonic();
        return share == null || !ThirdHarmonic.chosenByNeutral(share) ? 1 : Math.max(1, ThirdHarmonic.neutral(share));
    }

    /** NFPA 70: the same. */
    static double necMultiple(Circuit circuit) {
        Double share = circuit.thirdHarmonic();
        return share == null ? 1 : Math.max(1, ThirdHarmonic.neutral(share));
    }

    /** NFPA 70: the conductors together that carry current, where each line has so many in parallel. */
    static int necTogether(Circuit circuit, int parallel) {
        Integer stated = circuit.conductorsTogether();
        int own = necConductors(circuit);
        return stated == null ? circuit.together(parallel) * own : stated + (parallel - 1) * own;
    }

    /** NFPA 70: the conductors of the circuit that carry current. */
    static int necConductors(Circuit circuit) {
        Double share = circuit.thirdHarmonic();
        return circuit.kind().loadedConductors() + (share == null || share == 0 ? 0 : 1);
    }
}
