package io.axiswright.engine.braking;

/**
 * Cycles that repeat together: run from a cold bus at the rectifier's voltage until the state at the start of a cycle
 * repeats.
 *
 * <p>Without a braking unit the second cycle repeats the first, or the bus rises by the same energy every cycle; then whole
 * cycles are passed over up to the one that reaches the trip voltage. With one, the chopper's hysteresis may never fall into
 * step with the cycle; after {@value #MOST_CYCLES} cycles the worst of them is the answer, and says so.
 *
 * @param basis whether the duration is one period or a common multiple
 * @param power power returned over that duration
 */
record SteadyCycle(CycleBasis basis, BusPower power) implements CycleLoad {

    private static final int MOST_CYCLES = 64;
    private static final double REPEATS = 1e-12;

    @Override
    public CycleOutcome on(Bus bus, Chopper chopper) {
        var simulation = new BusSimulation(bus, chopper);
        double returned = power.returned();
        double drawn = power.drawn();
        double tolerance = REPEATS * (bus.floorEnergy() + returned + drawn);
        BusState state = new BusState(bus.floorEnergy(), false, 0);
        BusTrace trace = simulation.run(power, state);
        BusTrace worst = trace;
        int cycles = 1;
        while (!repeats(trace, tolerance) && Double.isNaN(trace.tripInstant()) && cycles < MOST_CYCLES) {
            state = new BusState(nextStart(bus, chopper, trace), trace.end().chopping(), 0);
            trace = simulation.run(power, state);
            worst = trace.peakEnergy() > worst.peakEnergy() ? trace : worst;
            cycles++;
        }
        boolean settled = cycles < MOST_CYCLES || repeats(trace, tolerance);
        BusState start = trace.start().withRise(startRise(trace, chopper));
        double peakRise = start.rise() == 0 ? 0 : simulation.run(power, start).peakRise();
        double pulse = start.rise() == 0 ? 0 : simulation.pulseRepeating(power);
        CaseOutcome outcome = new CaseOutcome(
                CaseKind.CYCLE,
                null,
                null,
                power.duration(),
                trace.start().energy(),
                trace.end().energy(),
                worst.peakEnergy(),
                worst.peakInstant(),
                trace.tripInstant(),
                returned,
                drawn,
                trace.supplied(),
                trace.burned(),
                pulse,
                peakRise,
                power.peak(),
                worst,
                null,
                new Replay(power, start, chopper));
        return new CycleOutcome(
                settled ? basis : CycleBasis.UNSETTLED,
                outcome,
                new CycleOutcome.Settling(
                        cycles, Math.abs(trace.end().energy() - trace.start().energy())));
    }

    private static boolean repeats(BusTrace trace, double tolerance) {
        return Math.abs(trace.end().energy() - trace.start().energy()) <= tolerance
                && trace.end().chopping() == trace.start().chopping();
    }

    private static double nextStart(Bus bus, Chopper chopper, BusTrace trace) {
        double end = trace.end().energy();
        if (chopper.present() || trace.supplied() > 0) {
            return end;
        }
        double gain = end - trace.start().energy();
        double cycles = Math.floor((bus.tripEnergy() - trace.peakEnergy()) / gain);
        return gain > 0 && cycles > 1 ? end + (cycles - 1) * gain : end;
    }

    /** The resistor's temperature rise is linear in its heat: its periodic start value follows from one cycle begun cold. */
    private double startRise(BusTrace cold, Chopper chopper) {
        return chopper.present() ? cold.end().rise() / -Math.expm1(-power.duration() / chopper.coolingTime()) : 0;
    }
}
