package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;
import org.jspecify.annotations.Nullable;

/**
 * What makes one stop harder than another: the highest share it uses of a torque–speed curve, or its highest torque.
 *
 * @param available the curve; the torque itself counts if absent
 */
record StopMeasure(@Nullable TorqueCurve available) {

    static final StopMeasure TORQUE = new StopMeasure(null);

    /** Of one stop; not negative. */
    double of(Course course) {
        return available == null
                ? highest(course)
                : Envelope.worst(course, available).use();
    }

    /** The highest torque of a course, N·m. */
    static double highest(Course course) {
        double highest = 0;
        for (Course.Piece piece : course.pieces()) {
            highest = Math.max(highest, piece.torque().largestMagnitude(0, piece.duration()));
        }
        return highest;
    }

    /** Of a range of torques at a range of speeds; where there may be no torque left, the highest of uses. */
    Enclosure of(Enclosure torque, Enclosure speed) {
        Enclosure size = torque.magnitude();
        if (available == null) {
            return size;
        }
        Enclosure there = available.over(speed.magnitude());
        return there.low() * DutyLimit.HIGHEST_USE <= size.high()
                ? Enclosure.between(0, DutyLimit.use(size.high(), there.low()))
                : size.times(there.inverse());
    }
}
