package io.axiswright.engine.study;

import io.axiswright.engine.braking.PowerCourse;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.duty.UnitFigures;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.supply.CurrentCourse;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a drive unit draws from the mains over its cycle. */
final class InputCourse {

    private InputCourse() {}

    /**
     * In proportion to what the axis takes from its DC bus while it takes anything; its effective value is that of the duty. Absent
     * where the duty has none.
     */
    static @Nullable CurrentCourse of(AxisDuty duty, DriveUnit unit) {
        UnitFigures figures = duty.unit();
        if (figures == null || duty.course().pieces().isEmpty()) {
            return null;
        }
        List<CurrentCourse.Piece> pieces = new ArrayList<>();
        for (PowerCourse.Piece piece :
                PowerCourse.withLosses(duty.course(), unit).pieces()) {
            Polynomial taken = piece.power().times(-1);
            double length = piece.end() - piece.start();
            double from = 0;
            for (double to : taken.signStretches(0, length)) {
                Polynomial drawn = taken.at((from + to) / 2) > 0 ? taken.shifted(from) : Polynomial.ZERO;
                pieces.add(new CurrentCourse.Piece(piece.start() + to, drawn));
                from = to;
            }
        }
        var course = new CurrentCourse(pieces);
        double rms = course.rms();
        return rms > 0 ? course.times(figures.cycleInputCurrent().si() / rms) : null;
    }
}
