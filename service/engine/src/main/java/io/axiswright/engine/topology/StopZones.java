package io.axiswright.engine.topology;

import java.util.ArrayList;
import java.util.List;

/** The stop zones of a model, counted once: searches ask for them in their innermost loops. */
final class StopZones {

    private final LayoutModel model;
    private final int count;

    StopZones(LayoutModel model) {
        this.model = model;
        this.count = model.zones();
    }

    int count() {
        return count;
    }

    /** For each zone the axes that may hang on a gateway of it, in the order given: its own and those of no zone. */
    List<List<Integer>> split(List<Integer> axes) {
        var split = new ArrayList<List<Integer>>(count);
        for (int zone = 0; zone < count; zone++) {
            split.add(new ArrayList<>());
        }
        for (Integer index : axes) {
            int zone = model.axes().get(index).zone();
            if (zone >= 0) {
                split.get(zone).add(index);
            } else {
                split.forEach(list -> list.add(index));
            }
        }
        return split;
    }
}
