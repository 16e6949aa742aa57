package io.axiswright.engine.topology;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The stop zones of a model, counted once: searches ask for them in their innermost loops. */
final class StopZones {

    /** The key of all axes, whatever their zones. */
    static final int ANY = -2;

    /** The zone of axes that have none. */
    static final int NONE = -1;

    private final LayoutModel model;
    private final int count;

    StopZones(LayoutModel model) {
        this.model = model;
        this.count = model.zones();
    }

    int count() {
        return count;
    }

    /**
     * The axes by what may hang on one gateway that keeps zones apart, in the order given: for each zone its own axes and
     * those of no zone, for {@link #NONE} those of no zone alone, for {@link #ANY} all. Only zones that occur among them, so
     * that the work does not grow with the zones of the machine; only {@link #ANY} where the machine has not two zones.
     */
    Map<Integer, List<Integer>> split(List<Integer> axes) {
        var split = new TreeMap<Integer, List<Integer>>();
        split.put(ANY, axes);
        if (count < 2) {
            return split;
        }
        var free = new ArrayList<Integer>();
        for (Integer axis : axes) {
            if (zone(axis) == NONE) {
                split.values().stream().filter(list -> list != axes).forEach(list -> list.add(axis));
                free.add(axis);
            } else {
                split.computeIfAbsent(zone(axis), zone -> new ArrayList<>(free)).add(axis);
            }
        }
        if (!free.isEmpty()) {
            split.put(NONE, free);
        }
        return split;
    }

    private int zone(int axis) {
        return model.axes().get(axis).zone();
    }
}
