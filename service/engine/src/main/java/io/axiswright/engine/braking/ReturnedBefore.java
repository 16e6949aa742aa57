package io.axiswright.engine.braking;

import java.util.List;
import java.util.stream.DoubleStream;

/** The most an endlessly repeated course of power has returned, net, in any window that ends at an instant of it. */
final class ReturnedBefore {

    private final List<PowerSegment> segments;
    private final double[] starts;
    private final boolean gains;

    ReturnedBefore(BusPower power) {
        segments = power.segments();
        starts = new double[segments.size()];
        gains = power.largestWindow() == Double.POSITIVE_INFINITY;
        double running = 0;
        for (int pass = 0; pass < 2; pass++) {
            for (int k = 0; k < starts.length; k++) {
                starts[k] = running;
                running = Math.max(0, running + segments.get(k).energy());
            }
        }
    }

    /** Instants between which it changes smoothly, s. */
    DoubleStream cuts() {
        return segments.stream().mapToDouble(s -> s.instant(s.from()));
    }

    /** The energy at an instant, J; infinite if every cycle returns more than it takes. */
    double at(double instant, double beside) {
        if (gains) {
            return Double.POSITIVE_INFINITY;
        }
        int k = segmentAt(beside);
        PowerSegment segment = segments.get(k);
        return Math.max(0, starts[k] + segment.energy(segment.from(), local(segment, instant)));
    }

    /** The most it exceeds its chord between two instants with no cut between them, J. */
    double bend(double from, double to) {
        PowerSegment segment = segments.get(segmentAt((from + to) / 2));
        double width = to - from;
        return segment.steepest(local(segment, from), local(segment, to)) * width * width / 8;
    }

    private static double local(PowerSegment segment, double instant) {
        return Math.clamp(instant - segment.instant(0), segment.from(), segment.to());
    }

    private int segmentAt(double instant) {
        int low = 0;
        int high = segments.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            PowerSegment segment = segments.get(middle);
            if (segment.instant(segment.from()) <= instant) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }
}
