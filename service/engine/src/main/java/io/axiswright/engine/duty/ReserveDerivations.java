package io.axiswright.engine.duty;

import static io.axiswright.engine.finding.Derivation.inputs;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Payload;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** How the reserves of an axis came about. */
final class ReserveDerivations {

    private static final String CLAUSE = "derived: every limit of the duty worked out anew at each step of the search";

    private final String axis;
    private final List<Derivation> derivations = new ArrayList<>();

    private ReserveDerivations(String axis) {
        this.axis = axis;
    }

    /**
     * Of one axis.
     *
     * @param period how long its cycle lasts as stated, s
     */
    static List<Derivation> of(String axis, Reserves reserves, double period) {
        var all = new ReserveDerivations(axis);
        Time stated = new Time(period);
        all.time("k_cycle", "all times", reserves.cycleRate(), stated);
        all.time("k_move", "times of all that moves", reserves.moveTime(), stated);
        all.payload(reserves.payload());
        return all.derivations;
    }

    private void time(String symbol, String what, TimeReserve reserve, Time stated) {
        if (reserve.timeFactor() != null && reserve.cyclePeriod() != null) {
            derivations.add(new Derivation(
                    axis,
                    symbol,
                    "least k next to 1 at which all limits hold with " + what + " k·t, speeds w/k, accelerations a/k²; "
                            + beyond(reserve.limit()),
                    inputs("t_cycle", stated, "t_cycle(k)", reserve.cyclePeriod()),
                    CLAUSE,
                    new Ratio(reserve.timeFactor())));
        }
    }

    private void payload(PayloadReserve reserve) {
        Payload added = reserve.added();
        if (added != null && reserve.largest() != null) {
            derivations.add(new Derivation(
                    axis,
                    "p_add",
                    "largest p next to 0 at which all limits hold with p more in every payload; "
                            + beyond(reserve.limit()),
                    inputs("p_largest", reserve.largest()),
                    CLAUSE,
                    added));
        }
    }

    private static String beyond(@Nullable DutyLimit limit) {
        return limit == null
                ? "none breaks"
                : limit.name().toLowerCase(Locale.ROOT).replace('_', ' ') + " limit breaks beyond";
    }
}
