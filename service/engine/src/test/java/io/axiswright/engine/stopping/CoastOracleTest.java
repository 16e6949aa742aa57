package io.axiswright.engine.stopping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.duty.CoastLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/**
 * Uncontrolled stops by another route: the acceleration is the root of the torque balance, found by a solver, and the motion is
 * integrated by a general-purpose integrator that locates the standstill as an event.
 */
class CoastOracleTest {

    /** Torque that the motor would have to give, less that of the brake against the motion. */
    private static double balance(CoastLoad load, double direction, double brake, double w, double a) {
        double turn = 1 / load.ratio();
        double torque =
                load.inertia() * a * turn + load.viscous() * w * turn + load.weight() + direction * load.friction();
        for (CoastLoad.Link link : load.links()) {
            turn *= link.ratio();
            double efficiency = torque * direction >= 0 ? 1 / link.driving() : link.backDriving();
            torque = torque * efficiency / link.ratio() + link.inertia() * a * turn + direction * link.drag();
        }
        return torque + load.motorInertia() * a + direction * brake;
    }

    private static double acceleration(CoastLoad load, double direction, double brake, double w) {
        double reach = 10 * (Math.abs(balance(load, direction, brake, w, 0)) + 1) / load.motorInertia();
        return new BracketingNthOrderBrentSolver(1e-14, 1e-11, 1e-15, 5)
                .solve(1000, a -> balance(load, direction, brake, w, a), -reach, reach);
    }

    /** Time, angle there and back, angle against the brake. */
    private record Followed(double time, double forward, double backward, double braked) {}

    private static Followed follow(CoastLoad load, double start, BrakeAction brake) {
        double t = 0;
        double w = start;
        double forward = 0;
        double backward = 0;
        double braked = 0;
        while (true) {
            boolean biting = t >= brake.delay();
            double torque = biting ? brake.torque() : 0;
            double direction = Math.signum(w);
            if (w == 0) {
                for (double d : new double[] {1, -1}) {
                    direction = d * acceleration(load, d, torque, 0) > 1e-7 ? d : direction;
                }
                if (direction == 0) {
                    return new Followed(t, forward, backward, braked);
                }
            }
            double end = biting ? 1e3 : brake.delay();
            double d = direction;
            var integrator = new DormandPrince853Integrator(1e-12, 10, 1e-11, 1e-12);
            var stop = new Standstill(d);
            integrator.addEventDetector(stop);
            ODEStateAndDerivative last = integrator.integrate(
                    new OrdinaryDifferentialEquation() {
                        @Override
                        public int getDimension() {
                            return 2;
                        }

                        @Override
                        public double[] computeDerivatives(double time, double[] y) {
                            return new double[] {acceleration(load, d, torque, y[0]), y[0]};
                        }
                    },
                    new ODEState(t, new double[] {w == 0 ? d * 1e-13 : w, 0}),
                    end);
            t = last.getTime();
            double angle = last.getPrimaryState()[1];
            forward += Math.max(0, angle);
            backward += Math.max(0, -angle);
            braked += biting ? Math.abs(angle) : 0;
            w = t < end ? 0 : last.getPrimaryState()[0];
        }
    }

    private record Standstill(double direction) implements ODEEventDetector {

        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return AdaptableInterval.of(0.01);
        }

        @Override
        public int getMaxIterationCount() {
            return 200;
        }

        @Override
        public org.hipparchus.analysis.solvers.BracketedUnivariateSolver<org.hipparchus.analysis.UnivariateFunction>
                getSolver() {
            return new BracketingNthOrderBrentSolver(1e-15, 1e-13, 1e-15, 5);
        }

        @Override
        public ODEEventHandler getHandler() {
            return (state, detector, increasing) -> Action.STOP;
        }

        @Override
        public double g(ODEStateAndDerivative state) {
            return state.getPrimaryState()[0] * direction;
        }
    }

    private static CoastLoad random(SplittableRandom random, double weight) {
        List<CoastLoad.Link> links = new ArrayList<>();
        links.add(new CoastLoad.Link(
                1, random.nextDouble(0.7, 1), random.nextDouble(0.5, 1), random.nextDouble(0, 1e-3), 0));
        links.add(new CoastLoad.Link(
                random.nextDouble(1, 10), random.nextDouble(0.8, 1), random.nextDouble(0.7, 1), 0, 0));
        return new CoastLoad(
                random.nextDouble(0, 0.05),
                weight,
                random.nextDouble(0, 4),
                random.nextBoolean() ? random.nextDouble(0, 0.3) : 0,
                links,
                random.nextDouble(2e-4, 2e-3));
    }

    @Test
    void agreesWithAdaptiveIntegrationAndEventLocation() {
        int rests = 0;
        for (long seed = 1; seed <= 300; seed++) {
            var random = new SplittableRandom(seed);
            CoastLoad load = random(random, random.nextDouble(-8, 8));
            double speed = random.nextInt(5) == 0 ? 0 : random.nextDouble(-250, 250);
            var brake = new BrakeAction(random.nextDouble(0, 0.12), random.nextDouble(9, 14));
            CoastRun run = CoastRun.of(load, speed, brake);
            Followed followed = follow(load, speed, brake);
            assertThat(run.rests()).as("seed %d", seed).isTrue();
            rests++;
            double size = 1 + followed.forward() + followed.backward();
            assertThat(run.time()).as("time, seed %d", seed).isCloseTo(followed.time(), within(1e-6));
            assertThat(run.forward()).as("forward, seed %d", seed).isCloseTo(followed.forward(), within(1e-6 * size));
            assertThat(run.backward())
                    .as("backward, seed %d", seed)
                    .isCloseTo(followed.backward(), within(1e-6 * size));
            assertThat(run.braked()).as("braked, seed %d", seed).isCloseTo(followed.braked(), within(1e-6 * size));
        }
        assertThat(rests).isEqualTo(300);
    }

    /** Nothing is lost or found: what the brake takes up is the kinetic energy and the work of the weight, without losses. */
    @Test
    void energyOfTheBrakeIsKineticEnergyAndWorkOfTheWeight() {
        for (long seed = 1; seed <= 200; seed++) {
            var random = new SplittableRandom(seed);
            double weight = random.nextDouble(-3, 3);
            CoastLoad load = StoppingFixtures.load(random.nextDouble(1e-3, 1e-2), weight, 0, 0);
            double speed = random.nextDouble(-200, 200);
            double torque = random.nextDouble(4, 9);
            CoastRun run = CoastRun.of(load, speed, new BrakeAction(random.nextDouble(0, 0.1), torque));
            double energy = load.motorInertia() * speed * speed / 2 - weight * (run.forward() - run.backward());
            assertThat(run.braked() * torque).as("seed %d", seed).isCloseTo(energy, within(1e-9 * (1 + energy)));
        }
    }

    @Test
    void laterOrWeakerBrakesAndHeavierLoadsRunFartherAndLonger() {
        for (long seed = 1; seed <= 200; seed++) {
            var random = new SplittableRandom(seed);
            CoastLoad load = random(random, random.nextDouble(0, 8));
            double speed = -random.nextDouble(0, 250); // running down
            double delay = random.nextDouble(0, 0.1);
            CoastRun run = CoastRun.of(load, speed, new BrakeAction(delay, 12));
            CoastRun later = CoastRun.of(load, speed, new BrakeAction(delay * 1.1 + 0.001, 12));
            CoastRun weaker = CoastRun.of(load, speed, new BrakeAction(delay, 11));
            CoastRun heavier = CoastRun.of(
                    new CoastLoad(
                            load.inertia(),
                            load.weight() * 1.1,
                            load.friction(),
                            load.viscous(),
                            load.links(),
                            load.motorInertia()),
                    speed,
                    new BrakeAction(delay, 12));
            assertThat(later.path()).as("seed %d", seed).isGreaterThanOrEqualTo(run.path() * (1 - 1e-12));
            assertThat(weaker.path()).as("seed %d", seed).isGreaterThanOrEqualTo(run.path() * (1 - 1e-12));
            assertThat(heavier.path()).as("seed %d", seed).isGreaterThanOrEqualTo(run.path() * (1 - 1e-12));
            assertThat(heavier.time()).as("seed %d", seed).isGreaterThanOrEqualTo(run.time() * (1 - 1e-12));
        }
    }

    /** Viscous friction alone never brings anything to rest, and without any nothing changes at all. */
    @Test
    void whatNothingStopsNeverRests() {
        assertThat(CoastRun.of(StoppingFixtures.load(0.01, 0, 0, 0), 100, BrakeAction.NONE)
                        .rests())
                .isFalse();
        assertThat(CoastRun.of(StoppingFixtures.load(0.01, 0, 0, 0.1), 100, BrakeAction.NONE)
                        .rests())
                .isFalse();
        assertThat(CoastRun.of(StoppingFixtures.load(0.01, 2, 0, 0), 0, BrakeAction.NONE)
                        .rests())
                .isFalse();
        assertThat(CoastRun.of(StoppingFixtures.load(0.01, 2, 0, 0), 0, new BrakeAction(0.1, 1.9))
                        .rests())
                .isFalse();
        assertThat(CoastRun.of(StoppingFixtures.load(0.01, 2, 2, 0), 0, BrakeAction.NONE))
                .isEqualTo(CoastRun.HELD);
    }

    /** J·w/T with friction alone: 0.01 kg·m², 100 rad/s, 2 N·m: 0.5 s and 25 rad. */
    @Test
    void frictionAloneByHand() {
        CoastRun run = CoastRun.of(StoppingFixtures.load(0.01, 0, 2, 0), 100, BrakeAction.NONE);
        assertThat(run.rests()).isTrue();
        assertThat(run.time()).isCloseTo(0.5, within(1e-12));
        assertThat(run.path()).isCloseTo(25, within(1e-10));
    }
}
