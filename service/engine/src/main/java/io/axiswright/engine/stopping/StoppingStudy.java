package io.axiswright.engine.stopping;

import io.axiswright.engine.design.SafeguardCheck;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.memory.Memory;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Works out how long and how far every axis runs on from the worst instant of its cycle, when its stop zone is told to stop and
 * when power is lost, and how far safeguards must be from the hazard for it.
 */
public final class StoppingStudy {

    private final Memory memory;

    /** A study that works out every stop anew. */
    public StoppingStudy() {
        this(Memory.NONE);
    }

    /** A study that remembers axes and stop zones. */
    public StoppingStudy(Memory memory) {
        this.memory = memory;
    }

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
        List<StudiedZone> zones = new ArrayList<>();
        for (int k = 0; k < request.zones().size(); k++) {
            StopZone zone = request.zones().get(k);
            zones.add(memory.recall(
                    StudiedZone.class,
                    zone.id(),
                    new StudiedZone.Question(k, zone, request.axesIn(zone)),
                    StudiedZone::of));
        }
        List<StudiedPowerLoss> losses = request.axes().stream()
                .map(axis -> memory.recall(
                        StudiedPowerLoss.class,
                        axis.id(),
                        new StudiedPowerLoss.Question(axis, request.uncontrolled(axis)),
                        StudiedPowerLoss::of))
                .toList();
        return new StoppingResult(
                zones.stream().map(StudiedZone::stopping).toList(),
                losses.stream().map(StudiedPowerLoss::stopping).toList(),
                joined(losses, StudiedPowerLoss::findings, zones, StudiedZone::findings),
                joined(losses, StudiedPowerLoss::derivations, zones, StudiedZone::derivations));
    }

    private static <T> List<T> joined(
            List<StudiedPowerLoss> losses,
            Function<StudiedPowerLoss, List<T>> ofLoss,
            List<StudiedZone> zones,
            Function<StudiedZone, List<T>> ofZone) {
        List<T> all = new ArrayList<>();
        losses.forEach(loss -> all.addAll(ofLoss.apply(loss)));
        zones.forEach(zone -> all.addAll(ofZone.apply(zone)));
        return all;
    }
}
