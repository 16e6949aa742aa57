package io.axiswright.engine.braking;

import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** Power of several axes over their common cycle, repeated for ever, seen from any instant of it. */
final class CyclePower {

    private static final int BEND = 2;

    private record Piece(double start, double end, double[] power) {

        double length() {
            return end - start;
        }

        /** The highest power, W. */
        double highest() {
            double highest = Math.max(power[0], Horner.at(power, length()));
            for (double turn : SignChanges.of(Horner.derivative(power), length())) {
                highest = Math.max(highest, Horner.at(power, turn));
            }
            return highest;
        }

        /** An upper bound of the magnitude of a derivative. */
        double largest(int order) {
            double[] derivative = power;
            for (int k = 0; k < order; k++) {
                derivative = Horner.derivative(derivative);
            }
            return Horner.largestMagnitude(derivative, 0, length());
        }
    }

    private final List<Piece> pieces = new ArrayList<>();
    private final double period;
    private final double[] jumps;
    private final double[] kinks;
    private final double[] bends;
    private final double[] peaks;

    private CyclePower(BusPower power) {
        period = power.duration();
        PowerSegment last = null;
        for (PowerSegment segment : power.segments()) {
            // the cuts where the power or its slope turns are not needed here
            if (last != null && segment.continues(last)) {
                Piece first = pieces.removeLast();
                pieces.add(new Piece(first.start(), segment.instant(segment.to()), first.power()));
            } else {
                pieces.add(new Piece(
                        segment.instant(segment.from()),
                        segment.instant(segment.to()),
                        segment.powerFrom(segment.from())));
            }
            last = segment;
        }
        int count = pieces.size();
        jumps = new double[count];
        kinks = new double[count];
        bends = new double[count];
        peaks = new double[count];
        for (int k = 0; k < count; k++) {
            Piece before = pieces.get((k + count - 1) % count);
            Piece after = pieces.get(k);
            jumps[k] = after.power()[0] - Horner.at(before.power(), before.length());
            kinks[k] = Math.abs(Horner.derivative(after.power())[0]
                    - Horner.at(Horner.derivative(before.power()), before.length()));
            bends[k] = after.largest(BEND);
            peaks[k] = after.highest();
        }
    }

    /** The sum of some axes' powers over a time that holds whole cycles of each. */
    static CyclePower of(List<PowerCourse> courses, double duration) {
        return new CyclePower(courses.isEmpty() ? new BusPower(List.of(), 0) : BusPower.repeating(courses, duration));
    }

    /** How long the common cycle lasts, s. */
    double period() {
        return period;
    }

    boolean isEmpty() {
        return pieces.isEmpty();
    }

    /** The instants at which pieces start, s. */
    DoubleStream instants() {
        return pieces.stream().mapToDouble(Piece::start);
    }

    /** The power from an instant on. */
    PowerCourse from(double instant, double beside, double length) {
        List<PowerCourse.Piece> cut = new ArrayList<>();
        double turn = Math.floor(beside / period) * period;
        int k = pieceAt(beside - turn);
        double time = 0;
        while (time < length) {
            Piece piece = pieces.get(k);
            double skipped = Math.max(0, instant + time - turn - piece.start());
            double end = Math.min(length, turn + piece.end() - instant);
            if (end > time) {
                double[] power = piece.power().clone();
                Horner.shift(power, skipped);
                cut.add(new PowerCourse.Piece(time, end, Polynomial.of(power)));
                time = end;
            }
            k++;
            if (k == pieces.size()) {
                k = 0;
                turn += period;
            }
        }
        return new PowerCourse(cut, length);
    }

    /**
     * The most by which the energy of any part of a window that begins between two instants with no piece's start between
     * them exceeds what lies between the energies of the same part of the windows that begin at these two, J. A jump of the
     * power that passes through such a part at one of its ends adds at most a quarter of jump times width; inside the part,
     * what it adds it also takes away again but for the resistor's decay.
     */
    double bend(double from, double to, double length, double decay) {
        double width = to - from;
        double up = 0;
        double down = 0;
        double all = 0;
        double sum = 0;
        double closest = Double.POSITIVE_INFINITY;
        double lastJump = Double.NEGATIVE_INFINITY;
        double turn = Math.floor((from + to) / 2 / period) * period;
        int k = pieceAt((from + to) / 2 - turn);
        double reached = from;
        boolean first = true;
        while (turn + pieces.get(k).start() < to + length) {
            Piece piece = pieces.get(k);
            if (!first) {
                double jump = jumps[k];
                if (jump != 0) {
                    closest = Math.min(closest, turn + piece.start() - lastJump);
                    lastJump = turn + piece.start();
                }
                up = Math.max(up, jump);
                down = Math.max(down, -jump);
                all += Math.abs(jump);
                sum += kinks[k] * width * width / 4;
            }
            double end = Math.min(to + length, turn + piece.end());
            sum += bends[k] * (end - reached) * width * width / 8;
            reached = end;
            first = false;
            k++;
            if (k == pieces.size()) {
                k = 0;
                turn += period;
            }
        }
        double ends = closest > width ? up + down : all;
        return sum + width / 4 * (ends + all * decay * width);
    }

    /** An upper bound of the power between two instants, W. */
    double highest(double from, double to) {
        double highest = Double.NEGATIVE_INFINITY;
        double turn = Math.floor(from / period) * period;
        int k = pieceAt(from - turn);
        while (turn + pieces.get(k).start() < to && turn < from + 2 * period) {
            highest = Math.max(highest, peaks[k]);
            k++;
            if (k == pieces.size()) {
                k = 0;
                turn += period;
            }
        }
        return highest;
    }

    private int pieceAt(double phase) {
        int low = 0;
        int high = pieces.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (pieces.get(middle).start() <= phase) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }
}
