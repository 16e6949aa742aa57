package io.axiswright.engine.study;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.supply.Feeder;
import org.jspecify.annotations.Nullable;

/** What the current in the neutral of a feeder means for its conductors. */
final class FeederNeutral {

    /**
     * NFPA 70 310.15(E)(3) counts the neutral where the major portion of the load is nonlinear. Taken as: where it can carry more
     * than this share of what a line does; what is less adds less than a twelfth to the heat.
     */
    private static final double MAJOR = 0.5;

    private FeederNeutral() {}

    /**
     * The neutral current as the share of third harmonic in the line current that would put it there; absent where the neutral
     * is none of the conductors that carry current. IEC 60364-5-52 Annex E has a row for every share.
     */
    static @Nullable Double thirdHarmonic(CodeBasis basis, Feeder feeder) {
        Current neutral = feeder.neutralCurrent();
        if (neutral == null || basis == CodeBasis.NFPA_79 && !counts(neutral, feeder)) {
            return null;
        }
        return neutral.si() / (3 * feeder.designCurrent().si());
    }

    /** The conductors of a feeder that carry current, by NFPA 70. */
    static int loadedConductors(Feeder feeder) {
        Current neutral = feeder.neutralCurrent();
        int lines = feeder.lines().size() == 3 ? 3 : 2;
        return neutral != null && counts(neutral, feeder) ? lines + 1 : lines;
    }

    private static boolean counts(Current neutral, Feeder feeder) {
        return neutral.si() > MAJOR * feeder.designCurrent().si();
    }
}
