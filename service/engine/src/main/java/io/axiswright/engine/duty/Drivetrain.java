package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Gear;
import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The way from the load to the motor shaft: mechanism, its shaft, gears; what turns with the motor comes last and has no
 * efficiency.
 *
 * @param mechanics the mechanism
 * @param stages the mechanism, then the gears, the one at the motor last and without its inertia
 * @param gearInertia inertia of the gear at the motor shaft, kg·m²
 * @param couplingInertia inertia of the coupling at the motor shaft, kg·m²
 */
record Drivetrain(Mechanics mechanics, List<Stage> stages, double gearInertia, double couplingInertia) {

    /** Pieces shorter than this share of a motion are rounding. */
    private static final double SLIVER = 1e-10;

    static Drivetrain of(Axis axis) {
        Mechanics mechanics = Mechanics.of(axis.mechanism());
        List<Stage> stages = new ArrayList<>();
        stages.add(new Stage(1, mechanics.efficiency(), mechanics.shaftInertia(), mechanics.drag()));
        for (Gear gear : axis.gears().reversed()) {
            stages.add(new Stage(
                    gear.ratio(),
                    Efficiency.of(gear.efficiency(), gear.backDrivingEfficiency()),
                    gear == axis.gears().getFirst() ? 0 : gear.inertia().si(),
                    gear.noLoadTorque() == null ? 0 : gear.noLoadTorque().si()));
        }
        return new Drivetrain(
                mechanics,
                List.copyOf(stages),
                axis.gears().isEmpty() ? 0 : axis.gears().getFirst().inertia().si(),
                axis.couplingInertia() == null ? 0 : axis.couplingInertia().si());
    }

    /** Motor turns per turn of the mechanism's shaft. */
    double ratio() {
        double ratio = 1;
        for (Stage stage : stages) {
            ratio *= stage.ratio();
        }
        return ratio;
    }

    /** Inertia of all gears at the motor shaft, kg·m². */
    double gearsInertia() {
        double inertia = 0;
        for (Stage stage : stages.subList(1, stages.size())) {
            inertia = inertia / (stage.ratio() * stage.ratio()) + stage.inertia();
        }
        return inertia + gearInertia;
    }

    /** Inertia at the motor shaft of a load on the mechanism's shaft, mechanism and gears, kg·m²; it knows no efficiency. */
    double reflectedInertia(double atShaft) {
        double inertia = atShaft;
        for (Stage stage : stages) {
            inertia = inertia / (stage.ratio() * stage.ratio()) + stage.inertia();
        }
        return inertia + gearInertia;
    }

    /** Whether no load can drive the motor through it. */
    boolean selfLocking() {
        return stages.stream().anyMatch(stage -> stage.efficiency().selfLocking());
    }

    /** Torque at the motor shaft for one at the mechanism's shaft, N·m; losses would help to hold but are not counted on. */
    double holdingTorque(double atShaft) {
        return atShaft / ratio();
    }

    /** The pieces of a standstill, held by the motor or, without it, by the brake. */
    List<LoadPiece> resting(LoadEffort effort, double start, double duration, double position, boolean held) {
        return effort.resting(position, duration).stream()
                .map(piece -> resting(
                        effort.later(piece.start()),
                        start + piece.start(),
                        piece.duration(),
                        position,
                        piece.torque(),
                        held ? Polynomial.ZERO : throughAtRest(piece.torque())))
                .toList();
    }

    /** The piece of a standstill under a torque at the mechanism's shaft that is known over time. */
    LoadPiece resting(LoadEffort effort, double start, double duration, double position, Polynomial pull) {
        return resting(effort, start, duration, position, pull, throughAtRest(pull));
    }

    /** A self-locking transmission lets nothing through to the motor. */
    private Polynomial throughAtRest(Polynomial pull) {
        return selfLocking() ? Polynomial.ZERO : pull.times(1 / ratio());
    }

    private static LoadPiece resting(
            LoadEffort effort, double start, double duration, double position, Polynomial pull, Polynomial torque) {
        return LoadPiece.of(
                start, duration, Polynomial.of(position), Polynomial.ZERO, Polynomial.ZERO, torque, pull, effort);
    }

    /**
     * The pieces of a motion. The efficiency of each stage goes with the direction of power through it, so the motion is cut
     * where that power changes sign: first at the mechanism, then, once the inertia and drag of its shaft are added, at the
     * gear that it turns, and so on to the motor.
     *
     * @param effort the load
     * @param start when the motion starts, s
     * @param motion the motion
     */
    List<LoadPiece> moving(LoadEffort effort, double start, LoadMotion motion) {
        return passing(effort, start, effort.moving(motion), motion.direction());
    }

    /** The same for torque at the mechanism's shaft that is known over time, whatever the load behind it. */
    List<LoadPiece> passing(LoadEffort effort, double start, List<ShaftPiece> shaft, double direction) {
        List<LoadPiece> pieces = new ArrayList<>();
        walk(
                shaft,
                direction,
                (piece, torque, turns, from, to) -> pieces.add(LoadPiece.of(
                        start + piece.start() + from,
                        to - from,
                        piece.position().shifted(from),
                        piece.speed().times(turns).shifted(from),
                        piece.acceleration().times(turns).shifted(from),
                        torque.shifted(from),
                        piece.torque().shifted(from),
                        effort.later(piece.start() + from))));
        return pieces;
    }

    /**
     * The course of a motion from 0 s on and no more than that: searches look at thousands of stops.
     *
     * @param inertia inertia of the motor and what turns with it, kg·m²
     */
    Course course(LoadEffort effort, LoadMotion motion, double inertia) {
        List<Course.Piece> pieces = new ArrayList<>();
        walk(effort.moving(motion), motion.direction(), (piece, torque, turns, from, to) -> {
            Polynomial own = piece.acceleration().times(turns * inertia);
            pieces.add(new Course.Piece(
                    piece.start() + from,
                    to - from,
                    piece.speed().times(turns).shifted(from),
                    torque.plus(own).shifted(from)));
        });
        return new Course(pieces);
    }

    private void walk(List<ShaftPiece> shaft, double direction, End end) {
        for (ShaftPiece piece : shaft) {
            new Walk(piece, direction, end).through(0, piece.torque(), 1, 0, piece.duration());
        }
    }

    /** What becomes of a piece that has come to the motor. */
    private interface End {

        /**
         * Takes it.
         *
         * @param piece the piece at the mechanism's shaft
         * @param torque torque wanted of the motor over the time since that piece began
         * @param turns motor turns per turn of that shaft
         * @param from where it starts on the piece, s
         * @param to where it ends, s
         */
        void add(ShaftPiece piece, Polynomial torque, double turns, double from, double to);
    }

    /** The way of one piece through the stages. */
    private final class Walk {

        private final ShaftPiece piece;
        private final double direction;
        private final End end;

        Walk(ShaftPiece piece, double direction, End end) {
            this.piece = piece;
            this.direction = direction;
            this.end = end;
        }

        /** From stage k on: the torque wanted of it, and its output's turns per turn of the mechanism's shaft. */
        void through(int k, Polynomial torque, double turns, double from, double to) {
            if (k == stages.size()) {
                end.add(piece, torque, turns, from, to);
                return;
            }
            Stage stage = stages.get(k);
            double inputTurns = turns * stage.ratio();
            Polynomial acceleration = piece.acceleration().times(inputTurns);
            double[] cuts = cuts(stage.efficiency(), torque, from, to);
            for (int j = 1; j < cuts.length; j++) {
                boolean driving = torque.at((cuts[j - 1] + cuts[j]) / 2) * direction >= 0;
                Polynomial input = stage.passed(torque, driving, acceleration, direction);
                through(k + 1, input, inputTurns, cuts[j - 1], cuts[j]);
            }
        }
    }

    /** Both ends and the sign changes between them that are not rounding at an end. */
    static double[] cuts(Efficiency efficiency, Polynomial torque, double from, double to) {
        double[] changes = efficiency.lossless() ? new double[0] : torque.signChanges(from, to);
        double least = SLIVER * to;
        double[] cuts = new double[changes.length + 2];
        int count = 1;
        cuts[0] = from;
        for (double change : changes) {
            if (change > from + least && change < to - least) {
                cuts[count++] = change;
            }
        }
        cuts[count++] = to;
        return count == cuts.length ? cuts : Arrays.copyOf(cuts, count);
    }
}
