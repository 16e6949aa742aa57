package io.axiswright.engine.braking;

import io.axiswright.engine.numeric.WorstInstant;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/** One stop on one bus as a function of the instant at which it begins. */
final class StopOnBus {

    private final StopLoad load;
    private final StopScene scene;
    private final Bus bus;
    private final Chopper chopper;
    private final Chopper switching;
    private final StartEnergies starts;
    private final double rise;

    /**
     * A stop on a bus.
     *
     * @param switching the chopper as it is, or none; all but the course drawn is that of one that switches infinitely fast
     * @param starts energy of the bus over the cycle
     * @param rise highest temperature of the resistor over ambient in the cycle, K
     */
    StopOnBus(StopLoad load, Bus bus, Chopper switching, StartEnergies starts, double rise) {
        this.load = load;
        this.scene = load.scene();
        this.bus = bus;
        this.switching = switching;
        this.chopper = switching.regulating();
        this.starts = starts;
        this.rise = rise;
    }

    /** Instants between which everything changes smoothly, ascending, s. */
    double[] cuts() {
        double[] scenes = scene.cuts();
        return WorstInstant.tidy(
                DoubleStream.concat(DoubleStream.of(scenes), DoubleStream.of(starts.cuts()))
                        .toArray(),
                scenes[scenes.length - 1]);
    }

    /** What the bus never rises above, J; infinite where the axes might return more than the resistor takes. */
    double ceiling() {
        double[] cuts = scene.cuts();
        for (int k = 0; k + 1 < cuts.length; k++) {
            if (scene.powerBound(cuts[k], cuts[k + 1]) > taken()) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return Math.max(starts.highest(), chopper.onEnergy());
    }

    /** What the resistor takes at switch-on, W. */
    private double taken() {
        return chopper.present() ? chopper.decay() * chopper.onEnergy() : 0;
    }

    /** The highest energy of the bus. */
    WorstInstant.Bending voltage() {
        double taken = taken();
        return new Measure() {
            @Override
            public double value(double instant, double beside) {
                return run(instant, beside).peakEnergy();
            }

            @Override
            public double bend(double from, double to) {
                return starts.bend(from, to) + scene.bend(from, to, chopper.decay());
            }

            /** Where the axes cannot return more than the resistor takes, the bus never rises above its start. */
            @Override
            public double closerBend(double from, double to) {
                return scene.powerBound(from, to) <= taken ? starts.bend(from, to) : bend(from, to);
            }
        };
    }

    /** The most energy returned, net, in any part of the stop. */
    WorstInstant.Bending energy() {
        return new Measure() {
            @Override
            public double value(double instant, double beside) {
                return scene.power(instant, beside).largestPart();
            }

            @Override
            public double bend(double from, double to) {
                return scene.bendOver(0, from, to);
            }
        };
    }

    private BusTrace run(double instant, double beside) {
        return new BusSimulation(bus, chopper).run(scene.power(instant, beside), start(instant, beside));
    }

    private BusState start(double instant, double beside) {
        double energy = starts.at(instant, beside);
        return new BusState(energy, energy > chopper.onEnergy(), rise);
    }

    /** Something of the stop that jumps where the stop does. */
    private abstract class Measure implements WorstInstant.Bending {

        @Override
        public boolean jumps(double instant) {
            return scene.jumps(instant);
        }
    }

    /** The stop begun at a worst instant; the bound is that of the energy of the bus, NaN if it was not sought. */
    CaseOutcome outcome(@Nullable StopCriterion criterion, WorstInstant worst, double bound) {
        BusPower power = scene.power(worst.instant(), worst.beside());
        BusState start = start(worst.instant(), worst.beside());
        BusTrace trace = new BusSimulation(bus, chopper).run(power, start);
        return new CaseOutcome(
                load.kind(),
                load.zone(),
                criterion,
                power.duration(),
                start.energy(),
                trace.end().energy(),
                trace.peakEnergy(),
                trace.peakInstant(),
                trace.tripInstant(),
                power.returned(),
                power.drawn(),
                trace.supplied(),
                trace.burned(),
                trace.burned(),
                trace.peakRise(),
                power.peak(),
                trace,
                new CaseOutcome.Worst(worst, bound),
                new Replay(
                        power,
                        new BusState(
                                start.energy(), switching.present() && start.energy() >= switching.onEnergy(), rise),
                        switching));
    }
}
