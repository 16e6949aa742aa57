package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;

/**
 * An axis as it would move if its torque were taken away at any instant of its cycle.
 *
 * @param rotary whether the load turns instead of travelling
 * @param travel how far the load goes per radian of the motor shaft, m or rad
 * @param gravity whether gravity drives it
 * @param pieces its cycle, end to end
 */
public record Coasting(boolean rotary, double travel, boolean gravity, List<Piece> pieces) {

    /**
     * A stretch of the cycle with one and the same load.
     *
     * @param start when it starts, s
     * @param duration how long it lasts, s
     * @param speed speed of the motor shaft over the time since the start, rad/s
     * @param held whether a brake or the transmission holds it at rest meanwhile
     * @param loads what it coasts under: with the effort of the process and without, for the process may go on or let go
     */
    public record Piece(double start, double duration, Polynomial speed, boolean held, List<CoastLoad> loads) {

        /** Keeps the loads from being changed. */
        public Piece {
            loads = List.copyOf(loads);
        }

        /** When it ends, s. */
        public double end() {
            return start + duration;
        }

        /** The load without the effort of the process. */
        public CoastLoad bare() {
            return loads.getLast();
        }
    }

    /** Keeps the pieces from being changed. */
    public Coasting {
        pieces = List.copyOf(pieces);
    }

    /** How long the cycle lasts, s. */
    public double period() {
        return pieces.isEmpty() ? 0 : pieces.getLast().end();
    }

    /** Of an axis with a given inertia of all that turns with the motor, kg·m². */
    static Coasting of(AxisLoad load, double motorInertia) {
        Drivetrain drivetrain = load.drivetrain();
        List<Piece> pieces = new ArrayList<>();
        for (LoadPiece piece : load.pieces()) {
            boolean rests = piece.speed().equals(Polynomial.ZERO);
            boolean held = rests && piece.torque().equals(Polynomial.ZERO);
            pieces.add(new Piece(
                    piece.start(),
                    piece.duration(),
                    piece.speed(),
                    held,
                    loads(drivetrain, piece.effort(), motorInertia)));
        }
        return new Coasting(
                drivetrain.mechanics().rotary(), Math.abs(1 / drivetrain.motorTurn()), load.gravity(), pieces);
    }

    private static List<CoastLoad> loads(Drivetrain drivetrain, LoadEffort effort, double motorInertia) {
        CoastLoad bare = load(drivetrain, effort, effort.gravity(), motorInertia);
        return effort.process() == 0
                ? List.of(bare)
                : List.of(load(drivetrain, effort, effort.holding(), motorInertia), bare);
    }

    private static CoastLoad load(Drivetrain drivetrain, LoadEffort effort, double weight, double motorInertia) {
        Mechanics mechanics = drivetrain.mechanics();
        double travel = mechanics.travel();
        Efficiency through = mechanics.efficiency();
        Efficiency gear = drivetrain.gear();
        return new CoastLoad(
                effort.mass() * travel * travel,
                weight * travel,
                effort.coulomb() * Math.abs(travel),
                effort.viscous() * travel * travel,
                List.of(
                        new CoastLoad.Link(1, through.driving(), through.backDriving(), mechanics.shaftInertia(), 0),
                        new CoastLoad.Link(drivetrain.ratio(), gear.driving(), gear.backDriving(), 0, 0)),
                motorInertia);
    }
}
