package io.axiswright.engine.motion;

import io.axiswright.engine.design.PositionCourse;
import io.axiswright.engine.design.PositionPoint;
import io.axiswright.engine.design.SpeedCourse;
import io.axiswright.engine.design.SpeedPoint;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.design.TorquePoint;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.Wording;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Courses given by points. */
final class CourseMotion {

    private CourseMotion() {}

    static @Nullable Motion of(PositionCourse course, String pointer, List<Fault> faults) {
        List<Time> times = course.points().stream().map(PositionPoint::time).toList();
        if (!rising(times, pointer, faults)) {
            return null;
        }
        double[] positions =
                course.points().stream().mapToDouble(p -> p.position().si()).toArray();
        List<Polynomial> speeds = Spline.speeds(
                course.interpolation(), si(times), positions, si(course.startSpeed()), si(course.endSpeed()));
        List<Motion.Stretch> stretches = new ArrayList<>();
        for (int k = 0; k < speeds.size(); k++) {
            stretches.add(stretch(times, k, speeds.get(k), null));
        }
        return Motion.of(stretches);
    }

    static @Nullable Motion of(SpeedCourse course, String pointer, List<Fault> faults) {
        List<Time> times = course.points().stream().map(SpeedPoint::time).toList();
        if (!rising(times, pointer, faults)) {
            return null;
        }
        double[] speeds =
                course.points().stream().mapToDouble(p -> p.speed().si()).toArray();
        List<Motion.Stretch> stretches = new ArrayList<>();
        for (int k = 1; k < speeds.length; k++) {
            stretches.add(stretch(times, k - 1, line(times, speeds, k), null));
        }
        return Motion.of(stretches);
    }

    static @Nullable Motion of(TorqueCourse course, String pointer, List<Fault> faults) {
        List<Time> times = course.points().stream().map(TorquePoint::time).toList();
        if (!rising(times, pointer, faults)) {
            return null;
        }
        double[] speeds =
                course.points().stream().mapToDouble(p -> p.speed().si()).toArray();
        double[] efforts =
                course.points().stream().mapToDouble(p -> p.effort().si()).toArray();
        List<Motion.Stretch> stretches = new ArrayList<>();
        for (int k = 1; k < speeds.length; k++) {
            stretches.add(stretch(times, k - 1, line(times, speeds, k), line(times, efforts, k)));
        }
        return Motion.of(stretches);
    }

    private static boolean rising(List<Time> times, String pointer, List<Fault> faults) {
        int before = faults.size();
        for (int k = 1; k < times.size(); k++) {
            if (times.get(k).si() <= times.get(k - 1).si()) {
                faults.add(new Fault(
                        pointer + "/points/" + k + "/time",
                        FaultCode.INCONSISTENT,
                        Wording.of(times.get(k)) + " follows " + Wording.of(times.get(k - 1)),
                        "times that rise from point to point"));
            }
        }
        return faults.size() == before;
    }

    private static Motion.Stretch stretch(List<Time> times, int k, Polynomial speed, @Nullable Polynomial effort) {
        double start = times.get(k).si() - times.getFirst().si();
        return new Motion.Stretch(start, length(times, k), speed, 0, effort);
    }

    private static double length(List<Time> times, int k) {
        return times.get(k + 1).si() - times.get(k).si();
    }

    private static Polynomial line(List<Time> times, double[] values, int k) {
        return Polynomial.of(values[k - 1], (values[k] - values[k - 1]) / length(times, k - 1));
    }

    private static double[] si(List<Time> times) {
        return times.stream().mapToDouble(Time::si).toArray();
    }

    private static double si(@Nullable Quantity quantity) {
        return quantity == null ? 0 : quantity.si();
    }
}
