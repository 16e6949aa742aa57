package io.axiswright.engine.quantity;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityTest {

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void refusesWhatIsNoNumber(Dimension dimension) {
        for (double nonsense : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatThrownBy(() -> dimension.of(nonsense)).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
