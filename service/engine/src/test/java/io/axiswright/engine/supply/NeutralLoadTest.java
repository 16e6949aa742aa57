package io.axiswright.engine.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.quantity.Current;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What the neutral of a feeder can carry, held against currents over time. */
class NeutralLoadTest {

    private static final int SAMPLES = 3600;

    private static @Nullable Current neutral(CodeBasis basis, SupplySystem system, double volts, SupplyLoad... loads) {
        var devices = Plant.breakers(basis, 6, 10, 16, 20, 25, 32, 35, 40, 50, 63, 80, 100);
        return new SupplySizing()
                .size(Plant.request(basis, Plant.mains(system, volts), List.of(loads), devices))
                .feeder()
                .neutralCurrent();
    }

    private static double iec(double... amperes) {
        var loads = new ArrayList<SupplyLoad>();
        for (double a : amperes) {
            loads.add(Plant.load("d" + loads.size(), LoadUse.DRIVE, Feed.ONE_PHASE, 230, a, a, 40, 1, 1e4, 0, null));
        }
        return Objects.requireNonNull(neutral(
                        CodeBasis.IEC_60204_1,
                        SupplySystem.THREE_PHASE_FOUR_WIRE,
                        400,
                        loads.toArray(SupplyLoad[]::new)))
                .si();
    }

    /** √(10² + 10² + 10²) and √(10² + 6²). */
    @Test
    void byHand() {
        assertThat(iec(10, 10, 10)).isCloseTo(17.3205, within(1e-4));
        assertThat(iec(10, 6)).isCloseTo(11.6619, within(1e-4));
    }

    /** 1.25 · 10 A on each of three lines: 21.65 A; what is between lines does not count. */
    @Test
    void theCodesAdditionsCount() {
        var one = Plant.load("a", LoadUse.DRIVE, Feed.ONE_PHASE, 277, 10, 5, 40, 1, 1e4, 0, null);
        var two = Plant.load("b", LoadUse.DRIVE, Feed.ONE_PHASE, 277, 10, 5, 40, 1, 1e4, 0, null);
        var three = Plant.load("c", LoadUse.DRIVE, Feed.ONE_PHASE, 277, 10, 5, 40, 1, 1e4, 0, null);
        var between = Plant.load("d", LoadUse.DRIVE, Feed.THREE_PHASE, 480, 20, 5, 40, 1, 1e4, 0, null);
        assertThat(Objects.requireNonNull(neutral(
                                CodeBasis.NFPA_79, SupplySystem.THREE_PHASE_FOUR_WIRE, 480, one, two, three, between))
                        .si())
                .isCloseTo(21.6506, within(1e-4));
    }

    @Test
    void noneWithoutCircuitsToNeutralAndOnFewerLines() {
        var between = Plant.drive("d", Feed.THREE_PHASE, 400, 10, 40);
        var one = Plant.drive("e", Feed.ONE_PHASE, 230, 10, 40);
        var small = Plant.drive("f", Feed.ONE_PHASE, 120, 10, 40);
        assertThat(neutral(CodeBasis.IEC_60204_1, SupplySystem.THREE_PHASE_FOUR_WIRE, 400, between))
                .isNull();
        assertThat(neutral(CodeBasis.IEC_60204_1, SupplySystem.ONE_PHASE_TWO_WIRE, 230, one))
                .isNull();
        assertThat(neutral(CodeBasis.NFPA_79, SupplySystem.ONE_PHASE_THREE_WIRE, 240, small))
                .isNull();
    }

    /** Rectangular pulses of 40° on three lines do not overlap: the neutral carries all of them, exactly what is told. */
    @Test
    void shortPulsesReachIt() {
        double[] pulse = pulse(70, 110, _ -> 1);
        assertThat(together(10, pulse, 10, pulse, 10, pulse)).isCloseTo(iec(10, 10, 10), within(1e-9));
    }

    /** Pulses of up to 120° of any shape, each line its own, square waves and sines. */
    @Test
    void noMixtureOfCurrentsExceedsIt() {
        var random = new SplittableRandom(4);
        for (int n = 0; n < 300; n++) {
            double[] amperes = random.doubles(3, 1, 20).toArray();
            double all = together(amperes[0], wave(random), amperes[1], wave(random), amperes[2], wave(random));
            assertThat(all).isLessThanOrEqualTo(iec(amperes) * (1 + 1e-9));
        }
    }

    private interface Shape {
        double at(double degrees);
    }

    private static double[] wave(SplittableRandom random) {
        double from = 30 + random.nextDouble(50);
        double skew = random.nextDouble(-1, 1);
        return switch (random.nextInt(4)) {
            case 0 -> pulse(0, 180, d -> Math.sin(Math.toRadians(d)));
            case 1 -> pulse(0, 180, _ -> 1);
            case 2 -> pulse(from, 180 - from, _ -> 1);
            default ->
                pulse(30, 150, d -> Math.pow(Math.sin(Math.toRadians(1.5 * (d - 30))), 3) * (1 + skew * (d - 90) / 60));
        };
    }

    /** One period of half-wave symmetric current of effective value 1 that flows between two angles of its half period. */
    private static double[] pulse(double from, double to, Shape shape) {
        var wave = new double[SAMPLES];
        double squares = 0;
        for (int k = 0; k < SAMPLES; k++) {
            double degrees = (k + 0.5) * 360 / SAMPLES;
            double half = degrees % 180;
            if (half > from && half < to) {
                wave[k] = (degrees < 180 ? 1 : -1) * shape.at(half);
            }
            squares += wave[k] * wave[k];
        }
        double effective = Math.sqrt(squares / SAMPLES);
        for (int k = 0; k < SAMPLES; k++) {
            wave[k] /= effective;
        }
        return wave;
    }

    /** Effective value of the sum of three currents a third of a period apart. */
    private static double together(double a, double[] first, double b, double[] second, double c, double[] third) {
        double squares = 0;
        for (int k = 0; k < SAMPLES; k++) {
            double sum =
                    a * first[k] + b * second[(k + SAMPLES / 3) % SAMPLES] + c * third[(k + 2 * SAMPLES / 3) % SAMPLES];
            squares += sum * sum;
        }
        return Math.sqrt(squares / SAMPLES);
    }
}
