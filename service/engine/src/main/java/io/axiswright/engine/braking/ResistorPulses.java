package io.axiswright.engine.braking;

/**
 * Tells the pulses of a braking resistor apart. A pulse is all that goes into the resistor during one run of return, however
 * often the chopper switches in it; runs that follow each other after less time than the earlier has lasted are one pulse,
 * because little cools away meanwhile. No credit is given for what the resistor gives off during a long one. Common practice,
 * no source: a maker's curve of energy over time would allow more.
 */
final class ResistorPulses {

    private double start;
    private double end;
    private double before;
    private double largest;
    private double longest;

    ResistorPulses() {
        clear();
    }

    /** Those of a resistor into which all goes that an endlessly repeated course of power returns. */
    static ResistorPulses ofReturns(BusPower power) {
        var pulses = new ResistorPulses();
        for (int pass = 0; pass < 2; pass++) {
            double burned = 0;
            for (PowerSegment segment : power.segments()) {
                double returned = segment.energy();
                if (returned > 0) {
                    pulses.add(
                            segment.instant(segment.from()), segment.instant(segment.to()), burned, burned + returned);
                    burned += returned;
                }
            }
            pulses.repeat(power.duration(), burned);
        }
        pulses.largest = Math.min(pulses.largest, power.returned());
        return pulses;
    }

    /** Forgets everything. */
    void clear() {
        start = 0;
        end = Double.NEGATIVE_INFINITY;
        before = 0;
        largest = 0;
        longest = 0;
    }

    /** The same course of power begins anew, and the last pulse may go on in it. */
    void repeat(double duration, double burned) {
        start -= duration;
        end -= duration;
        before -= burned;
    }

    /**
     * Energy has gone into the resistor.
     *
     * @param from since when, s
     * @param to until when, s
     * @param burnedBefore energy burned up to then since the course of power began, J
     * @param burned the same with it, J
     */
    void add(double from, double to, double burnedBefore, double burned) {
        if (from - end >= end - start) {
            start = from;
            before = burnedBefore;
        }
        end = to;
        largest = Math.max(largest, burned - before);
        longest = Math.max(longest, end - start);
    }

    /** Energy of the largest pulse so far, J. */
    double largest() {
        return largest;
    }

    /** How long the longest lasted, s. */
    double longest() {
        return longest;
    }
}
