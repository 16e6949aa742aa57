package io.axiswright.engine.stopping;

import io.axiswright.engine.design.SafeguardCheck;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.ArrayList;
import java.util.List;

/**
 * Works out how long and how far every axis runs on from the worst instant of its cycle, when its stop zone is told to stop and
 * when power is lost, and how far safeguards must be from the hazard for it. Stateless.
 */
public final class StoppingStudy {

    /**
     * Studies every stop zone and axis.
     *
     * @throws InvalidDesign if a safeguard states what its standard does not know, or not what it needs
     */
    public StoppingResult study(StoppingRequest request) {
        List<Fault> faults = new ArrayList<>();
        for (int k = 0; k < request.zones().size(); k++) {
            faults.addAll(SafeguardCheck.faults(request.zones().get(k), "/design/stopZones/" + k));
        }
        if (!faults.isEmpty()) {
            throw new InvalidDesign(faults);
        }
        List<ZoneStudy> zones = new ArrayList<>();
        for (int k = 0; k < request.zones().size(); k++) {
            zones.add(ZoneStudy.of(k, request.zones().get(k), request.axes()));
        }
        List<PowerLoss> losses = request.axes().stream().map(PowerLoss::of).toList();
        List<Finding> findings = new ArrayList<>();
        List<Derivation> derivations = new ArrayList<>();
        for (PowerLoss loss : losses) {
            findings.addAll(new AxisFindings(loss, request.zones()).all());
            derivations.addAll(CoastDerivations.of(loss));
        }
        for (ZoneStudy zone : zones) {
            findings.addAll(zone.tooHard());
            findings.addAll(SafeguardFindings.of(zone));
            derivations.addAll(StoppingDerivations.of(zone));
        }
        return new StoppingResult(
                zones.stream().map(ZoneStudy::stopping).toList(),
                losses.stream().map(PowerLoss::stopping).toList(),
                findings,
                derivations);
    }
}
