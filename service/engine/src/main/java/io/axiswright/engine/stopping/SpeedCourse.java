package io.axiswright.engine.stopping;

import io.axiswright.engine.duty.Coasting;
import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;

/**
 * The speed of an axis over its endlessly repeated cycle, in stretches over which it is monotone and keeps its sign, and the
 * way run by any instant.
 */
final class SpeedCourse {

    /**
     * Such a stretch.
     *
     * @param from its start, s
     * @param to its end, s
     * @param piece the piece of the cycle it is part of
     * @param angle angle run over the time since the start of the piece, rad
     * @param before angle run, there and back, from the start of the cycle to its start, rad
     */
    record Stretch(double from, double to, Coasting.Piece piece, Polynomial angle, double before) {

        /** Speed at an instant of it, rad/s. */
        double speed(double instant) {
            return piece.speed().at(instant - piece.start());
        }

        /** Angle run from its start to an instant of it, rad. */
        double way(double instant) {
            return Math.abs(angle.at(instant - piece.start()) - angle.at(from - piece.start()));
        }
    }

    private final List<Stretch> stretches;
    private final double period;
    private final double wholeWay;

    private SpeedCourse(List<Stretch> stretches, double period, double wholeWay) {
        this.stretches = stretches;
        this.period = period;
        this.wholeWay = wholeWay;
    }

    static SpeedCourse of(Coasting coasting) {
        List<Stretch> stretches = new ArrayList<>();
        double before = 0;
        for (Coasting.Piece piece : coasting.pieces()) {
            double[] cuts = DoubleStream.concat(
                            DoubleStream.of(piece.speed().extremalPoints(0, piece.duration())),
                            DoubleStream.of(piece.speed().signChanges(0, piece.duration())))
                    .sorted()
                    .toArray();
            Polynomial angle = piece.speed().antiderivative();
            double from = 0;
            for (double to : cuts) {
                if (to > from) {
                    var stretch = new Stretch(piece.start() + from, piece.start() + to, piece, angle, before);
                    stretches.add(stretch);
                    before += stretch.way(stretch.to());
                    from = to;
                }
            }
        }
        return new SpeedCourse(stretches, coasting.period(), before);
    }

    List<Stretch> stretches() {
        return stretches;
    }

    /** Instants of the cycle that cut what happens between an instant and that a time earlier into smooth parts, ascending, s. */
    double[] cuts(double earlier) {
        var cuts = new TreeSet<Double>();
        cuts.add(period);
        for (Stretch stretch : stretches) {
            cuts.add(stretch.from());
            cuts.add(wrapped(stretch.from() + earlier));
        }
        return cuts.stream().mapToDouble(t -> t).toArray();
    }

    /** The stretch an instant belongs to, whatever the turn of the cycle. */
    Stretch at(double instant) {
        double t = wrapped(instant);
        int low = 0;
        int high = stretches.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (stretches.get(middle).from() <= t) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return stretches.get(low);
    }

    /** Magnitude of the speed at an instant of any turn, by the stretch of another instant beside it, rad/s. */
    double speed(double instant, double beside) {
        Stretch stretch = at(beside);
        double turn = beside - wrapped(beside);
        return Math.abs(stretch.speed(instant - turn));
    }

    /** Angle run, there and back, in a time up to an instant, rad. */
    double runOn(double time, double instant) {
        return time == 0 ? 0 : way(instant) - way(instant - time);
    }

    private double way(double instant) {
        double turns = Math.floor(instant / period);
        double t = wrapped(instant);
        Stretch stretch = at(t);
        return turns * wholeWay + stretch.before() + stretch.way(t);
    }

    private double wrapped(double instant) {
        double t = instant - Math.floor(instant / period) * period;
        return t < period ? t : 0;
    }
}
