package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;
import java.util.List;

/** The effort of a load that turns with the mechanism's shaft: a torque on it is felt as it is. */
interface TurningEffort extends LoadEffort {

    /** Friction against the motion, N·m. */
    double coulomb();

    /** Friction per speed, N·m·s. */
    double viscous();

    @Override
    default List<ShaftPiece> levers(LoadMotion motion) {
        return List.of(ShaftPiece.of(motion, 1, Polynomial.of(1)));
    }

    @Override
    default double lever(double position) {
        return 1;
    }

    @Override
    default double friction() {
        return coulomb();
    }

    @Override
    default double viscousFriction() {
        return viscous();
    }
}
