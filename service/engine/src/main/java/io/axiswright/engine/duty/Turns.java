package io.axiswright.engine.duty;

/** Angles of what is the same turn after turn. */
final class Turns {

    static final double TURN = 2 * Math.PI;

    private Turns() {}

    /** Where a search from one angle to another may end: after one turn everything has been seen. */
    static double end(double from, double to) {
        return Math.abs(to - from) > TURN ? from + TURN : to;
    }

    /** The same motion, begun in the first turn: angles keep their last digits. */
    static LoadMotion first(LoadMotion motion) {
        double turns = Math.floor(motion.position().at(0) / TURN);
        return motion.moved(-turns * TURN);
    }
}
