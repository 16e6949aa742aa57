package io.axiswright.engine.controlpower;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposer;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.GaussNewtonOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FeederTreeTest {

    /** V = (V_s + √(V_s² − 4PR))/2, the closed form for one constant-power load (derived; rows worked by hand from it). */
    @ParameterizedTest
    @CsvSource({"0.5, 60, 22.677, 2.646", "0.5, 200, 18.633, 10.734"})
    void oneLoadByTheQuadratic(double resistance, double power, double voltage, double current) {
        OperatingPoint point = single(resistance, power).solve(24).orElseThrow();
        assertThat(point.voltages()[0]).isCloseTo(voltage, within(5e-4));
        assertThat(point.sourceCurrent()).isCloseTo(current, within(5e-4));
    }

    /** P_max = V_s²/(4R) = 288 W, where V = V_s/2 (derived). */
    @Test
    void oneLoadCollapsesWhereTheQuadraticHasNoRoot() {
        assertThat(single(0.5, 300).solve(24)).isEmpty();
        assertThat(single(0.5, 288 * (1 - 1e-9)).solve(24).orElseThrow().voltages()[0])
                .isCloseTo(12, within(1e-3));
        assertThat(single(0.5, 60).collapseMultiple(24).orElseThrow()).isCloseTo(288.0 / 60, within(1e-7));
    }

    @Test
    void oneRandomLoadByTheQuadratic() {
        var random = new SplittableRandom(20261);
        for (int k = 0; k < 2000; k++) {
            double source = random.nextDouble(20, 30);
            double resistance = random.nextDouble(0.001, 2);
            double power = random.nextDouble() * 0.999 * source * source / (4 * resistance);
            double root = (source + Math.sqrt(source * source - 4 * power * resistance)) / 2;
            assertThat(single(resistance, power).solve(source).orElseThrow().voltages()[0])
                    .as("seed 20261, draw %d", k)
                    .isCloseTo(root, within(1e-9));
        }
    }

    /**
     * Eight loads of 1.196 W, 10 m apart on 1 mm round copper at 0.017 Ω·mm²/m, 24 V. Inputs:
     * https://www.eevblog.com/forum/oshw/dc-distribution-line-voltage-drop-model/ ; the page's listing could not be read, so
     * the voltages are those of an independent fixed-point sweep to 1e-12.
     */
    @Test
    void daisyChainOfEight() {
        OperatingPoint point = daisyChain().solve(24).orElseThrow();
        double[] expected = {23.8232, 23.6682, 23.5351, 23.4239, 23.3349, 23.2680, 23.2234, 23.2011};
        for (int k = 0; k < expected.length; k++) {
            assertThat(point.voltages()[k]).isCloseTo(expected[k], within(5e-5));
        }
    }

    /**
     * The same chain collapses at 9.00 times its load (derived). Independent: taken backwards from a voltage v at its last node
     * the chain needs a source of s(v); s is least at the nose, and voltages scale as the root of the load.
     */
    @Test
    void daisyChainCollapsesAtNineTimesItsLoad() {
        double multiple = daisyChain().collapseMultiple(24).orElseThrow();
        assertThat(multiple).isCloseTo(9.00, within(5e-3));

        double left = 0.5;
        double right = 20;
        while (right - left > 1e-9) {
            double third = (right - left) / 3;
            if (sourceFor(left + third) < sourceFor(right - third)) {
                right -= third;
            } else {
                left += third;
            }
        }
        assertThat(multiple).isCloseTo(Math.pow(24 / sourceFor(left), 2), within(1e-6));
        // far from half the source: the rule of the single load does not carry over
        assertThat(daisyChain().solve(24, multiple).orElseThrow().voltages()[7])
                .isCloseTo(left * 24 / sourceFor(left), within(5e-3));
        assertThat(daisyChain().solve(24, multiple * (1 + 1e-6))).isEmpty();
    }

    private static double sourceFor(double lastVoltage) {
        double voltage = lastVoltage;
        double current = 0;
        for (int k = 0; k < 8; k++) {
            current += 1.196 / voltage;
            voltage += 0.017 * 20 / (Math.PI / 4) * current;
        }
        return voltage;
    }

    /** L = Σ r_i Σ_(j ≥ i) P_j; V ≥ (V_0 + √(V_0² − 4L))/2 (derived): 23.1965 V for the chain above. */
    @Test
    void closedBoundOfTheDaisyChain() {
        double r = 0.017 * 20 / (Math.PI / 4);
        double moment = 0;
        for (int k = 1; k <= 8; k++) {
            moment += r * 1.196 * k;
        }
        double bound = bound(24, moment);
        assertThat(bound).isCloseTo(23.1965, within(5e-5));
        assertThat(daisyChain().solve(24).orElseThrow().voltages()[7]).isGreaterThanOrEqualTo(bound);
    }

    @Test
    void closedBoundIsNeverAboveRandomChains() {
        var random = new SplittableRandom(20262);
        int accepted = 0;
        for (int k = 0; k < 1000; k++) {
            int n = random.nextInt(1, 12);
            Network chain = Network.random(random, n, true, false);
            double moment = 0;
            double beyond = 0;
            for (int j = n - 1; j >= 0; j--) {
                beyond += chain.power[j];
                moment += chain.resistance[j] * beyond;
            }
            if (4 * moment <= 24 * 24) {
                accepted++;
                double last = chain.tree().solve(24).orElseThrow().voltages()[n - 1];
                assertThat(last).as("seed 20262, draw %d", k).isGreaterThanOrEqualTo(bound(24, moment) - 1e-9);
            }
        }
        assertThat(accepted).isGreaterThan(300);
    }

    /** The nonlinear least-squares solver of a general library, and the plain sweep of the textbooks. */
    @Test
    void thousandRandomTreesByTwoOtherRoutes() {
        var random = new SplittableRandom(20263);
        int solved = 0;
        for (int k = 0; k < 1000; k++) {
            Network network = Network.random(random, random.nextInt(1, 15), false, true);
            var point = network.tree().solve(24);
            double[] root = network.byLibrary(24);
            if (point.isEmpty()) {
                assertThat(root)
                        .as("seed 20263, draw %d has no working point", k)
                        .isEmpty();
                assertThat(network.sweep(24))
                        .as("seed 20263, draw %d has no working point", k)
                        .isEmpty();
            } else {
                solved++;
                assertThat(point.get().voltages())
                        .as("seed 20263, draw %d, library", k)
                        .containsExactly(root, within(1e-9));
                assertThat(point.get().voltages())
                        .as("seed 20263, draw %d, sweep", k)
                        .containsExactly(network.sweep(24), within(1e-8));
                assertThat(network.powerError(24, point.get()))
                        .as("seed 20263, draw %d, balance", k)
                        .isLessThan(1e-8);
            }
        }
        assertThat(solved).isBetween(200, 950);
    }

    /** (1 + RG) V² − (V_s − RI) V + RP = 0, the closed form for one load of all three laws (derived). */
    @Test
    void oneRandomLoadOfAllLawsByTheQuadratic() {
        var random = new SplittableRandom(20265);
        int solved = 0;
        for (int k = 0; k < 2000; k++) {
            double r = random.nextDouble(0.001, 2);
            var draw = new Draw(random.nextDouble(0, 100), random.nextDouble(0, 0.2), random.nextDouble(0, 5));
            double half = (24 - r * draw.current()) / 2;
            double square = half * half - (1 + r * draw.conductance()) * r * draw.power();
            var point = single(r, draw).solve(24);
            if (half <= 0 || square < 0) {
                assertThat(point).as("seed 20265, draw %d", k).isEmpty();
            } else {
                solved++;
                double root = (half + Math.sqrt(square)) / (1 + r * draw.conductance());
                assertThat(point.orElseThrow().voltages()[0])
                        .as("seed 20265, draw %d", k)
                        .isCloseTo(root, within(1e-9));
            }
        }
        assertThat(solved).isBetween(500, 1900);
    }

    /** A constant current alone brings the voltage to nothing at V_s/(R I): 24/(2 · 3) = 4 times. */
    @Test
    void constantCurrentCollapsesAtZeroVolts() {
        assertThat(single(2, new Draw(0, 0, 3)).collapseMultiple(24).orElseThrow())
                .isCloseTo(4, within(1e-7));
    }

    /**
     * More constant power lowers every voltage. More resistance lowers every voltage behind it, and, if nothing is resistive,
     * every other one; a brake starved by it leaves more for its neighbours.
     */
    @Test
    void moreResistanceOrMoreLoadNeverRaisesAVoltage() {
        var random = new SplittableRandom(20264);
        int compared = 0;
        for (int k = 0; k < 800; k++) {
            boolean brakes = random.nextBoolean();
            Network network = Network.random(random, random.nextInt(1, 10), false, brakes);
            var before = network.tree().solve(24);
            int at = random.nextInt(network.parent.length);
            boolean resistance = random.nextBoolean();
            if (resistance) {
                network.resistance[at] *= 1.2;
            } else {
                network.power[at] += 5;
            }
            var after = network.tree().solve(24);
            if (before.isPresent() && after.isPresent()) {
                for (int j = 0; j < network.parent.length; j++) {
                    if (!brakes || !resistance || network.isBehind(j, at)) {
                        compared++;
                        assertThat(after.get().voltages()[j])
                                .as("seed 20264, draw %d", k)
                                .isLessThanOrEqualTo(before.get().voltages()[j] + 1e-10);
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(500);
    }

    @Test
    void resistiveLoadsNeverCollapse() {
        var tree = new FeederTree(
                new int[] {-1, 0}, new double[] {1, 2}, List.of(Draw.ofConductance(0.1), Draw.ofConductance(0.2)));
        assertThat(tree.collapseMultiple(24)).isEmpty();
    }

    private static double bound(double source, double moment) {
        return (source + Math.sqrt(source * source - 4 * moment)) / 2;
    }

    private static FeederTree single(double resistance, double power) {
        return single(resistance, Draw.ofPower(power));
    }

    private static FeederTree single(double resistance, Draw draw) {
        return new FeederTree(new int[] {-1}, new double[] {resistance}, List.of(draw));
    }

    private static FeederTree daisyChain() {
        int[] parent = {-1, 0, 1, 2, 3, 4, 5, 6};
        double[] resistance = new double[8];
        Arrays.fill(resistance, 0.017 * 20 / (Math.PI / 4));
        return new FeederTree(parent, resistance, Collections.nCopies(8, Draw.ofPower(1.196)));
    }

    /** A random network, solved here by other means. */
    private record Network(int[] parent, double[] resistance, double[] power, double[] conductance, double[] current) {

        static Network random(SplittableRandom random, int n, boolean chain, boolean brakes) {
            var network = new Network(new int[n], new double[n], new double[n], new double[n], new double[n]);
            for (int k = 0; k < n; k++) {
                network.parent[k] = chain ? k - 1 : random.nextInt(k + 1) - 1;
                network.resistance[k] = random.nextDouble(0.01, 0.8);
                network.power[k] = random.nextDouble(0, 30);
                network.conductance[k] = brakes ? random.nextDouble(0, 0.04) : 0;
                network.current[k] = brakes ? random.nextDouble(0, 0.5) : 0;
            }
            return network;
        }

        boolean isBehind(int node, int link) {
            int k = node;
            while (k > link) {
                k = parent[k];
            }
            return k == link;
        }

        FeederTree tree() {
            List<Draw> draws = new ArrayList<>();
            for (int k = 0; k < parent.length; k++) {
                draws.add(new Draw(power[k], conductance[k], current[k]));
            }
            return new FeederTree(parent, resistance, draws);
        }

        /** Currents from the last voltages, voltages from those currents, until nothing moves; empty if it collapses. */
        double[] sweep(double source) {
            int n = parent.length;
            double[] v = new double[n];
            Arrays.fill(v, source);
            for (int step = 0; step < 200_000; step++) {
                double[] through = new double[n];
                for (int k = n - 1; k >= 0; k--) {
                    through[k] += power[k] / v[k] + conductance[k] * v[k] + current[k];
                    if (parent[k] >= 0) {
                        through[parent[k]] += through[k];
                    }
                }
                double moved = 0;
                for (int k = 0; k < n; k++) {
                    double next = (parent[k] < 0 ? source : v[parent[k]]) - resistance[k] * through[k];
                    // resistive loads make the sweep swing; half steps keep it falling
                    next = (next + v[k]) / 2;
                    if (next <= 0.5) {
                        return new double[0];
                    }
                    moved = Math.max(moved, Math.abs(next - v[k]));
                    v[k] = next;
                }
                if (moved < 1e-13) {
                    return v;
                }
            }
            return new double[0];
        }

        /**
         * Σ_k (V_i − V_k)/r_ik + G_i V_i + P_i/V_i + I_i = 0 by the Gauss-Newton optimizer of a general library, from the
         * source voltage everywhere; empty if it finds no root with every voltage above zero.
         */
        double[] byLibrary(double source) {
            int n = parent.length;
            double[] start = new double[n];
            Arrays.fill(start, source);
            var problem = new LeastSquaresBuilder()
                    .model(point -> new Pair<>(residual(source, point), jacobian(point)))
                    .target(new double[n])
                    .start(start)
                    .maxEvaluations(1000)
                    .maxIterations(1000)
                    .checker((step, before, after) -> before.getPoint().getDistance(after.getPoint()) < 1e-12)
                    .build();
            try {
                RealVector root = new GaussNewtonOptimizer(new QRDecomposer(1e-14), false)
                        .optimize(problem)
                        .getPoint();
                boolean isRoot =
                        root.getMinValue() > 0 && residual(source, root).getLInfNorm() < 1e-9;
                return isRoot ? root.toArray() : new double[0];
            } catch (MathIllegalStateException | MathIllegalArgumentException noRoot) {
                return new double[0];
            }
        }

        private RealVector residual(double source, RealVector v) {
            RealVector f = new ArrayRealVector(parent.length);
            for (int k = 0; k < parent.length; k++) {
                double own = v.getEntry(k);
                double above = parent[k] < 0 ? source : v.getEntry(parent[k]);
                double flow = (above - own) / resistance[k];
                f.addToEntry(k, conductance[k] * own + power[k] / own + current[k] - flow);
                if (parent[k] >= 0) {
                    f.addToEntry(parent[k], flow);
                }
            }
            return f;
        }

        private RealMatrix jacobian(RealVector v) {
            RealMatrix jacobian = new Array2DRowRealMatrix(parent.length, parent.length);
            for (int k = 0; k < parent.length; k++) {
                double y = 1 / resistance[k];
                jacobian.addToEntry(k, k, y + conductance[k] - power[k] / Math.pow(v.getEntry(k), 2));
                if (parent[k] >= 0) {
                    jacobian.addToEntry(parent[k], parent[k], y);
                    jacobian.addToEntry(k, parent[k], -y);
                    jacobian.addToEntry(parent[k], k, -y);
                }
            }
            return jacobian;
        }

        /** Power out of the source less what loads and conductors take, relative. */
        double powerError(double source, OperatingPoint point) {
            double taken = 0;
            for (int k = 0; k < parent.length; k++) {
                double v = point.voltages()[k];
                double i = point.currents()[k];
                taken += power[k] + conductance[k] * v * v + current[k] * v + resistance[k] * i * i;
            }
            return Math.abs(source * point.sourceCurrent() - taken) / (1 + taken);
        }
    }
}
