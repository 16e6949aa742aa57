package io.axiswright.engine.duty;

import static io.axiswright.engine.finding.Derivation.inputs;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Crank;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.numeric.PolynomialPieces;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Time;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * How hard the connecting rod of a crank presses the slider against its guide at the worst instant of the cycle: the force F
 * along the slider's line, divided on a rod that is at phi to that line, leaves N = F·tan(phi) across it, with
 * sin(phi) = (r·sin(theta) − e)/l (Khurmi and Gupta, Theory of Machines, ex. 15.7, p. 533, in line; the offset e derived). The weight of
 * the slider rests on the guide beside it and is not contained.
 *
 * @param peak the largest magnitude of N
 * @param force magnitude of F then: inertia, weight along the line, friction and process
 * @param rodAngle magnitude of phi then, rad
 * @param crankAngle theta then, 0 to 2·pi
 * @param instant when in the cycle
 * @param friction coefficient of the guide times N: friction that comes on top of what the torque contains, which is that under
 *     the slider's weight alone; absent if no coefficient is stated
 */
public record SideThrust(
        Force peak,
        Force force,
        Angle rodAngle,
        Angle crankAngle,
        Time instant,
        @Nullable Force friction) {

    /** How well the course of N is met, as a share of the largest force that it could be. */
    private static final double TOLERANCE = 1e-9;

    private static final int SAMPLES = 16;

    /** Of an axis; none without crank and rod, and where a segment states the torque itself, for what the rod bears is then unknown. */
    static @Nullable SideThrust of(Axis axis, AxisLoad load) {
        if (!(axis.mechanism() instanceof Crank crank)
                || crank.rodLength() == null
                || axis.cycle().segments().stream().anyMatch(TorqueCourse.class::isInstance)) {
            return null;
        }
        double most = -1;
        SideThrust hardest = null;
        for (LoadPiece piece : load.pieces()) {
            if (piece.effort() instanceof CrankEffort effort) {
                Extreme worst = worst(piece, effort);
                if (worst.size() > most) {
                    most = worst.size();
                    hardest = at(piece, effort, worst, crank);
                }
            }
        }
        return hardest;
    }

    private static Extreme worst(LoadPiece piece, CrankEffort effort) {
        CrankState states = CrankState.of(piece);
        DoubleUnaryOperator thrust = t -> effort.thrust(states, t);
        double scale = 0;
        for (int k = 0; k <= SAMPLES; k++) {
            scale = Math.max(scale, Math.abs(effort.sliderForce(states, piece.duration() * k / SAMPLES)));
        }
        Extreme worst = new Extreme(0, thrust.applyAsDouble(0));
        for (PolynomialPieces.Piece part :
                PolynomialPieces.of(thrust, 0, piece.duration(), Math.max(TOLERANCE * scale, Double.MIN_NORMAL))) {
            Extreme here = Extreme.ofMagnitude(part.polynomial(), 0, part.length());
            worst = here.size() > worst.size() ? new Extreme(part.start() + here.at(), here.value()) : worst;
        }
        return worst;
    }

    private static SideThrust at(LoadPiece piece, CrankEffort effort, Extreme worst, Crank crank) {
        double angle = piece.position().at(worst.at());
        return new SideThrust(
                new Force(worst.size()),
                new Force(Math.abs(effort.sliderForce(CrankState.of(piece), worst.at()))),
                new Angle(Math.abs(Math.asin(effort.rodSine(angle)))),
                new Angle(angle - Turns.TURN * Math.floor(angle / Turns.TURN)),
                new Time(piece.start() + worst.at()),
                crank.friction() == null ? null : new Force(crank.friction().coefficient() * worst.size()));
    }

    /** The number behind. */
    Derivation derivation(String axis) {
        return new Derivation(
                axis,
                "N_side",
                "N_side = F·tan(phi)",
                inputs("F", force, "phi", rodAngle, "theta", crankAngle),
                "Khurmi and Gupta, Theory of Machines, ex. 15.7; offset derived",
                peak);
    }
}
