package io.axiswright.engine.duty;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Even decelerations to rest within a time, under the load of the segment they interrupt. What they differ by is bounded with
 * certainty: in closed form where the load's torque does not depend on its position, else by ranges.
 *
 * @param load the axis
 * @param inertia inertia of the motor and what turns with it, kg·m²
 * @param duration from the start of deceleration to rest, s
 */
record EvenStops(AxisLoad load, double inertia, double duration) implements StopModel {

    private static final Course NONE = new Course(List.of());

    /** Speeds or positions on both sides of a cut that differ by no more than this share are one. */
    private static final double SAME = 1e-12;

    @Override
    public double[] cuts() {
        double[] cuts = new double[load.pieces().size() + 1];
        for (int k = 0; k < load.pieces().size(); k++) {
            cuts[k] = load.pieces().get(k).start();
        }
        cuts[load.pieces().size()] = load.period();
        return cuts;
    }

    @Override
    public Course from(double instant, double beside) {
        LoadPiece piece = pieceAt(beside);
        double direction = Math.signum(piece.position().derivative().at(beside - piece.start()));
        return direction == 0 ? NONE : Stops.stop(load, piece, instant - piece.start(), direction, inertia, duration);
    }

    /** Most pieces go on from one to the next with the same speed under the same load. */
    @Override
    public double[] jumps() {
        double[] cuts = cuts();
        return IntStream.range(0, cuts.length)
                .filter(k -> k == 0
                        || k == load.pieces().size()
                        || differ(load.pieces().get(k - 1), load.pieces().get(k)))
                .mapToDouble(k -> cuts[k])
                .toArray();
    }

    private static boolean differ(LoadPiece before, LoadPiece after) {
        double gap = before.speed().at(before.duration()) - after.speed().at(0);
        return direction(before) != direction(after)
                || !before.effort().equals(after.effort())
                || !level(before.effort()) && moved(before, after)
                || Math.abs(gap) > SAME * Math.max(before.fastest(), after.fastest());
    }

    /** Whether the load stands elsewhere, be it a turn farther. */
    private static boolean moved(LoadPiece before, LoadPiece after) {
        double end = before.position().at(before.duration());
        double start = after.position().at(0);
        return Math.abs(end - start) > SAME * Math.max(Math.abs(end), Math.abs(start));
    }

    private static double direction(LoadPiece piece) {
        return Math.signum(piece.speed().at(piece.duration() / 2));
    }

    @Override
    public StopModel within(double time) {
        return new EvenStops(load, inertia, time);
    }

    /** Whether the torque of every load is the same wherever it stands. */
    boolean level() {
        return load.pieces().stream().allMatch(piece -> level(piece.effort()));
    }

    private static boolean level(LoadEffort effort) {
        return effort instanceof EvenEffort even && even.rise() == 0;
    }

    @Override
    public PowerBend bend(double from, double to, double lossPerTorqueSquared) {
        LoadPiece piece = pieceAt((from + to) / 2);
        double a = from - piece.start();
        double b = to - piece.start();
        return switch (piece.effort()) {
            case EvenEffort even
            when level(even) ->
                new EvenStopRange(load.drivetrain(), even, inertia, duration)
                        .of(piece, a, b)
                        .bend(to - from, duration, lossPerTorqueSquared);
            default -> many().bend(piece, a, b, lossPerTorqueSquared);
        };
    }

    /** The same stops by ranges of them. */
    ManyStops many() {
        return new ManyStops(load.drivetrain(), inertia, duration);
    }

    private LoadPiece pieceAt(double instant) {
        List<LoadPiece> pieces = load.pieces();
        int low = 0;
        int high = pieces.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (pieces.get(middle).start() <= instant) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return pieces.get(low);
    }
}
