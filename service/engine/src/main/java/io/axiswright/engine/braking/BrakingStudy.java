package io.axiswright.engine.braking;

import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.memory.Memory;
import java.util.List;

/**
 * Works out what the axes return to their DC buses, how far the bus voltages rise, and which braking unit each bus needs.
 */
public final class BrakingStudy {

    private final Memory memory;

    /** A study that works out every bus anew. */
    public BrakingStudy() {
        this(Memory.NONE);
    }

    /** A study that remembers buses. */
    public BrakingStudy(Memory memory) {
        this.memory = memory;
    }

    /**
     * Studies every DC bus.
     *
     * @throws InvalidDesign if an id is used twice, a stop zone is named that is not there, or a chopper would switch off above
     *     the voltage at which it switches on
     */
    public BrakingResult study(BrakingRequest request) {
        RequestCheck.pass(request);
        List<StudiedGroup> groups = BusGroup.of(request.axes()).stream()
                .map(group ->
                        memory.recall(StudiedGroup.class, group.id(), request.alone(group.axes()), StudiedGroup::of))
                .toList();
        return new BrakingResult(
                groups.stream().map(StudiedGroup::braking).toList(),
                BrakingTotals.sum(groups.stream().map(StudiedGroup::totals).toList()),
                groups.stream().flatMap(group -> group.findings().stream()).toList(),
                groups.stream().flatMap(group -> group.derivations().stream()).toList());
    }
}
