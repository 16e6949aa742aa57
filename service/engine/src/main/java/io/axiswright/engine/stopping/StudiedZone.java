package io.axiswright.engine.stopping;

import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.List;
import java.util.stream.Stream;

/**
 * One stop zone, as the result has it.
 *
 * @param stopping how it comes to rest
 * @param findings what is to be said about it
 * @param derivations how its numbers came about
 */
record StudiedZone(ZoneStopping stopping, List<Finding> findings, List<Derivation> derivations) {

    /**
     * All that it follows from.
     *
     * @param index its place in the design, for pointers
     * @param zone the zone
     * @param axes its axes
     */
    record Question(int index, StopZone zone, List<StoppingAxis> axes) {}

    static StudiedZone of(Question question) {
        ZoneStudy study = ZoneStudy.of(question.index(), question.zone(), question.axes());
        return new StudiedZone(
                study.stopping(),
                Stream.concat(study.tooHard().stream(), SafeguardFindings.of(study).stream())
                        .toList(),
                StoppingDerivations.of(study));
    }
}
