package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;
import io.axiswright.engine.numeric.Polynomial;
import java.util.List;

/**
 * What moves and what resists on a mechanism during one segment, as its shaft feels it before any loss in the mechanism. Equal
 * efforts are the same load.
 */
interface LoadEffort {

    /** Whether it changes over the time of the cycle, whatever the motion. */
    default boolean timed() {
        return false;
    }

    /**
     * The same load during one segment of the cycle.
     *
     * @param start when the segment starts in the cycle as stated, s
     * @param stated how long it lasts as stated, s
     * @param actual how long it lasts in fact, s
     */
    default LoadEffort during(double start, double stated, double actual) {
        return this;
    }

    /** The same load, its time counted from a later one on, s. */
    default LoadEffort later(double time) {
        return this;
    }

    /** The load that stays what it was at a time, s. */
    default LoadEffort held(double time) {
        return this;
    }

    /** The torque of a motion, in pieces end to end. */
    List<ShaftPiece> moving(LoadMotion motion);

    /** The torque for each unit of an effort at the load, N·m/N or 1, over a motion, in pieces end to end. */
    default List<ShaftPiece> levers(LoadMotion motion) {
        return Instants.ofShaft(motion, (position, speed, acceleration) -> lever(position));
    }

    /** The torque for each unit of an effort at the load, at a position, N·m/N or 1. */
    double lever(double position);

    /** The torque that keeps the load at rest at a position for a time in s, in pieces end to end. */
    default List<ShaftPiece> resting(double position, double duration) {
        return List.of(ShaftPiece.resting(0, duration, position, Polynomial.of(holding(position))));
    }

    /**
     * The torque over a whole range of motions at once, of a load that stays what it was at a time, as a search needs it that must
     * not miss any.
     *
     * @param time that time, s
     * @param position position of the load, m or rad
     * @param speed its speed, m/s or rad/s
     * @param acceleration its acceleration, m/s² or rad/s²
     * @param direction sign of the speed
     */
    ShaftRange range(Enclosure time, Enclosure position, Enclosure speed, Enclosure acceleration, double direction);

    /**
     * The torque that keeps the load at rest at a position, N·m. Friction would help but wears, dries and shakes loose: it is
     * not counted on.
     */
    double holding(double position);

    /** The largest torque a brake may have to hold between two positions, N·m: the process may have let go. */
    double largestHolding(double from, double to);

    /** Friction at the mechanism's shaft that keeps a load at rest at rest, N·m; 0 where none is known that is always there. */
    default double friction() {
        return 0;
    }

    /** Friction at that shaft per its speed, N·m·s; 0 where none is known that is always there. */
    default double viscousFriction() {
        return 0;
    }

    /** The largest inertia of the load between two positions, as the shaft feels it, kg·m². */
    double largestInertia(double from, double to);

    /** Whether weight moves it if nothing holds it. */
    boolean falls();

    /** Whether its torque changes so much along the way that a course has many pieces. */
    default boolean uneven() {
        return true;
    }
}
