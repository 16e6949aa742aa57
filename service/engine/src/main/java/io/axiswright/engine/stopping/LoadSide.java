package io.axiswright.engine.stopping;

import io.axiswright.engine.duty.Coasting;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Length;

/** Angles of the motor shaft as ways of the load. */
record LoadSide(Coasting coasting) {

    Displacement displacement(double angle) {
        double way = angle * coasting.travel();
        return coasting.rotary() ? new Angle(way) : new Length(way);
    }
}
