package io.axiswright.engine.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.numeric.Enclosure.Range;
import java.util.SplittableRandom;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

/** Whatever a quantity is inside a rectangle, its enclosure contains it, and so it does with the slopes. */
class EnclosureTest {

    private record Law(String name, DoubleBinaryOperator plain, Enclosed enclosed) {}

    private interface Enclosed {

        Enclosure of(Enclosure x, Enclosure y);
    }

    private static Law of(String name, DoubleBinaryOperator plain, Enclosed enclosed) {
        return new Law(name, plain, enclosed);
    }

    private static final Law[] LAWS = {
        of("sum", (x, y) -> x + 2 * y - 3, (x, y) -> x.plus(y.times(2)).plus(-3)),
        of("product", (x, y) -> x * y, Enclosure::times),
        of("square", (x, y) -> x * x * y, (x, y) -> x.squared().times(y)),
        of(
                "ratio",
                (x, y) -> x / (4 + y * y),
                (x, y) -> x.times(y.squared().plus(4).inverse())),
        of("root", (x, y) -> Math.sqrt(9 + x * y), (x, y) -> x.times(y).plus(9).root()),
        of("sine", (x, y) -> Math.sin(3 * x + y), (x, y) -> x.times(3).plus(y).sine()),
        of(
                "cosine",
                (x, y) -> y * Math.cos(-5 * x),
                (x, y) -> x.times(-5).cosine().times(y)),
        of("magnitude", (x, y) -> Math.abs(x - y), (x, y) -> x.plus(y.times(-1)).magnitude()),
        of(
                "bent",
                (x, y) -> x > y ? 0.7 * (x - y) : 1.4 * (x - y),
                (x, y) -> x.plus(y.times(-1)).bent(1.4, 0.7)),
        of("at least", (x, y) -> Math.max(0.5, x * y), (x, y) -> x.times(y).atLeast(0.5)),
    };

    @Test
    void containsValuesAndSlopes() {
        SplittableRandom random = new SplittableRandom(7);
        for (Law law : LAWS) {
            for (int n = 0; n < 400; n++) {
                double halfX = Math.pow(10, -3 * random.nextDouble());
                double halfY = Math.pow(10, -3 * random.nextDouble());
                double x = 2.8 * random.nextDouble() - 1.4;
                double y = 2.8 * random.nextDouble() - 1.4;
                Enclosure over = law.enclosed().of(variable(x, halfX, true), variable(y, halfY, false));
                double middle = law.plain().applyAsDouble(x, y);
                for (int k = 0; k < 50; k++) {
                    double inX = x + halfX * (2 * random.nextDouble() - 1);
                    double inY = y + halfY * (2 * random.nextDouble() - 1);
                    double value = law.plain().applyAsDouble(inX, inY);
                    assertThat(value).as(law.name()).isBetween(over.low() - 1e-12, over.high() + 1e-12);
                    assertThat(value).as(law.name()).isLessThanOrEqualTo(over.bound(middle, halfX, halfY) + 1e-12);
                    double step = 1e-6;
                    double slope = (law.plain().applyAsDouble(inX + step, inY) - value) / step;
                    assertThat(slope)
                            .as(law.name())
                            .isBetween(over.byX().low() - 1e-4, over.byX().high() + 1e-4);
                }
            }
        }
    }

    /** The narrower the rectangle, the closer the bound: what it has too much over the slopes' own falls with the square. */
    @Test
    void closesAsTheRectangleNarrows() {
        for (Law law : LAWS) {
            double middle = law.plain().applyAsDouble(0.3, 0.9);
            Enclosure point = law.enclosed().of(variable(0.3, 0, true), variable(0.9, 0, false));
            assertThat(point.low()).as(law.name()).isCloseTo(middle, within(1e-14));
            assertThat(point.high()).as(law.name()).isCloseTo(middle, within(1e-14));
            double slope = Math.abs(point.byX().low()) + Math.abs(point.byY().low());
            double wide = excess(law, middle, slope, 1e-2);
            double narrow = excess(law, middle, slope, 1e-3);
            assertThat(narrow).as(law.name()).isLessThanOrEqualTo(wide / 50 + 1e-13);
        }
    }

    private static double excess(Law law, double middle, double slope, double half) {
        Enclosure over = law.enclosed().of(variable(0.3, half, true), variable(0.9, half, false));
        return Math.max(0, over.bound(middle, half, half) - middle - slope * half);
    }

    @Test
    void ofWhatIsUnknownOnlyTheValuesCount() {
        assertThat(Enclosure.between(1, 3).bound(2, 0.1, 0.1)).isEqualTo(3);
        assertThat(Enclosure.between(1, 3).times(Enclosure.of(2)).high()).isEqualTo(6);
    }

    private static Enclosure variable(double middle, double half, boolean first) {
        Range one = new Range(1, 1);
        return new Enclosure(middle - half, middle + half, first ? one : Range.NONE, first ? Range.NONE : one);
    }
}
