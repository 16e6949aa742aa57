package io.axiswright.engine.braking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Power returned to one DC bus by all its axes together, cut at every breakpoint of every axis and wherever it or its slope
 * changes sign.
 *
 * @param segments the stretches, end to end
 * @param duration how long it lasts, s
 */
record BusPower(List<PowerSegment> segments, double duration) {

    /** Breakpoints nearer to each other than this share of the whole duration are one. */
    private static final double COINCIDENT = 1e-12;

    /** Axes that stop together; each returns nothing once it has come to rest. */
    static BusPower once(List<PowerCourse> courses) {
        if (courses.size() == 1) {
            return alone(courses.getFirst());
        }
        double duration =
                courses.stream().mapToDouble(PowerCourse::duration).max().orElse(0);
        return sum(courses, duration, false, 0);
    }

    /** Axes that repeat their cycles, from the start of each, over a duration. */
    static BusPower repeating(List<PowerCourse> courses, double duration) {
        return sum(courses, duration, true, 0);
    }

    /** One axis that repeats its cycle while a constant power in W is taken away. */
    static BusPower drained(PowerCourse course, double drain) {
        return sum(List.of(course), course.duration(), true, drain);
    }

    /** Nothing to be added up: the course's own pieces are those of the bus. Most buses are of one axis. */
    private static BusPower alone(PowerCourse course) {
        List<PowerSegment> segments = new ArrayList<>(2 * course.pieces().size());
        for (PowerCourse.Piece piece : course.pieces()) {
            cut(piece.start(), piece.end() - piece.start(), Horner.coefficients(piece.power()), segments);
        }
        return new BusPower(segments, course.duration());
    }

    private static BusPower sum(List<PowerCourse> courses, double duration, boolean repeat, double drain) {
        CourseCursor[] cursors = new CourseCursor[courses.size()];
        int longest = 1;
        for (int k = 0; k < cursors.length; k++) {
            cursors[k] = new CourseCursor(courses.get(k), repeat);
            longest = Math.max(longest, courses.get(k).coefficients());
        }
        double[] breaks = breakpoints(cursors, duration);
        List<PowerSegment> segments = new ArrayList<>(2 * breaks.length);
        for (int k = 0; k + 1 < breaks.length; k++) {
            double[] power = new double[longest];
            power[0] = -drain;
            double middle = (breaks[k] + breaks[k + 1]) / 2;
            for (CourseCursor cursor : cursors) {
                cursor.addTo(power, breaks[k], middle);
            }
            cut(breaks[k], breaks[k + 1] - breaks[k], trimmed(power), segments);
        }
        return new BusPower(segments, duration);
    }

    private static double[] breakpoints(CourseCursor[] cursors, double duration) {
        int all = 0;
        for (CourseCursor cursor : cursors) {
            all += cursor.breakpoints(duration);
        }
        double[] instants = new double[all];
        int filled = 0;
        for (CourseCursor cursor : cursors) {
            filled = cursor.breakpoints(duration, instants, filled);
        }
        Arrays.sort(instants);
        double[] kept = new double[all + 2];
        int count = 1; // the first breakpoint is 0
        double nearest = COINCIDENT * duration;
        for (double instant : instants) {
            if (instant - kept[count - 1] > nearest && instant < duration - nearest) {
                kept[count++] = instant;
            }
        }
        kept[count++] = duration;
        return duration > 0 ? Arrays.copyOf(kept, count) : new double[0];
    }

    private static void cut(double origin, double length, double[] power, List<PowerSegment> segments) {
        double[] energy = Horner.antiderivative(power);
        double from = 0;
        for (double to : SignChanges.ofValueAndSlope(power, length)) {
            if (to > from) {
                segments.add(new PowerSegment(origin, from, to, power, energy));
                from = to;
            }
        }
        segments.add(new PowerSegment(origin, from, length, power, energy));
    }

    private static double[] trimmed(double[] power) {
        int length = power.length;
        while (length > 1 && power[length - 1] == 0) {
            length--;
        }
        return length == power.length ? power : Arrays.copyOf(power, length);
    }

    /** Energy returned, the energy taken at other times not deducted, J. */
    double returned() {
        double sum = 0;
        for (PowerSegment segment : segments) {
            sum += Math.max(0, segment.energy());
        }
        return sum;
    }

    /** Energy taken from the bus, J; not negative. */
    double drawn() {
        double sum = 0;
        for (PowerSegment segment : segments) {
            sum += Math.max(0, -segment.energy());
        }
        return sum;
    }

    /** Highest power returned at any instant, W; 0 if none. */
    double peak() {
        double peak = 0;
        for (PowerSegment segment : segments) {
            peak = Math.max(peak, Math.max(segment.slope(segment.from()), segment.slope(segment.to())));
        }
        return peak;
    }

    /** The most energy returned, net, from any instant to any later one, J; 0 if none. */
    double largestPart() {
        double best = 0;
        double running = 0;
        for (PowerSegment segment : segments) {
            running = Math.max(0, running + segment.energy());
            best = Math.max(best, running);
        }
        return best;
    }

    /** The most energy returned, net, from the start to any later instant, J; 0 if none. */
    double largestStart() {
        double best = 0;
        double running = 0;
        for (PowerSegment segment : segments) {
            running += segment.energy();
            best = Math.max(best, running);
        }
        return best;
    }

    /** Where the most returning window of the endlessly repeated course begins and ends, s. */
    double[] largestWindowEnds() {
        double best = 0;
        double running = 0;
        double begin = 0;
        double[] ends = {0, 0};
        for (int pass = 0; pass < 2; pass++) {
            for (PowerSegment segment : segments) {
                if (running <= 0) {
                    running = 0;
                    begin = segment.instant(segment.from());
                }
                running += segment.energy();
                if (running > best) {
                    best = running;
                    ends = new double[] {begin, segment.instant(segment.to())};
                }
            }
        }
        return ends;
    }

    /** The same power less a constant one in W. */
    BusPower less(double drain) {
        List<PowerSegment> drained = new ArrayList<>();
        for (PowerSegment segment : segments) {
            double[] power = segment.powerFrom(segment.from());
            power[0] -= drain;
            cut(segment.instant(segment.from()), segment.to() - segment.from(), power, drained);
        }
        return new BusPower(drained, duration);
    }

    /**
     * The most energy returned, net, in any window of the endlessly repeated course, J. Infinite if a whole cycle returns
     * more than it takes. Energy is monotone within a segment, so the best window begins and ends at segment ends, and if no
     * cycle gains it is shorter than one cycle: one pass over two cycles finds it.
     */
    double largestWindow() {
        double net = 0;
        for (PowerSegment segment : segments) {
            net += segment.energy();
        }
        if (net > 1e-12 * (returned() + drawn())) {
            return Double.POSITIVE_INFINITY;
        }
        double best = 0;
        double running = 0;
        for (int pass = 0; pass < 2; pass++) {
            for (PowerSegment segment : segments) {
                running = Math.max(0, running + segment.energy());
                best = Math.max(best, running);
            }
        }
        return best;
    }
}
