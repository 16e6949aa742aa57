package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.finding.Severity;
import io.axiswright.engine.motion.Motion;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Payload;
import io.axiswright.engine.quantity.Time;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Searches for the most an axis can do; every state it looks at is judged by the very limits that choose a drive unit. */
final class ReserveSearch {

    /**
     * The cycles of all axes that ask have no more pieces than this together: a search looks at some 400 cycles, and so many
     * pieces keep a processor busy for some seconds.
     */
    static final int MOST_PIECES = 4000;

    /** Ways of time factors: a tenth a step, a thousandfold in all. */
    private static final int TIME_STEPS = 73;

    private static final double TIME_STEP = Math.pow(1000, 1.0 / TIME_STEPS);

    /** The way of added payloads: from a millionth of a gram (or g·m²), a quarter more a step, to 1e6 kg (or kg·m²). */
    private static final double LEAST_PAYLOAD = 1e-9;

    private static final double MOST_PAYLOAD = 1e6;

    private static final double PAYLOAD_STEP = 1.25;

    /** Payloads that add less than this share to what moves are alike. */
    private static final double ALIKE = 0.01;

    /** The way back from a payload that is too large to none has this many steps. */
    private static final int LESS_STEPS = 64;

    private final Axis axis;
    private final Choice.Judged best;
    private final BrakeStock brakes;
    private final Map<Segment, Motion> motions = new IdentityHashMap<>();

    private ReserveSearch(Axis axis, Choice.Judged best, BrakeStock brakes) {
        this.axis = axis;
        this.best = best;
        HoldingBrake brake = best.trial().brake();
        this.brakes = brake == null ? brakes : new BrakeStock(List.of(brake));
        axis.cycle().segments().forEach(segment -> motions.put(segment, Motion.of(segment)));
    }

    /** How many pieces of motion the cycles of those axes have together that ask for reserves. */
    static int pieces(List<Axis> axes) {
        return axes.stream()
                .filter(axis -> axis.drive().asksReserves())
                .flatMap(axis -> axis.cycle().segments().stream())
                .mapToInt(segment -> Motion.of(segment).stretches().size())
                .sum();
    }

    static Reserves of(Axis axis, Choice.Judged best, BrakeStock brakes) {
        var search = new ReserveSearch(axis, best, brakes);
        return new Reserves(search.time(true), search.time(false), search.payload());
    }

    private TimeReserve time(boolean standstills) {
        boolean stated = segments().stream().anyMatch(TorqueCourse.class::isInstance);
        if (stated || segments().stream().allMatch(this::stands)) {
            return TimeReserve.without(ReserveVerdict.NOT_APPLICABLE);
        }
        HoldingEdge edge = HoldingEdge.of(
                factor -> broken(segment -> slowed(segment, factor, standstills), CycleChange::stated),
                steps(1 / TIME_STEP),
                0,
                steps(TIME_STEP));
        if (edge.limit() == null) {
            return TimeReserve.without(edge.verdict());
        }
        double moving = 0;
        double period = 0;
        for (Segment segment : segments()) {
            double duration = slowed(segment, edge.at(), standstills).duration();
            period += duration;
            moving += stands(segment) ? 0 : duration;
        }
        return new TimeReserve(
                edge.verdict(), edge.at(), new Time(moving), new Time(period), new Frequency(1 / period), edge.limit());
    }

    private PayloadReserve payload() {
        if (segments().stream().allMatch(TorqueCourse.class::isInstance)) {
            return PayloadReserve.without(ReserveVerdict.NOT_APPLICABLE);
        }
        double most = segments().stream().mapToDouble(CycleChange::stated).max().orElse(0);
        double[] more = more();
        HoldingEdge edge = HoldingEdge.of(
                added -> broken(this::motion, segment -> laden(segment, added, most > 0)),
                more,
                alike(more, most > 0),
                less(most));
        if (edge.limit() == null) {
            return PayloadReserve.without(edge.verdict());
        }
        return new PayloadReserve(
                edge.verdict(), payload(edge.at()), payload(Math.max(0, most + edge.at())), edge.limit());
    }

    /**
     * Which of the payloads is the last that adds less than a hundredth to what moves. Torque goes with the payload along a
     * straight line at every instant, so what is highest is so at an end of that little way.
     */
    private int alike(double[] more, boolean onlyLoaded) {
        double moved = inertia(0, onlyLoaded);
        double perPayload = inertia(1, onlyLoaded) - moved;
        int last = 0;
        while (last + 1 < more.length && more[last + 1] * perPayload < ALIKE * moved) {
            last++;
        }
        return perPayload > 0 ? last : 0;
    }

    /** The largest inertia of the load with an added payload. */
    private double inertia(double added, boolean onlyLoaded) {
        var change = new CycleChange(this::motion, segment -> laden(segment, added, onlyLoaded));
        return AxisLoad.of(axis, change).reach().inertia();
    }

    /** The first limit a state breaks. */
    private Optional<DutyLimit> broken(Function<Segment, Motion> moved, ToDoubleFunction<Segment> carried) {
        GearedLoad load = best.trial().way().changed(axis, new CycleChange(moved, carried));
        Trial trial = new Trial(load, best.trial().offer(), axis.drive(), brakes);
        return Stream.of(DutyLimit.values())
                .filter(limit ->
                        limit == DutyLimit.MECHANISM ? overloadsMechanism(load) : trial.breaks(limit, best.kit()))
                .findFirst();
    }

    /** Whether the mechanism or the shaft of the drive unit does not bear it. */
    private boolean overloadsMechanism(GearedLoad way) {
        DriveUnit unit = best.trial().offer().unit();
        double pull = MechanismReport.hardestPull(axis, way);
        ShaftFigures shaft = ShaftFigures.of(way.geared(axis), way.load(), unit, pull);
        return violated(MechanismReport.of(axis, "", way.load(), pull))
                || violated(ShaftChecks.report(axis, "", shaft, unit, way.load().period()));
    }

    private static boolean violated(MechanismReport report) {
        return report.findings().stream().anyMatch(finding -> finding.severity() == Severity.VIOLATION);
    }

    private List<Segment> segments() {
        return axis.cycle().segments();
    }

    private Motion motion(Segment segment) {
        return motions.computeIfAbsent(segment, Motion::of);
    }

    private boolean stands(Segment segment) {
        return motion(segment).travelled() == 0;
    }

    private Motion slowed(Segment segment, double factor, boolean standstills) {
        return standstills || !stands(segment) ? motion(segment).slowed(factor) : motion(segment);
    }

    private static double laden(Segment segment, double added, boolean onlyLoaded) {
        double carried = CycleChange.stated(segment);
        return carried == 0 && onlyLoaded ? 0 : Math.max(0, carried + added);
    }

    private Payload payload(double value) {
        return axis.mechanism().carriesMass() ? new Mass(value) : new Inertia(value);
    }

    private static double[] steps(double step) {
        return IntStream.rangeClosed(0, TIME_STEPS)
                .mapToDouble(k -> Math.pow(step, k))
                .toArray();
    }

    private static double[] more() {
        int steps = (int) Math.ceil(Math.log(MOST_PAYLOAD / LEAST_PAYLOAD) / Math.log(PAYLOAD_STEP));
        return IntStream.rangeClosed(0, steps)
                .mapToDouble(k -> k == 0 ? 0 : Math.min(MOST_PAYLOAD, LEAST_PAYLOAD * Math.pow(PAYLOAD_STEP, k)))
                .toArray();
    }

    private static double[] less(double most) {
        return IntStream.rangeClosed(0, LESS_STEPS)
                .mapToDouble(k -> -most * k / LESS_STEPS)
                .toArray();
    }
}
