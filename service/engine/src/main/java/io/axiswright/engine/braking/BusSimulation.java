package io.axiswright.engine.braking;

import org.jspecify.annotations.Nullable;

/**
 * The bus over time, from event to event: held up by the rectifier, drifting freely, or emptied by the chopper (closed forms
 * of the bus capacitor and of chopper and resistor; constant and linear power are their special cases). Tripping is noted but
 * does not end a run: how far the voltage would rise is what the designer needs to know.
 *
 * <p>Heat of the resistor enters at the end of each step, and no step is longer than R·C/2: the temperature is on the high
 * side by at most that against the thermal time constant.
 */
final class BusSimulation {

    /** For times shorter than this share of a time constant four terms of the exponential series have full precision. */
    private static final double BRIEF = 1e-3;

    private final Bus bus;
    private final Chopper chopper;
    private final ChopperSolution solution;
    private final ResistorPulses pulses = new ResistorPulses();

    private @Nullable BusLog log;
    private double energy;
    private boolean chopping;
    private boolean holding;
    private double rise;

    private double peakEnergy;
    private double peakInstant;
    private double suppliedToPeak;
    private double burnedToPeak;
    private double tripInstant;
    private double supplied;
    private double burned;
    private double burnedUntil;
    private double peakRise;
    private long switchings;

    private double lastOn;
    private double burnedAtLastOn;
    private double riseAtLastOn;

    BusSimulation(Bus bus, Chopper chopper) {
        this.bus = bus;
        this.chopper = chopper;
        this.solution = new ChopperSolution(chopper.decay());
    }

    /** Runs through a course of power from a state. */
    BusTrace run(BusPower power, BusState start) {
        return run(power, start, null);
    }

    /** The same, and every change of state is written down. */
    BusTrace run(BusPower power, BusState start, @Nullable BusLog book) {
        pulses.clear();
        return follow(power, start, book);
    }

    /** The largest pulse of the resistor when the course just run through comes again and again, J. */
    double pulseRepeating(BusPower power) {
        double once = burned;
        pulses.repeat(power.duration(), once);
        follow(power, new BusState(energy, chopping, rise), null);
        return Math.min(pulses.largest(), Math.max(once, burned));
    }

    private BusTrace follow(BusPower power, BusState start, @Nullable BusLog book) {
        log = book;
        energy = start.energy();
        holding = chopper.regulates() && energy == chopper.onEnergy();
        chopping = start.chopping() && !holding;
        rise = start.rise();
        peakEnergy = energy;
        peakInstant = 0;
        suppliedToPeak = 0;
        burnedToPeak = 0;
        tripInstant = energy >= bus.tripEnergy() ? 0 : Double.NaN;
        supplied = 0;
        burned = 0;
        peakRise = rise;
        switchings = 0;
        for (PowerSegment segment : power.segments()) {
            double before = burned;
            advance(segment);
            if (burned > before) {
                pulses.add(segment.instant(segment.from()), segment.instant(burnedUntil), before, burned);
            }
        }
        return new BusTrace(
                start,
                new BusState(energy, chopping, rise),
                peakEnergy,
                peakInstant,
                suppliedToPeak,
                burnedToPeak,
                tripInstant,
                supplied,
                burned,
                peakRise,
                switchings);
    }

    private void advance(PowerSegment segment) {
        lastOn = Double.NaN;
        double local = segment.from();
        holding &= segment.sign() > 0;
        while (local < segment.to()) {
            if (log != null && log.open()) {
                log.add(new BusNode(segment, local, energy, rise, mode(segment)));
            }
            if (chopping) {
                local = chop(segment, local);
            } else if (holding) {
                local = hold(segment, local);
            } else if (energy <= bus.floorEnergy() && segment.sign() <= 0) {
                local = holdFloor(segment, local);
            } else {
                local = drift(segment, local);
            }
        }
    }

    private boolean logging() {
        return log != null && log.open();
    }

    private BusMode mode(PowerSegment segment) {
        if (chopping) {
            return BusMode.CHOPPING;
        }
        return holding || energy <= bus.floorEnergy() && segment.sign() <= 0 ? BusMode.HELD : BusMode.FREE;
    }

    /** Switching infinitely fast, the chopper burns just what comes until that is more than the resistor takes. */
    private double hold(PowerSegment segment, double local) {
        double most = chopper.decay() * chopper.onEnergy();
        double end = segment.to();
        if (segment.slope(local) > most) {
            end = local;
        } else if (segment.slope(end) > most) {
            end = Math.max(local, segment.instantOfPower(most, local));
        }
        heat(segment.energy(local, end), local, end);
        chopping = end < segment.to();
        holding = !chopping;
        return end;
    }

    private double holdFloor(PowerSegment segment, double local) {
        energy = bus.floorEnergy();
        supplied -= segment.energy(local, segment.to());
        cool(segment.to() - local);
        return segment.to();
    }

    private double drift(PowerSegment segment, double local) {
        double end = energy + segment.energy(local, segment.to());
        if (segment.sign() > 0) {
            if (untripped(Math.min(end, chopper.onEnergy()))) {
                tripInstant = segment.instant(segment.timeOfEnergy(bus.tripEnergy() - energy, local));
            }
            if (end > chopper.onEnergy()) {
                return switchOn(segment, local, segment.timeOfEnergy(chopper.onEnergy() - energy, local));
            }
        } else if (end < bus.floorEnergy()) {
            double landing = segment.timeOfEnergy(bus.floorEnergy() - energy, local);
            cool(landing - local);
            energy = bus.floorEnergy();
            return landing;
        }
        cool(segment.to() - local);
        energy = end;
        notePeak(segment.instant(segment.to()));
        return segment.to();
    }

    private double switchOn(PowerSegment segment, double local, double instant) {
        cool(instant - local);
        energy = chopper.onEnergy();
        notePeak(segment.instant(instant));
        switchings++;
        if (chopper.regulates()) {
            holding = true;
            return instant;
        }
        chopping = true;
        return segment.constant() && !logging() ? skipAlikeCycles(segment, instant) : instant;
    }

    /**
     * Under constant power one switching is like the last: all but the final one of those that still fit are taken at once,
     * so that a long descent costs no more than a short one.
     */
    private double skipAlikeCycles(PowerSegment segment, double local) {
        double instant = local;
        if (!Double.isNaN(lastOn)) {
            double period = local - lastOn;
            double cycles = Math.floor((segment.to() - local) / period) - 1;
            if (cycles > 0) {
                burned += cycles * (burned - burnedAtLastOn);
                double kept = Math.exp(-period / chopper.coolingTime());
                double settled = (rise - kept * riseAtLastOn) / -Math.expm1(-period / chopper.coolingTime());
                rise = settled + (rise - settled) * Math.exp(-cycles * period / chopper.coolingTime());
                switchings += (long) cycles;
                instant += cycles * period;
                burnedUntil = instant;
            }
        }
        lastOn = instant;
        burnedAtLastOn = burned;
        riseAtLastOn = rise;
        return instant;
    }

    private double chop(PowerSegment segment, double local) {
        solution.begin(segment.powerFrom(local), energy);
        double left = segment.to() - local;
        double rateAtStart = solution.rate();
        if (rateAtStart < 0) {
            double end = solution.fallStraight(chopper.offEnergy(), Math.min(left, solution.longestStep()));
            if (local + end > local) {
                return switchOff(segment, local, local + end);
            }
        }
        double step = Math.min(left, promisingStep(rateAtStart));
        double from = 0;
        double to = step;
        solution.at(step);
        if (rateAtStart * solution.rate() < 0) {
            double turn = solution.turn(0, step);
            from = rateAtStart > 0 ? turn : 0;
            to = rateAtStart > 0 ? step : turn;
        }
        if (rateAtStart > 0) {
            noteTop(segment, local, from > 0 ? from : step);
        }
        solution.at(to);
        if (solution.energy() < chopper.offEnergy()) {
            double end = solution.fallTo(chopper.offEnergy(), from, to);
            if (local + end > local) { // else the turn is lost in rounding
                return switchOff(segment, local, local + end);
            }
        }
        solution.at(step);
        heat(solution.burned(), local, local + step);
        energy = solution.energy();
        notePeak(segment.instant(local + step));
        return step == left ? segment.to() : local + step;
    }

    private double switchOff(PowerSegment segment, double local, double instant) {
        heat(solution.burned(), local, instant);
        energy = chopper.offEnergy();
        chopping = false;
        holding = chopper.regulates() && segment.sign() > 0;
        return instant;
    }

    /** Falling as it does now, the energy reaches the switch-off within this step; a short step needs a short series. */
    private double promisingStep(double rate) {
        double straight = 1.25 * (chopper.offEnergy() - energy) / rate;
        return straight > 0 ? Math.min(straight, solution.longestStep()) : solution.longestStep();
    }

    private void cool(double time) {
        if (rise > 0) {
            double x = time / chopper.coolingTime();
            rise *= x < BRIEF ? 1 - x * (1 - x / 2 * (1 - x / 3 * (1 - x / 4))) : Math.exp(-x);
        }
    }

    private void heat(double joules, double local, double until) {
        cool(until - local);
        burnedUntil = until;
        burned += joules;
        rise += joules / chopper.heatCapacity();
        peakRise = Math.max(peakRise, rise);
    }

    private void notePeak(double instant) {
        if (energy > peakEnergy) {
            peak(energy, instant, burned);
        }
    }

    private void peak(double height, double instant, double burnedUntilThen) {
        peakEnergy = height;
        peakInstant = instant;
        suppliedToPeak = supplied;
        burnedToPeak = burnedUntilThen;
    }

    /** The highest point of a step with the chopper on. */
    private void noteTop(PowerSegment segment, double local, double time) {
        solution.at(time);
        double top = solution.energy();
        if (top > peakEnergy) {
            peak(top, segment.instant(local + time), burned + solution.burned());
        }
        if (untripped(top)) {
            tripInstant = segment.instant(local + Curve.reach(solution, bus.tripEnergy(), 0, time));
        }
    }

    private boolean untripped(double reached) {
        return Double.isNaN(tripInstant) && reached >= bus.tripEnergy();
    }
}
