package io.axiswright.engine.braking;

import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.duty.Course;
import io.axiswright.engine.duty.StopCourse;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Time;
import java.util.List;

/** Stopping time and angle of one zone: the axes run on at their speed while the controls react, then decelerate. */
final class ZoneStudy {

    private ZoneStudy() {}

    static ZoneStopping of(StopZone zone, List<BrakingAxis> axes) {
        if (zone.category() == StopCategory.CATEGORY_0) {
            return new ZoneStopping(zone.id(), null, List.of());
        }
        double reaction = zone.reactionTime().si();
        List<ZoneStopping.AxisStopping> turnings = axes.stream()
                .filter(axis -> zone.id().equals(axis.stopZone()))
                .map(axis -> new ZoneStopping.AxisStopping(axis.id(), new Angle(longest(axis, reaction))))
                .toList();
        return new ZoneStopping(
                zone.id(), new Time(reaction + zone.decelerationTime().si()), turnings);
    }

    private static double longest(BrakingAxis axis, double reaction) {
        return axis.stops().stream()
                .map(StopCourse::course)
                .filter(course -> !course.pieces().isEmpty())
                .mapToDouble(course ->
                        reaction * Math.abs(course.pieces().getFirst().speed().at(0))
                                + course.pieces().stream()
                                        .mapToDouble(ZoneStudy::turned)
                                        .sum())
                .max()
                .orElse(0);
    }

    /** The integral of |w| over one piece. */
    private static double turned(Course.Piece piece) {
        Polynomial angle = piece.speed().antiderivative();
        double sum = 0;
        double last = 0;
        for (double reversal : piece.speed().signChanges(0, piece.duration())) {
            sum += Math.abs(angle.at(reversal) - angle.at(last));
            last = reversal;
        }
        return sum + Math.abs(angle.at(piece.duration()) - angle.at(last));
    }
}
