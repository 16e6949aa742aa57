package io.axiswright.engine.stopping;

import io.axiswright.engine.duty.Coasting;

/** How far an axis runs from the instant at which the stop begins to work, as a function of its speed then. */
interface Stopping {

    /** Angle run, there and back, rad. */
    double path(Coasting.Piece piece, double speed);

    /** No speed between these two runs farther than this, rad; the lower first, signed. */
    double bound(Coasting.Piece piece, double low, double high);
}
