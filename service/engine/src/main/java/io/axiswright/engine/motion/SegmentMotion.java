package io.axiswright.engine.motion;

import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.Jog;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.PositionCourse;
import io.axiswright.engine.design.Ramp;
import io.axiswright.engine.design.Run;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.SpeedCourse;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.finding.Fault;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The one place that knows every segment. */
final class SegmentMotion {

    private SegmentMotion() {}

    /** The motion of a segment; absent, with its faults added, if it has none. */
    static @Nullable Motion of(Segment segment, String pointer, List<Fault> faults) {
        return switch (segment) {
            case Move move -> MoveMotion.of(move, pointer, faults);
            case Dwell dwell -> Motion.rest(dwell.duration().si());
            case Run run -> new RampMotion(pointer, faults).of(run);
            case Ramp ramp -> new RampMotion(pointer, faults).of(ramp);
            case Jog jog -> new RampMotion(pointer, faults).of(jog);
            case PositionCourse course -> CourseMotion.of(course, pointer, faults);
            case SpeedCourse course -> CourseMotion.of(course, pointer, faults);
            case TorqueCourse course -> CourseMotion.of(course, pointer, faults);
        };
    }
}
