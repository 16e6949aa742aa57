package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;
import java.util.List;

/**
 * Even decelerations to rest within a time, under the load of the segment they interrupt.
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
        double direction = Math.signum(piece.speed().at(beside - piece.start()));
        return direction == 0
                ? NONE
                : Stops.stop(
                        load, piece.effort(), piece.speed().at(instant - piece.start()), direction, inertia, duration);
    }

    @Override
    public StopModel within(double time) {
        return new EvenStops(load, inertia, time);
    }

    @Override
    public StopRange range(double from, double to) {
        LoadPiece piece = pieceAt((from + to) / 2);
        Polynomial speed = piece.speed();
        double a = from - piece.start();
        double b = to - piece.start();
        double fastest = Extreme.ofMagnitude(speed, a, b).size();
        double rate = Extreme.ofMagnitude(piece.acceleration(), a, b).size();
        double bend =
                Extreme.ofMagnitude(piece.acceleration().derivative(), a, b).size();
        double perSpeed = torquePerSpeed(piece.effort());
        double rest = steepest(load.drivetrain().gear())
                * steepest(load.drivetrain().mechanics().efficiency())
                * (Math.abs(piece.effort().holding()) + piece.effort().coulomb())
                / Math.abs(load.drivetrain().motorTurn());
        double direction = Math.signum(speed.at((a + b) / 2));
        boolean turns = powerTurns(piece.effort(), speed.at(a), speed.at(b), direction);
        return new StopRange(
                fastest,
                rate,
                bend,
                perSpeed * fastest + rest,
                perSpeed * rate,
                perSpeed * bend,
                turns ? 2 * perSpeed * rate : 0);
    }

    /** The most the torque changes with the speed the stop starts from, N·m·s. */
    private double torquePerSpeed(LoadEffort effort) {
        Drivetrain drivetrain = load.drivetrain();
        double turn = Math.abs(drivetrain.motorTurn());
        double atLoad = (effort.mass() / duration + effort.viscous()) / turn;
        double atShaft = steepest(drivetrain.mechanics().efficiency())
                        * atLoad
                        * Math.abs(drivetrain.mechanics().travel())
                + drivetrain.mechanics().shaftInertia() / drivetrain.ratio() / duration;
        return inertia / duration + steepest(drivetrain.gear()) * atShaft / drivetrain.ratio();
    }

    private static double steepest(Efficiency efficiency) {
        return Math.max(1 / efficiency.driving(), efficiency.backDriving());
    }

    /**
     * Whether the power through an element with losses may change its direction within these stops or from one to the other.
     * The torque wanted is linear in the speed the stop starts from and in the speed left, so its corners tell.
     */
    private boolean powerTurns(LoadEffort effort, double fromSpeed, double toSpeed, double direction) {
        Drivetrain drivetrain = load.drivetrain();
        Efficiency mechanism = drivetrain.mechanics().efficiency();
        if (mechanism.lossless() && drivetrain.gear().lossless()) {
            return false;
        }
        int driving = 0;
        int gearDriving = 0;
        for (double start : new double[] {fromSpeed, toSpeed}) {
            for (double left : new double[] {start, 0}) {
                double turn = drivetrain.motorTurn();
                double wanted = (effort.mass() * -start / duration / turn
                                + effort.viscous() * left / turn
                                + effort.holding()
                                + direction * effort.coulomb())
                        * drivetrain.mechanics().travel();
                boolean drives = wanted * direction >= 0;
                double shaft = wanted * (drives ? 1 / mechanism.driving() : mechanism.backDriving())
                        - start / duration * drivetrain.mechanics().shaftInertia() / drivetrain.ratio();
                driving += drives ? 1 : 0;
                gearDriving += shaft * direction >= 0 ? 1 : 0;
            }
        }
        return driving % 4 != 0 || gearDriving % 4 != 0;
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
