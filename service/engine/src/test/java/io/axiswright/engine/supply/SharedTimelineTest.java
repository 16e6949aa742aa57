package io.axiswright.engine.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;

/** Loads whose cycles keep step heat what they share by the sum of what they draw at each moment. */
class SharedTimelineTest {

    /** Constant currents for the parts of a period, ending at the given times. */
    private static CurrentCourse steps(double... endsAndAmperes) {
        var pieces = new ArrayList<CurrentCourse.Piece>();
        for (int k = 0; k < endsAndAmperes.length; k += 2) {
            pieces.add(new CurrentCourse.Piece(endsAndAmperes[k], Polynomial.of(endsAndAmperes[k + 1])));
        }
        return new CurrentCourse(pieces);
    }

    private static SupplyLoad load(String id, CurrentCourse course) {
        var load = Plant.load(id, LoadUse.DRIVE, Feed.THREE_PHASE, 400, 10, course.rms(), 16, 1, 1e4, 0, null);
        return Copies.with(load, "course", course);
    }

    private static double feeder(CodeBasis basis, SupplyLoad... loads) {
        return new SupplySizing()
                .size(Plant.request(
                        basis,
                        Plant.mains(SupplySystem.THREE_PHASE_THREE_WIRE, 400),
                        List.of(loads),
                        Plant.breakers(basis, 10, 16, 20, 25, 32, 40)))
                .feeder()
                .designCurrent()
                .si();
    }

    /**
     * By hand: 10 A for the first or the second half of a second. In step √(20² · 0.5) = 14.142 A; in turn 10 A all the time; half
     * overlapping √((10² + 20² + 10²)/4) = 12.247 A.
     */
    @Test
    void byHand() {
        var first = load("a", steps(0.5, 10, 1, 0));
        var same = load("b", steps(0.5, 10, 1, 0));
        var second = load("c", steps(0.5, 0, 1, 10));
        var between = load("d", steps(0.25, 0, 0.75, 10, 1, 0));
        assertThat(feeder(CodeBasis.IEC_60204_1, first, same)).isCloseTo(Math.sqrt(200), within(1e-9));
        assertThat(feeder(CodeBasis.IEC_60204_1, first, second)).isCloseTo(10, within(1e-9));
        assertThat(feeder(CodeBasis.IEC_60204_1, first, between)).isCloseTo(Math.sqrt(150), within(1e-9));
    }

    /** Cycles of 1 s and 0.9 s do not keep step: √50 A each, added up. */
    @Test
    void unequalPeriodsAddUp() {
        var one = load("a", steps(0.5, 10, 1, 0));
        var other = load("b", steps(0.45, 0, 0.9, 10));
        assertThat(feeder(CodeBasis.IEC_60204_1, one, other)).isCloseTo(2 * Math.sqrt(50), within(1e-9));
    }

    /** 430.24 knows no diversity by cycles: 1.25 · 10 + 10 A. */
    @Test
    void northAmericaAllowsNone() {
        assertThat(feeder(CodeBasis.NFPA_79, load("a", steps(0.5, 10, 1, 0)), load("c", steps(0.5, 0, 1, 10))))
                .isCloseTo(22.5, within(1e-9));
    }

    /** What a load passes on to its DC bus beyond its own course comes on top. */
    @Test
    void whatIsBeyondTheCourseIsAddedUp() {
        var first = load("a", steps(0.5, 10, 1, 0));
        var second = load("c", steps(0.5, 0, 1, 10)).passingOn(0, 3, 0);
        assertThat(feeder(CodeBasis.IEC_60204_1, first, second)).isCloseTo(13, within(1e-9));
    }

    /** Random polynomials on random pieces, by Gauss and Legendre of a library over the union of their ends. */
    @Test
    void agreesWithALibrary() {
        var random = new SplittableRandom(11);
        for (int n = 0; n < 200; n++) {
            double period = random.nextDouble(0.2, 5);
            var loads = new ArrayList<SupplyLoad>();
            int count = random.nextInt(1, 9);
            for (int k = 0; k < count; k++) {
                loads.add(load("l" + k, course(random, period)));
            }
            double reference = Math.sqrt(squares(loads, period) / period);
            assertThat(SharedTimeline.thermal(loads)).isCloseTo(reference, within(1e-9 * reference));
            assertThat(reference)
                    .isLessThanOrEqualTo(loads.stream()
                                    .mapToDouble(l -> l.thermalCurrent().si())
                                    .sum()
                            * (1 + 1e-12));
        }
    }

    private static CurrentCourse course(SplittableRandom random, double period) {
        double[] ends = random.doubles(random.nextInt(0, 7), 0, period).sorted().toArray();
        ends = Arrays.copyOf(ends, ends.length + 1);
        ends[ends.length - 1] = period;
        var pieces = new ArrayList<CurrentCourse.Piece>();
        for (double end : ends) {
            pieces.add(new CurrentCourse.Piece(
                    end,
                    Polynomial.of(random.doubles(random.nextInt(1, 5), 0, 10).toArray())));
        }
        return new CurrentCourse(pieces);
    }

    private static double squares(List<SupplyLoad> loads, double period) {
        var ends = new TreeSet<Double>();
        loads.forEach(l -> ends.addAll(Objects.requireNonNull(l.course()).pieces().stream()
                .map(CurrentCourse.Piece::end)
                .toList()));
        var factory = new GaussIntegratorFactory();
        double sum = 0;
        double from = 0;
        for (double to : ends) {
            sum += factory.legendre(8, from, to).integrate(t -> {
                double all = loads.stream().mapToDouble(l -> at(l, t)).sum();
                return all * all;
            });
            from = to;
        }
        assertThat(from).isEqualTo(period);
        return sum;
    }

    private static double at(SupplyLoad load, double time) {
        double start = 0;
        for (CurrentCourse.Piece piece : Objects.requireNonNull(load.course()).pieces()) {
            if (time <= piece.end()) {
                return piece.amperes().at(time - start);
            }
            start = piece.end();
        }
        throw new IllegalStateException("beyond the course");
    }
}
