package io.axiswright.engine.duty;

import java.util.List;

/**
 * Even decelerations to rest within a time, under the load of the segment they interrupt. Where the load's torque does not
 * depend on its position, what the stops differ by is bounded with certainty; else it is judged by three of them.
 *
 * @param load the axis
 * @param inertia inertia of the motor and what turns with it, kg·m²
 * @param duration from the start of deceleration to rest, s
 */
record EvenStops(AxisLoad load, double inertia, double duration) implements StopModel {

    private static final Course NONE = new Course(List.of());

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

    @Override
    public StopModel within(double time) {
        return new EvenStops(load, inertia, time);
    }

    @Override
    public boolean proven() {
        return load.pieces().stream().allMatch(piece -> piece.effort() instanceof EvenEffort even && even.rise() == 0);
    }

    @Override
    public StopRange range(double from, double to) {
        LoadPiece piece = pieceAt((from + to) / 2);
        return switch (piece.effort()) {
            case EvenEffort even
            when even.rise() == 0 ->
                new EvenStopRange(load.drivetrain(), even, inertia, duration)
                        .of(piece, from - piece.start(), to - piece.start());
            default -> SampledStopRange.of(this, piece, from, to);
        };
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
