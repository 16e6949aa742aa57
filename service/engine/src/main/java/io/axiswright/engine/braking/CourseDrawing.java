package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Draws the course of one case: follows it once more, puts as many points between two changes of state as the bounds of the
 * second derivatives ask for to stay within half the tolerance, and leaves out again what the other half allows.
 *
 * <p>The temperature of the resistor is that of the simulation, which lets heat in at the end of each of its steps; between
 * those it is taken as straight.
 */
final class CourseDrawing {

    /** Changes of state after which a case is not drawn. */
    private static final int MOST_CHANGES = 20_000;

    /** Points of one case; beyond them the tolerance is doubled until they suffice. */
    static final int MOST_POINTS = 2_000;

    private static final int VOLTAGE = 0;
    private static final int POWER = 1;
    private static final int HEAT = 2;

    private final Bus bus;
    private final Replay replay;
    private final BusTrace trace;
    private final List<BusNode> nodes;
    private final boolean switchesKept;
    private final List<Polyline.Vertex> vertices = new ArrayList<>();

    private CourseDrawing(Bus bus, Replay replay, BusLog log, BusTrace trace) {
        this.bus = bus;
        this.replay = replay;
        this.trace = trace;
        this.nodes = log.nodes();
        this.switchesKept =
                IntStream.range(0, nodes.size()).filter(this::switches).count() <= MOST_POINTS / 2;
    }

    /**
     * The course of a case; absent if the bus changes its state too often to be drawn.
     *
     * @param ambient temperature of the resistor's surroundings, K; absent without a braking unit
     */
    static @Nullable BusCourse of(Replay replay, Bus bus, double share, @Nullable Temperature ambient) {
        var log = new BusLog(MOST_CHANGES);
        BusTrace trace = new BusSimulation(bus, replay.chopper()).run(replay.power(), replay.start(), log);
        return log.open() ? new CourseDrawing(bus, replay, log, trace).drawn(share, ambient) : null;
    }

    private boolean switches(int k) {
        return k > 0 && nodes.get(k - 1).mode() != nodes.get(k).mode();
    }

    private BusCourse drawn(double share, @Nullable Temperature ambient) {
        double[] ranges = ranges();
        for (double reached = share; ; reached *= 2) {
            double[] halves = {reached * ranges[VOLTAGE] / 2, reached * ranges[POWER] / 2, reached * ranges[HEAT] / 2};
            vertices.clear();
            for (int k = 0; k < nodes.size(); k++) {
                stretch(k, halves);
            }
            keepExtremes();
            List<Polyline.Vertex> left = Polyline.thinned(vertices, halves);
            if (left.size() <= MOST_POINTS || reached >= 1) {
                return new BusCourse(
                        reached, left.stream().map(v -> point(v, ambient)).toList());
            }
        }
    }

    private static BusCourse.Point point(Polyline.Vertex vertex, @Nullable Temperature ambient) {
        return new BusCourse.Point(
                new Time(vertex.instant()),
                new Voltage(vertex.values()[VOLTAGE]),
                new Power(vertex.values()[POWER]),
                ambient == null ? null : new Temperature(ambient.si() + vertex.values()[HEAT]));
    }

    /** Highest less lowest of each value; a range of rounding counts as that of the value itself. */
    private double[] ranges() {
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {bus.voltage(trace.peakEnergy()), Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int k = 0; k < nodes.size(); k++) {
            BusNode node = nodes.get(k);
            for (double local : new double[] {node.local(), end(k)}) {
                double[] values = values(k, local);
                for (int c = 0; c < values.length; c++) {
                    low[c] = Math.min(low[c], values[c]);
                    high[c] = Math.max(high[c], values[c]);
                }
            }
        }
        double[] ranges = new double[low.length];
        for (int c = 0; c < ranges.length; c++) {
            double size = Math.max(Math.abs(low[c]), Math.abs(high[c]));
            ranges[c] = high[c] - low[c] > 1e-9 * size ? high[c] - low[c] : size;
        }
        return ranges;
    }

    /** Local time of the end of a stretch, s. */
    private double end(int k) {
        BusNode node = nodes.get(k);
        boolean lastOfSegment = k + 1 == nodes.size() || nodes.get(k + 1).segment() != node.segment();
        return lastOfSegment ? node.segment().to() : nodes.get(k + 1).local();
    }

    private double[] values(int k, double local) {
        BusNode node = nodes.get(k);
        double time = local - node.local();
        double length = end(k) - node.local();
        double later =
                k + 1 == nodes.size() ? trace.end().rise() : nodes.get(k + 1).rise();
        return new double[] {
            bus.voltage(node.energyAt(local, replay.chopper().decay())),
            node.segment().slope(local),
            length == 0 ? later : node.rise() + (later - node.rise()) * time / length
        };
    }

    private void stretch(int k, double[] halves) {
        BusNode node = nodes.get(k);
        double from = node.local();
        double to = end(k);
        vertices.add(vertex(k, from, switchesKept && switches(k)));
        if (to <= from) {
            return;
        }
        var stops = new TreeSet<Double>();
        for (double instant : new double[] {trace.peakInstant(), trace.tripInstant()}) {
            double local = instant - node.segment().instant(0);
            if (local > from && local < to) {
                stops.add(local);
            }
        }
        stops.add(to);
        double at = from;
        for (double stop : stops) {
            divide(k, at, stop, halves);
            vertices.add(vertex(k, stop, stop < to));
            at = stop;
        }
    }

    private Polyline.Vertex vertex(int k, double local, boolean kept) {
        return new Polyline.Vertex(nodes.get(k).segment().instant(local), values(k, local), kept);
    }

    /** Points strictly between two, so that none of the straight lines misses by more than half the tolerance. */
    private void divide(int k, double from, double to, double[] halves) {
        if (to - from < 1e-9 * replay.power().duration()) {
            return;
        }
        if (straight(k, from, to, halves)) {
            return;
        }
        double middle = (from + to) / 2;
        divide(k, from, middle, halves);
        vertices.add(vertex(k, middle, false));
        divide(k, middle, to, halves);
    }

    /** A chord misses a function by no more than its second derivative's greatest magnitude times length²/8. */
    private boolean straight(int k, double from, double to, double[] halves) {
        BusNode node = nodes.get(k);
        PowerSegment segment = node.segment();
        double square = (to - from) * (to - from) / 8;
        if (segment.sharpest(from, to) * square > halves[POWER]) {
            return false;
        }
        if (node.mode() == BusMode.HELD) {
            return true;
        }
        double decay = node.mode() == BusMode.CHOPPING ? replay.chopper().decay() : 0;
        double one = node.energyAt(from, decay);
        double other = node.energyAt(to, decay);
        double power = Math.max(Math.abs(segment.slope(from)), Math.abs(segment.slope(to)));
        double slope = power + decay * (Math.max(one, other) + power * (to - from));
        double bend = segment.steepest(from, to) + decay * slope;
        double least = Math.min(one, other) - slope * (to - from);
        if (least <= 0) {
            return false;
        }
        double voltage = bus.voltage(least);
        double second = bend / (bus.capacitance() * voltage)
                + slope * slope / (bus.capacitance() * bus.capacitance() * voltage * voltage * voltage);
        return second * square <= halves[VOLTAGE];
    }

    /** Ends, and the first highest and lowest of every value, stay. */
    private void keepExtremes() {
        keep(0);
        keep(vertices.size() - 1);
        for (int c : new int[] {VOLTAGE, POWER, HEAT}) {
            int highest = 0;
            int lowest = 0;
            for (int k = 1; k < vertices.size(); k++) {
                double value = vertices.get(k).values()[c];
                highest = value > vertices.get(highest).values()[c] ? k : highest;
                lowest = value < vertices.get(lowest).values()[c] ? k : lowest;
            }
            keep(highest);
            keep(lowest);
        }
    }

    private void keep(int k) {
        if (k >= 0 && k < vertices.size()) {
            vertices.set(k, vertices.get(k).keep());
        }
    }
}
