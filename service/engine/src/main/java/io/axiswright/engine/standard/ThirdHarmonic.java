package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.Ratio;
import java.util.List;
import java.util.Optional;

/** What third-harmonic current, which adds up in the neutral, takes from the ampacity of a cable (IEC 60364-5-52 Annex E). */
public final class ThirdHarmonic {

    /** Third harmonics of three balanced lines add up in the neutral. */
    private static final double LINES = 3;

    private static final List<TableRow> ROWS = TableFile.rows("iec-60364-5-52-table-e-52-1");
    private static final StepTable<Ratio> FACTOR =
            StepTable.of(ROWS, r -> true, "share_up_to", r -> Optional.of(new Ratio(r.number("factor"))));
    private static final StepTable<Boolean> BY_NEUTRAL =
            StepTable.of(ROWS, r -> true, "share_up_to", r -> Optional.of("NEUTRAL".equals(r.text("chosen_by"))));

    private ThirdHarmonic() {}

    /** Current in the neutral as a multiple of the line current, by the share of the third harmonic in that. */
    public static double neutral(double share) {
        return LINES * share;
    }

    /** Reduction of the ampacity, by the share of the third harmonic in the line current. */
    public static Sourced<Ratio> factor(double share) {
        return FACTOR.at(share).orElseThrow();
    }

    /** Whether the neutral current, not that of the lines, chooses the size. */
    public static boolean chosenByNeutral(double share) {
        return BY_NEUTRAL.at(share).orElseThrow().value();
    }
}
