package io.axiswright.engine.stopping;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.List;

/**
 * What one axis does when its power is lost, as the result has it.
 *
 * @param stopping how it comes to rest
 * @param findings what is to be said about it
 * @param derivations how its numbers came about
 */
record StudiedPowerLoss(AxisStopping stopping, List<Finding> findings, List<Derivation> derivations) {

    /**
     * All that it follows from.
     *
     * @param axis the axis
     * @param uncontrolled whether its stop zone takes its power away at once
     */
    record Question(StoppingAxis axis, boolean uncontrolled) {}

    static StudiedPowerLoss of(Question question) {
        PowerLoss loss = PowerLoss.of(question.axis());
        return new StudiedPowerLoss(
                loss.stopping(), new AxisFindings(loss, question.uncontrolled()).all(), CoastDerivations.of(loss));
    }
}
