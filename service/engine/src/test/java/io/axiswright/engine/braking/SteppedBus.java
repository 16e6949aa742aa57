package io.axiswright.engine.braking;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * The second route: the bus integrated step by step by a general-purpose adaptive integrator with event location. Shares no
 * code with the simulation: powers are evaluated where they are, breakpoints are a sorted set, and modes change at events.
 */
final class SteppedBus {

    private enum Mode {
        FLOOR,
        FREE,
        CHOPPING
    }

    private final List<PowerCourse> courses;
    private final Bus bus;
    private final double onEnergy;
    private final double offEnergy;
    private final double decay;
    private final double absolute;
    private final double relative;

    private Mode mode = Mode.FLOOR;
    private double time;
    private double[] state; // energy, into the resistor, from the rectifier

    /** Highest energy so far, J. */
    double peak;

    /** Energies at the breakpoints, in order, J. */
    final List<Double> atBreakpoints = new ArrayList<>();

    /** How often the chopper switched on. */
    int switchings;

    /**
     * The chopper's switching on or off.
     *
     * @param instant when, s
     * @param rate how fast the energy of the bus changes just before, W
     */
    record Switching(double instant, double rate) {}

    /** Every switching, in order. */
    final List<Switching> events = new ArrayList<>();

    SteppedBus(List<PowerCourse> courses, Bus bus, Chopper chopper) {
        this(courses, bus, chopper, 1e-8, 1e-10);
    }

    /** With its absolute tolerance in J and its relative one. */
    SteppedBus(List<PowerCourse> courses, Bus bus, Chopper chopper, double absolute, double relative) {
        this.absolute = absolute;
        this.relative = relative;
        this.courses = courses;
        this.bus = bus;
        this.onEnergy = chopper.onEnergy();
        this.offEnergy = chopper.offEnergy();
        this.decay = chopper.decay();
        this.state = new double[] {bus.floorEnergy(), 0, 0};
        this.peak = state[0];
    }

    double burned() {
        return state[1];
    }

    double supplied() {
        return state[2];
    }

    double energy() {
        return state[0];
    }

    void run() {
        TreeSet<Double> breaks = new TreeSet<>();
        for (PowerCourse course : courses) {
            course.pieces().forEach(p -> {
                breaks.add(p.start());
                breaks.add(p.end());
            });
        }
        double from = breaks.first();
        for (double to : breaks.tailSet(from, false)) {
            if (to - from > 1e-12) {
                between(from, to);
                atBreakpoints.add(state[0]);
            }
            from = to;
        }
    }

    private void between(double from, double to) {
        double middle = (from + to) / 2;
        List<DoubleUnaryOperator> here = new ArrayList<>();
        for (PowerCourse course : courses) {
            for (PowerCourse.Piece piece : course.pieces()) {
                if (piece.start() < middle && middle < piece.end()) {
                    here.add(t -> piece.power().at(t - piece.start()));
                }
            }
        }
        DoubleUnaryOperator power =
                t -> here.stream().mapToDouble(p -> p.applyAsDouble(t)).sum();
        time = from;
        int guard = 0;
        while (time < to - 1e-13) {
            if (guard++ > 100_000) {
                throw new IllegalStateException("the stepped bus does not get on at " + time);
            }
            step(power, to);
        }
    }

    private void step(DoubleUnaryOperator power, double to) {
        double soon = Math.min(to, time + 1e-9);
        if (mode == Mode.FLOOR && power.applyAsDouble(soon) > 0) {
            mode = Mode.FREE;
        }
        var integrator = new DormandPrince853Integrator(1e-14, to - time, absolute, relative);
        Mode[] next = {mode};
        double check = (to - time) / 30;
        switch (mode) {
            case FLOOR ->
                integrator.addEventDetector(
                        detector(check, s -> power.applyAsDouble(s.getTime()), true, next, Mode.FREE));
            case FREE -> {
                integrator.addEventDetector(
                        detector(check, s -> s.getPrimaryState()[0] - bus.floorEnergy(), false, next, Mode.FLOOR));
                if (decay > 0) {
                    integrator.addEventDetector(
                            detector(check, s -> s.getPrimaryState()[0] - onEnergy, true, next, Mode.CHOPPING));
                }
                integrator.addEventDetector(top(check, s -> power.applyAsDouble(s.getTime())));
            }
            case CHOPPING -> {
                integrator.addEventDetector(
                        detector(check, s -> s.getPrimaryState()[0] - offEnergy, false, next, Mode.FREE));
                integrator.addEventDetector(
                        top(check, s -> power.applyAsDouble(s.getTime()) - decay * s.getPrimaryState()[0]));
            }
        }
        ODEStateAndDerivative end = integrator.integrate(equation(power), new ODEState(time, state), to);
        time = end.getTime();
        state = end.getPrimaryState();
        if (mode == Mode.FLOOR || next[0] == Mode.FLOOR) {
            state[0] = bus.floorEnergy();
        }
        if (mode == Mode.FREE && next[0] == Mode.CHOPPING) {
            switchings++;
            events.add(new Switching(time, power.applyAsDouble(time)));
        } else if (mode == Mode.CHOPPING && next[0] == Mode.FREE) {
            events.add(new Switching(time, power.applyAsDouble(time) - decay * state[0]));
        }
        mode = next[0];
        peak = Math.max(peak, state[0]);
    }

    private OrdinaryDifferentialEquation equation(DoubleUnaryOperator power) {
        Mode now = mode;
        return new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 3;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                double p = power.applyAsDouble(t);
                return switch (now) {
                    case FLOOR -> new double[] {0, 0, -p};
                    case FREE -> new double[] {p, 0, 0};
                    case CHOPPING -> new double[] {p - decay * y[0], decay * y[0], 0};
                };
            }
        };
    }

    private ODEEventDetector top(double check, ToDoubleFunction<ODEStateAndDerivative> g) {
        return new Detector(check, g, (s, increasing) -> {
            peak = Math.max(peak, s.getPrimaryState()[0]);
            return Action.CONTINUE;
        });
    }

    private static ODEEventDetector detector(
            double check, ToDoubleFunction<ODEStateAndDerivative> g, boolean rising, Mode[] next, Mode then) {
        return new Detector(check, g, (s, increasing) -> {
            if (increasing != rising) {
                return Action.CONTINUE;
            }
            next[0] = then;
            return Action.STOP;
        });
    }

    private interface Reaction {
        Action to(ODEStateAndDerivative state, boolean increasing);
    }

    private record Detector(double check, ToDoubleFunction<ODEStateAndDerivative> function, Reaction reaction)
            implements ODEEventDetector {

        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return AdaptableInterval.of(check);
        }

        @Override
        public int getMaxIterationCount() {
            return 200;
        }

        @Override
        public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
            return new BracketingNthOrderBrentSolver(0, 1e-14, 0, 5);
        }

        @Override
        public ODEEventHandler getHandler() {
            return (s, detector, increasing) -> reaction.to(s, increasing);
        }

        @Override
        public double g(ODEStateAndDerivative s) {
            return function.applyAsDouble(s);
        }
    }
}
