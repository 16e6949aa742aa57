package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.Conveyor;
import io.axiswright.engine.design.Crank;
import io.axiswright.engine.design.Custom;
import io.axiswright.engine.design.DirectDrive;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.RackAndPinion;
import io.axiswright.engine.design.RotaryTable;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.Winder;
import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;

/**
 * An axis as it would move if its torque were taken away at any instant of its cycle.
 *
 * @param rotary whether the load turns instead of travelling
 * @param travel how far the load goes per radian of the motor shaft, m or rad; of a mechanism whose leverage changes along the way,
 *     how far the mechanism's shaft turns
 * @param gravity whether gravity drives it
 * @param even whether its load is the same wherever it is; if not, what it coasts under is its largest inertia with its largest
 *     effort either way and only friction that is there everywhere
 * @param pieces its cycle, end to end
 */
public record Coasting(boolean rotary, double travel, boolean gravity, boolean even, List<Piece> pieces) {

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

    /** Whether some element of its transmission keeps any load at rest. */
    public boolean locks() {
        return pieces.stream()
                .flatMap(piece -> piece.loads().stream())
                .flatMap(load -> load.links().stream())
                .anyMatch(link -> link.backDriving() <= 0);
    }

    /** How long the cycle lasts, s. */
    public double period() {
        return pieces.isEmpty() ? 0 : pieces.getLast().end();
    }

    /** Of an axis with a given inertia of all that turns with the motor, kg·m². */
    static Coasting of(Axis axis, AxisLoad load, double motorInertia) {
        boolean rotary = switch (axis.mechanism()) {
            case Screw _, Belt _, RackAndPinion _, Conveyor _, Hoist _ -> false;
            case RotaryTable _, DirectDrive _, Crank _, Winder _, Custom _ -> true;
        };
        var reach = Reach.of(load.pieces());
        double travel = 1;
        boolean even = true;
        List<Piece> pieces = new ArrayList<>();
        for (LoadPiece piece : load.pieces()) {
            boolean rests = piece.speed().equals(Polynomial.ZERO);
            boolean held = rests && piece.torque().equals(Polynomial.ZERO);
            List<CoastLoad> loads;
            if (piece.effort() instanceof EvenEffort effort) {
                travel = effort.travel();
                loads = effort.rise() == 0
                        ? even(load.drivetrain(), effort, motorInertia)
                        : uneven(load.drivetrain(), effort, reach, motorInertia);
                even &= effort.rise() == 0;
            } else {
                loads = uneven(load.drivetrain(), piece.effort(), reach, motorInertia);
                even = false;
            }
            pieces.add(new Piece(piece.start(), piece.duration(), piece.speed(), held, loads));
        }
        return new Coasting(rotary, Math.abs(travel / load.drivetrain().ratio()), load.gravity(), even, pieces);
    }

    /** The positions of a cycle, m or rad. */
    private record Reach(double lowest, double highest) {

        static Reach of(List<LoadPiece> pieces) {
            double lowest = Double.POSITIVE_INFINITY;
            double highest = Double.NEGATIVE_INFINITY;
            for (LoadPiece piece : pieces) {
                for (double t : new double[] {0, piece.duration()}) {
                    lowest = Math.min(lowest, piece.position().at(t));
                    highest = Math.max(highest, piece.position().at(t));
                }
            }
            return new Reach(lowest, highest);
        }
    }

    private static List<CoastLoad> even(Drivetrain drivetrain, EvenEffort effort, double motorInertia) {
        CoastLoad bare = even(drivetrain, effort, effort.gravity(), motorInertia);
        return effort.process() == 0
                ? List.of(bare)
                : List.of(even(drivetrain, effort, effort.gravity() + effort.process(), motorInertia), bare);
    }

    private static CoastLoad even(Drivetrain drivetrain, EvenEffort effort, double weight, double motorInertia) {
        double travel = effort.travel();
        return new CoastLoad(
                effort.mass() * travel * travel,
                weight * travel,
                effort.coulomb() * Math.abs(travel),
                effort.viscous() * travel * travel,
                links(drivetrain),
                motorInertia);
    }

    /**
     * With its largest inertia, its largest effort either way, and friction that is there everywhere. Without a brake no stop is longer
     * as long as it stays within the reach: u = w·sqrt(J) falls by no less than (friction − effort)/sqrt(J), and the kinetic energy
     * over the way by no less than friction − effort, whatever J does meanwhile. That counts on no loss which goes with the load, for
     * that is smaller where the inertia is.
     */
    private static List<CoastLoad> uneven(Drivetrain drivetrain, LoadEffort effort, Reach reach, double motorInertia) {
        double inertia = effort.largestInertia(reach.lowest(), reach.highest());
        double pull = effort.largestHolding(reach.lowest(), reach.highest());
        double friction = effort.friction();
        double viscous = effort.viscousFriction();
        List<CoastLoad.Link> links =
                links(drivetrain).stream().map(Coasting::lossless).toList();
        CoastLoad against = new CoastLoad(inertia, pull, friction, viscous, links, motorInertia);
        return pull == 0
                ? List.of(against)
                : List.of(new CoastLoad(inertia, -pull, friction, viscous, links, motorInertia), against);
    }

    /** A link that counts on no loss but its drag, unless it locks itself. */
    private static CoastLoad.Link lossless(CoastLoad.Link link) {
        return link.backDriving() <= 0 ? link : new CoastLoad.Link(link.ratio(), 1, 1, link.inertia(), link.drag());
    }

    private static List<CoastLoad.Link> links(Drivetrain drivetrain) {
        return drivetrain.stages().stream()
                .map(stage -> new CoastLoad.Link(
                        stage.ratio(),
                        stage.efficiency().driving(),
                        stage.efficiency().coasting(),
                        stage.inertia(),
                        stage.drag()))
                .toList();
    }
}
