package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.numeric.Polynomial;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A crank whose shaft stands off the slider's line, against its geometry. */
class OffsetCrankTest {

    private static final long SEED = 11;

    private static CrankEffort crank(double r, double l, double e, double mass, double coulomb) {
        return new CrankEffort(r, l, e, mass, 0, coulomb, 0, 0);
    }

    /** The slider's place off the shaft along its line, by Pythagoras: r·cos + sqrt(l² − (r·sin − e)²). */
    private static double place(double r, double l, double e, double angle) {
        double off = r * Math.sin(angle) - e;
        return r * Math.cos(angle) + Math.sqrt(l * l - off * off);
    }

    /** Lever = −d(place)/d(angle), and the inertial torque at constant speed m·x'·x''·w², by central differences. */
    @Test
    void leverAndInertiaAreDerivativesOfThePlace() {
        for (int run = 0; run < 200; run++) {
            var random = new SplittableRandom(SEED + run);
            double r = random.nextDouble(0.05, 0.2);
            double l = r * random.nextDouble(1.6, 5);
            double e = r * random.nextDouble(-0.55, 0.55);
            double angle = random.nextDouble(-7, 7);
            double step = 1e-4;
            double before = place(r, l, e, angle - step);
            double here = place(r, l, e, angle);
            double after = place(r, l, e, angle + step);
            CrankEffort crank = crank(r, l, e, 8, 0);
            double way = crank.lever(angle);
            assertThat(way).as("run %d", run).isCloseTo((before - after) / 2 / step, within(1e-6));
            var turning = new LoadMotion(Polynomial.of(angle, 20), 1e-3, 1);
            double torque = crank.moving(turning).getFirst().torque().at(0);
            assertThat(torque)
                    .as("run %d", run)
                    .isCloseTo(8 * way * (2 * here - before - after) / step / step * 400, within(2e-2));
        }
    }

    /**
     * Stretched and folded, crank and rod lie in one line with the shaft: the slider is sqrt((l + r)² − e²) and
     * sqrt((l − r)² − e²) off. For r 0.1, l 0.3, e 0.06 m: 0.395474 and 0.190788, the stroke 0.204686 m, more than 2·r. Against
     * a friction of 50 N a whole turn works 2·50·0.204686 = 20.4686 J.
     */
    @Test
    void strokeByThePythagoreanTheorem() {
        double stroke = Math.sqrt(0.16 - 0.0036) - Math.sqrt(0.04 - 0.0036);
        assertThat(stroke).isCloseTo(0.204686, within(1e-6));
        CrankEffort crank = crank(0.1, 0.3, 0.06, 5, 50);
        double out = Math.asin(0.06 / 0.4);
        double in = Math.PI + Math.asin(0.06 / 0.2);
        assertThat(crank.lever(out)).isCloseTo(0, within(1e-15));
        assertThat(crank.lever(in)).isCloseTo(0, within(1e-15));
        double swept = 0;
        for (ShaftPiece piece : crank.levers(new LoadMotion(Polynomial.of(out, 1), in - out, 1))) {
            swept += piece.torque().integral(0, piece.duration());
        }
        assertThat(swept).isCloseTo(stroke, within(1e-10));
        for (double direction : new double[] {1, -1}) {
            double work = 0;
            for (ShaftPiece piece :
                    crank.moving(new LoadMotion(Polynomial.of(0.5, direction), 2 * Math.PI, direction))) {
                work += direction * piece.torque().integral(0, piece.duration());
            }
            assertThat(work).isCloseTo(2 * 50 * stroke, within(1e-8));
        }
    }

    /**
     * An offset makes the way out longer than the way back: by hand, with r 0.1, l 0.3, e 0.06 m the crank turns π + asin(0.3) −
     * asin(0.15) = 3.2957 rad one way and 2.9875 the other.
     */
    @Test
    void quickReturn() {
        CrankEffort crank = crank(0.1, 0.3, 0.06, 5, 0);
        double out = Math.asin(0.15);
        double in = Math.PI + Math.asin(0.3);
        assertThat(in - out).isCloseTo(3.2957, within(5e-5));
        for (int k = 1; k < 100; k++) {
            assertThat(crank.lever(out + (in - out) * k / 100)).isPositive();
            assertThat(crank.lever(in + (out + 2 * Math.PI - in) * k / 100)).isNegative();
        }
    }
}
