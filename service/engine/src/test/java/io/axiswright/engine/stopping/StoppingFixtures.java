package io.axiswright.engine.stopping;

import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.design.Detection;
import io.axiswright.engine.design.Safeguard;
import io.axiswright.engine.design.SafeguardStandard;
import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.duty.CoastLoad;
import io.axiswright.engine.duty.Coasting;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.*;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Small axes with round numbers. */
final class StoppingFixtures {

    private StoppingFixtures() {}

    /** A load without losses in the transmission, everything on one shaft. */
    static CoastLoad load(double inertia, double weight, double friction, double viscous) {
        return new CoastLoad(0, weight, friction, viscous, List.of(new CoastLoad.Link(1, 1, 1, 0, 0)), inertia);
    }

    /** Speeds up, runs, slows down, dwells: a trapezoid of a given top speed, rad/s. */
    static Coasting shuttle(CoastLoad load, double speed, double ramp, double run, double dwell, boolean gravity) {
        return new Coasting(
                false,
                0.01,
                gravity,
                true,
                List.of(
                        piece(0, ramp, Polynomial.of(0, speed / ramp), load),
                        piece(ramp, run, Polynomial.of(speed), load),
                        piece(ramp + run, ramp, Polynomial.of(speed, -speed / ramp), load),
                        piece(2 * ramp + run, dwell, Polynomial.ZERO, load)));
    }

    static Coasting.Piece piece(double start, double duration, Polynomial speed, CoastLoad... loads) {
        return new Coasting.Piece(start, duration, speed, false, List.of(loads));
    }

    static HoldingBrake brake(double torque, double delay, @Nullable Double share, @Nullable Double energy) {
        return new HoldingBrake(
                "brake",
                "invented",
                null,
                List.of(),
                "80",
                new Torque(torque),
                new Inertia(0),
                new Power(12),
                new Power(12),
                new Voltage(20),
                new Time(0.05),
                new Time(delay),
                share,
                energy == null ? null : new Energy(energy));
    }

    static StoppingAxis axis(Coasting coasting, @Nullable HoldingBrake brake) {
        return new StoppingAxis(0, "z", "zone", coasting, brake, null, null);
    }

    static StopZone zone(StopCategory category, double reaction, double deceleration, Safeguard... safeguards) {
        return new StopZone("zone", category, new Time(reaction), new Time(deceleration), null, List.of(safeguards));
    }

    static Safeguard safeguard(
            SafeguardStandard standard, Detection detection, double response, @Nullable Double distance) {
        return new Safeguard(
                "guard",
                standard,
                detection,
                new Time(response),
                null,
                null,
                null,
                distance == null ? null : new Length(distance));
    }

    static StoppingResult study(StopZone zone, StoppingAxis... axes) {
        return new StoppingStudy().study(new StoppingRequest(List.of(axes), List.of(zone)));
    }
}
