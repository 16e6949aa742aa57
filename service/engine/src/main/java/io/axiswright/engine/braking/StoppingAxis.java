package io.axiswright.engine.braking;

import io.axiswright.engine.numeric.WorstInstant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;

/**
 * One axis that stops, whatever the others of its bus do meanwhile: of all windows that end while it stops, the one in which it
 * returns most. What it returns in its cycle up to the instant at which the stop begins and what it returns from then on belong
 * to one and the same instant: an axis that has just come to rest in its cycle has nothing left to return in a stop. Remembers
 * what was found: braking units, lines and counts ask for the same again.
 */
final class StoppingAxis {

    /** A proven bound lies above the value found by no more than this share of the bus's energy at high line. */
    private static final double TOLERANCE = 1e-4;

    private static final int MOST_INSTANTS = 500;

    /** Of a stop that is only tried, the bound is worked out no closer than this many instants make it. */
    private static final int MOST_TRIED = 100;

    private final String id;
    private final PowerCourse cycle;
    private final StopScene.Stopping stop;
    private final boolean losses;
    private final int most;
    private final StopScene scene;
    private final Map<Double, WorstInstant> worst = new HashMap<>();
    private double peak = Double.NaN;

    /**
     * An axis.
     *
     * @param id its id
     * @param cycle its power over its own cycle
     * @param stop its stops
     * @param losses whether motors and drives burn energy
     */
    StoppingAxis(String id, PowerCourse cycle, StopScene.Stopping stop, boolean losses) {
        this(id, cycle, stop, losses, MOST_INSTANTS);
    }

    private StoppingAxis(String id, PowerCourse cycle, StopScene.Stopping stop, boolean losses, int most) {
        this.id = id;
        this.cycle = cycle;
        this.stop = stop;
        this.losses = losses;
        this.most = most;
        this.scene = new StopScene(List.of(stop), CyclePower.of(List.of(), 0), stop.period(), losses);
    }

    String id() {
        return id;
    }

    PowerCourse cycle() {
        return cycle;
    }

    /** From the start of deceleration to rest, s. */
    double duration() {
        return stop.model().duration();
    }

    /** The same axis stopped within another time, s, on trial: bounds are safe, but less close. */
    StoppingAxis within(double time) {
        var other = new StopScene.Stopping(stop.model().within(time), stop.unit(), stop.period());
        return new StoppingAxis(id, cycle, other, losses, MOST_TRIED);
    }

    /** Power returned from the start of deceleration, begun at a worst instant. */
    PowerCourse from(WorstInstant at) {
        return scene.course(0, at.instant(), at.beside());
    }

    /** Neither in its cycle nor in any stop does it return more power than this, W. */
    double peak() {
        if (Double.isNaN(peak)) {
            double highest = cycle.peak();
            double[] cuts = scene.cuts();
            for (int k = 0; k + 1 < cuts.length; k++) {
                highest = Math.max(highest, scene.powerBound(cuts[k], cuts[k + 1]));
            }
            peak = highest;
        }
        return peak;
    }

    /**
     * The instant at which to begin the stop so that most is returned, net, in a window that ends during it, J.
     *
     * @param drain constant power taken away meanwhile, W
     * @param bus the bus, for whose energy the search is close enough
     */
    WorstInstant worst(double drain, Bus bus) {
        return worst.computeIfAbsent(drain, taken -> search(taken, TOLERANCE * bus.floorEnergy()));
    }

    private WorstInstant search(double drain, double tolerance) {
        var before = new ReturnedBefore(BusPower.drained(cycle, drain));
        WorstInstant.Bending window = new WorstInstant.Bending() {
            @Override
            public double value(double instant, double beside) {
                BusPower stopped = scene.power(instant, beside);
                BusPower after = drain == 0 ? stopped : stopped.less(drain);
                return Math.max(before.at(instant, beside) + after.largestStart(), after.largestPart());
            }

            @Override
            public double bend(double from, double to) {
                return before.bend(from, to) + scene.bendOver(drain, from, to);
            }

            /** What was returned before does not jump. */
            @Override
            public boolean jumps(double instant) {
                return scene.jumps(instant);
            }
        };
        double[] cuts = WorstInstant.tidy(
                DoubleStream.concat(DoubleStream.of(scene.cuts()), before.cuts())
                        .toArray(),
                stop.period());
        return WorstInstant.of(window, cuts, new WorstInstant.Tolerance(0, tolerance), most);
    }
}
