package io.axiswright.engine.stopping;

import io.axiswright.engine.design.Safeguard;
import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.List;

/** How the times of stop zones and the distances of their safeguards came about. */
final class StoppingDerivations {

    private StoppingDerivations() {}

    static List<Derivation> of(ZoneStudy study) {
        List<Derivation> derivations = new ArrayList<>();
        Time time = study.stopping().stoppingTime();
        if (time == null) {
            return derivations;
        }
        if (study.zone().category() != StopCategory.CATEGORY_0) {
            derivations.add(new Derivation(
                    study.zone().id(),
                    "t_stop",
                    "t_stop = t_reaction + t_deceleration",
                    Derivation.inputs(
                            "t_reaction",
                            study.zone().reactionTime(),
                            "t_deceleration",
                            study.zone().decelerationTime()),
                    "IEC 60204-1:2016 9.2.2",
                    time));
        }
        for (int k = 0; k < study.safeguards().size(); k++) {
            Safeguard safeguard = study.safeguards().get(k).safeguard();
            SafeguardDistance distance = study.stopping().safeguards().get(k);
            Time response = distance.responseTime();
            Length least = distance.leastDistance();
            if (response != null && least != null) {
                derivations.add(new Derivation(
                        safeguard.id(),
                        "T",
                        "T = t_response + t_stop",
                        Derivation.inputs("t_response", safeguard.responseTime(), "t_stop", time),
                        distance.clause(),
                        response));
                derivations.add(new Derivation(
                        safeguard.id(),
                        "S",
                        distance.formula(),
                        Derivation.inputs("K", distance.approachSpeed(), "T", response, "reach", distance.reach()),
                        distance.clause(),
                        least));
            }
        }
        return derivations;
    }
}
