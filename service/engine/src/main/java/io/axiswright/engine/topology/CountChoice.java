package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.topology.GatewayChoice.Choice;
import io.axiswright.engine.topology.GatewayChoice.Share;
import java.util.ArrayList;
import java.util.List;

/**
 * The best gateway to open at one place where only ports and brake outputs limit it, as nearly always. Most of the bound's
 * time goes by here: a single pass over the axes, without sorting them.
 */
final class CountChoice {

    private final LayoutModel model;
    private final int zones;
    private final int[] zone;
    private final boolean[] brake;
    private final BestAxes any;
    private final BestAxes free;
    private final BestAxes none = new BestAxes(0);
    private final BestAxes[] inZone;
    private final List<Integer> met = new ArrayList<>();
    private final int[] taken;
    private final int[] bestTaken;
    private long bestValue;
    private int bestCount;

    CountChoice(LayoutModel model) {
        int most = model.mostDrivePorts();
        this.model = model;
        this.zones = model.zones();
        this.zone = model.axes().stream().mapToInt(LayoutModel.Axis::zone).toArray();
        this.brake = new boolean[zone.length];
        for (int axis = 0; axis < brake.length; axis++) {
            brake[axis] = model.axes().get(axis).brake();
        }
        this.any = new BestAxes(most);
        this.free = new BestAxes(most);
        this.inZone = new BestAxes[zones];
        for (int k = 0; k < zones; k++) {
            inZone[k] = new BestAxes(most);
        }
        this.taken = new int[most];
        this.bestTaken = new int[most];
    }

    /** As {@link GatewayChoice#best}. */
    Choice best(long open, long scale, List<Integer> gainful, long[] reduced) {
        sort(gainful, reduced);
        bestValue = Long.MAX_VALUE / 4;
        bestCount = 0;
        for (LayoutModel.Type type : model.types()) {
            long fixed = open + type.price() * scale;
            if (type.scope() == StopScope.NONE || zones < 2) {
                consider(fixed, type, any, none, reduced);
            } else {
                consider(fixed, type, free, none, reduced);
                for (int k : met) {
                    consider(fixed, type, inZone[k], free, reduced);
                }
            }
        }
        var share = new ArrayList<Share>(bestCount);
        for (int k = 0; k < bestCount; k++) {
            share.add(new Share(bestTaken[k], 1));
        }
        return new Choice(bestValue, share);
    }

    private void sort(List<Integer> gainful, long[] reduced) {
        any.clear();
        free.clear();
        met.forEach(k -> inZone[k].clear());
        met.clear();
        for (int axis : gainful) {
            any.offer(axis, brake[axis], reduced);
            int k = zone[axis];
            if (k < 0) {
                free.offer(axis, brake[axis], reduced);
            } else {
                if (inZone[k].isEmpty()) {
                    met.add(k);
                }
                inZone[k].offer(axis, brake[axis], reduced);
            }
        }
    }

    private void consider(long fixed, LayoutModel.Type type, BestAxes a, BestAxes b, long[] reduced) {
        int count = BestAxes.merge(a, b, type.drivePorts(), type.brakeOutputs(), reduced, taken);
        long value = fixed;
        for (int k = 0; k < count; k++) {
            value += reduced[taken[k]];
        }
        if (value < bestValue) {
            bestValue = value;
            bestCount = count;
            System.arraycopy(taken, 0, bestTaken, 0, count);
        }
    }
}
