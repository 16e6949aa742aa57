package io.axiswright.engine.harmonic;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Follows a bridge from one pair of diodes to the next until it repeats. Between two changes of its diodes everything is a sum
 * of sines, so only the instants of the changes are searched for. All pairs are alike: one turn, from the instant from which a
 * pair conducts alone to that of the next pair, is the whole.
 */
final class BridgeCycle {

    private static final int MOST_CHANGES = 32;

    /** Stretches looked through for a change of diodes, for each turn and for each radian of the natural oscillation. */
    private static final int LOOKS = 48;

    private final Bridge bridge;
    private final List<Wave> pulse = new ArrayList<>();
    private double angle;
    private double voltage;
    private double current;
    private final double load;
    private double voltageIntegral;
    private boolean starting;
    private boolean beyond;

    private BridgeCycle(Bridge bridge, double[] state) {
        this.bridge = bridge;
        this.angle = state[0];
        this.voltage = state[1];
        this.current = state[2];
        this.load = state[3];
    }

    /**
     * The current of one pair of diodes over the period, in stretches that add up; nothing for a network so weak that more than
     * two pairs would conduct at once, or where no cycle repeats.
     */
    static Optional<List<Wave>> pulse(Bridge bridge) {
        double half = bridge.step() / 2;
        double voltage = bridge.peakVoltage() * Math.sin(half) / half;
        double load = bridge.power() / voltage;
        double[] start = {Math.PI / 2 - half, 0.99 * voltage, bridge.linkReactance() > 0 ? load : 0, load};
        double[] scale = {1, voltage, load, load};
        return FixedPoint.of(state -> new BridgeCycle(bridge, state).next(), start, scale)
                .map(state -> {
                    var last = new BridgeCycle(bridge, state);
                    last.turn();
                    return List.copyOf(last.pulse);
                });
    }

    /** The state at the beginning of the next pair's turn: angle, voltage, current, and the load that takes the power. */
    private double[] next() {
        turn();
        return beyond
                ? new double[] {Double.NaN, Double.NaN, Double.NaN, Double.NaN}
                : new double[] {angle, voltage, current, bridge.power() * bridge.step() / voltageIntegral};
    }

    private void turn() {
        for (int changes = 0; changes < MOST_CHANGES; changes++) {
            if (current > 0 || starting || source(angle) > voltage) {
                starting = false;
                if (conduct()) {
                    share();
                    return;
                }
            } else if (pause()) {
                return;
            }
        }
        beyond = true;
    }

    private double source(double phi) {
        return bridge.peakVoltage() * Math.sin(phi);
    }

    /** One pair conducts, until its current ends (false) or the next pair joins in (true). */
    private boolean conduct() {
        double reactance = bridge.pairReactance();
        var course =
                new Oscillation(reactance, bridge.susceptance(), bridge.peakVoltage(), angle, voltage, current, load);
        Wave wave = course.current(2 * bridge.step());
        double start = angle;
        DoubleUnaryOperator ends = x -> x == 0 ? 1 : wave.at(x);
        DoubleUnaryOperator joins = x -> -(bridge.peakVoltage() * Math.sin(start + x - bridge.handOver())
                + bridge.lineReactance() * (source(start + x) - course.voltage(x)) / reactance);
        double ending = firstFall(ends, wave);
        double joining = joins.applyAsDouble(0) <= 0 ? 0 : firstFall(joins, wave);
        double length = Math.min(ending, joining);
        if (!Double.isFinite(length)) {
            beyond = true;
            return true;
        }
        pulse.add(wave.cut(length));
        advance(course, wave.cut(length), bridge.peakVoltage(), 0, reactance);
        if (ending <= joining) {
            current = 0;
            return false;
        }
        return true;
    }

    /** The next pair takes the current over; the turn ends when it has it all. */
    private void share() {
        if (beyond) {
            return;
        }
        double reactance = bridge.sharedReactance();
        double start = angle;
        double before = current;
        var course = new Oscillation(
                reactance,
                bridge.susceptance(),
                bridge.sharedPeak(),
                start - bridge.sharedLag(),
                voltage,
                before,
                load);
        Wave whole = course.current(bridge.step()).from(start);
        // j = ((i − i0) + V/X (cos(φ0 − s) − cos(φ − s)))/2, s where the voltage between the lines turns
        double most = bridge.peakVoltage() / bridge.lineReactance();
        double lag = start - bridge.handOver();
        Wave taken = whole.plus(new Wave(
                        start,
                        whole.length(),
                        most * Math.cos(lag) - before,
                        -most * Math.cos(lag),
                        most * Math.sin(lag),
                        0,
                        0,
                        whole.nu()))
                .times(0.5);
        Wave left = whole.plus(taken.times(-1));
        double length = firstFall(x -> x == 0 ? 1 : left.at(x), whole);
        if (!Double.isFinite(length)) {
            beyond = true;
            return;
        }
        pulse.add(left.cut(length));
        pulse.add(taken.cut(length).from(start - bridge.step()));
        advance(course, whole.cut(length), bridge.sharedPeak(), bridge.sharedLag(), reactance);
        angle -= bridge.step();
    }

    /** Nothing conducts; true once the voltage of the next pair has risen to that of the capacitor. */
    private boolean pause() {
        double slope = -load / bridge.susceptance();
        double start = angle;
        double before = voltage;
        Wave looks = new Wave(start, bridge.step(), 0, 0, 0, 0, 0, 0);
        double again = firstFall(x -> x == 0 ? 1 : before + slope * x - source(start + x), looks);
        double next = firstFall(
                x -> x == 0 && source(start - bridge.step()) <= before
                        ? 1
                        : before + slope * x - source(start + x - bridge.step()),
                looks);
        // a capacitor above the peak of the mains waits for more than a turn
        double length = Math.min(Math.min(again, next), bridge.step());
        voltageIntegral += length * (before + slope * length / 2);
        voltage += slope * length;
        angle += length;
        starting = length < bridge.step();
        if (!starting || next <= again) {
            angle -= bridge.step();
            return true;
        }
        return false;
    }

    /** Goes to the end of a stretch; the voltage of the capacitor is that of the source less that of the reactance. */
    private void advance(Oscillation course, Wave wave, double peak, double lag, double reactance) {
        double x = wave.length();
        double after = wave.at(x);
        voltageIntegral += peak * (Math.cos(angle - lag) - Math.cos(angle + x - lag)) - reactance * (after - current);
        voltage = course.voltage(x);
        current = after;
        angle += x;
    }

    /** The first instant at which a course that starts above 0 falls to it; infinite if it does not within the stretch. */
    private double firstFall(DoubleUnaryOperator course, Wave over) {
        int looks = (int) Math.ceil(over.length() / bridge.step() * LOOKS + over.length() * over.nu() * 8);
        double left = 0;
        if (course.applyAsDouble(0) <= 0) {
            return 0;
        }
        for (int k = 1; k <= looks; k++) {
            double right = over.length() * k / looks;
            if (course.applyAsDouble(right) <= 0) {
                return bisect(course, left, right);
            }
            left = right;
        }
        return Double.POSITIVE_INFINITY;
    }

    private static double bisect(DoubleUnaryOperator course, double above, double below) {
        double left = above;
        double right = below;
        for (int k = 0; k < 60 && left < right; k++) {
            double middle = (left + right) / 2;
            if (course.applyAsDouble(middle) <= 0) {
                right = middle;
            } else {
                left = middle;
            }
        }
        return right;
    }
}
