package io.axiswright.engine.standard;

import static io.axiswright.engine.design.CodeBasis.IEC_60204_1;
import static io.axiswright.engine.design.CodeBasis.NFPA_79;
import static io.axiswright.engine.design.DeviceKind.BREAKER;
import static io.axiswright.engine.design.DeviceKind.FUSE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.quantity.Current;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DeviceRatingsTest {

    private static double up(CodeBasis basis, DeviceKind kind, double amperes) {
        return DeviceRatings.nextUp(basis, kind, new Current(amperes))
                .orElseThrow()
                .value()
                .si();
    }

    private static double down(CodeBasis basis, DeviceKind kind, double amperes) {
        return DeviceRatings.nextDown(basis, kind, new Current(amperes))
                .orElseThrow()
                .value()
                .si();
    }

    /** Forum examples B1, B2 and E3 of North American practice: 55 so 60; 41.75 so 45; 50.1 so 60; 110 is standard itself. */
    @Test
    void nextUp() {
        assertThat(up(NFPA_79, BREAKER, 55)).isEqualTo(60);
        assertThat(up(NFPA_79, BREAKER, 41.75)).isEqualTo(45);
        assertThat(up(NFPA_79, FUSE, 50.1)).isEqualTo(60);
        assertThat(up(NFPA_79, BREAKER, 44.0 * 2.5)).isEqualTo(110);
        assertThat(up(NFPA_79, FUSE, 600.5)).isEqualTo(601);
        assertThat(up(NFPA_79, BREAKER, 600.5)).isEqualTo(700);
        assertThat(up(IEC_60204_1, BREAKER, 26.087)).isEqualTo(32);
        assertThat(up(IEC_60204_1, BREAKER, 126)).isEqualTo(160);
        assertThat(up(IEC_60204_1, FUSE, 0.1)).isEqualTo(2);
    }

    /** ecmweb.com, motor feeder: 84 A rounds down to 80 A (430.62(A)). */
    @Test
    void nextDown() {
        assertThat(down(NFPA_79, BREAKER, 84)).isEqualTo(80);
        assertThat(down(NFPA_79, BREAKER, 80)).isEqualTo(80);
        assertThat(down(IEC_60204_1, FUSE, 15.9)).isEqualTo(12);
    }

    /** 13.6 · 1.25 is 17 to everybody but floating-point arithmetic; so is 0.1 + 0.2. */
    @Test
    void roundingOfArithmeticCostsNoRating() {
        assertThat(up(NFPA_79, FUSE, (0.1 + 0.2) * 10)).isEqualTo(3);
        assertThat(up(NFPA_79, BREAKER, 20 * (1 + 1e-12))).isEqualTo(20);
        assertThat(up(NFPA_79, BREAKER, 20.001)).isEqualTo(25);
    }

    @Test
    void outsideTheSeriesThereIsNoAnswer() {
        assertThat(DeviceRatings.nextUp(NFPA_79, BREAKER, new Current(6001))).isEmpty();
        assertThat(DeviceRatings.nextDown(NFPA_79, BREAKER, new Current(9.9))).isEmpty();
        assertThat(DeviceRatings.nextUp(IEC_60204_1, FUSE, new Current(1251))).isEmpty();
    }

    @Test
    void seriesAscend() {
        for (CodeBasis basis : CodeBasis.values()) {
            for (DeviceKind kind : DeviceKind.values()) {
                assertThat(DeviceRatings.of(basis, kind).stream()
                                .map(r -> r.value().si()))
                        .isSorted()
                        .doesNotHaveDuplicates()
                        .hasSizeGreaterThan(20);
            }
        }
    }

    /** IEC 60898-1, IEC 60947-2, IEC 60269-1 (from memory). For gG from 16 A Iz ≥ 1.103 In, below 1.310 In. */
    @ParameterizedTest
    @CsvSource({"BREAKER,16,1.0", "BREAKER,160,0.8966", "FUSE,16,1.1034", "FUSE,12,1.3103", "FUSE,4,1.4483"})
    void ampacityThatTheTrippingCurrentAsksFor(DeviceKind kind, double rating, double ampacityPerRating) {
        double multiple = ConventionalCurrents.multiple(kind, new Current(rating))
                .orElseThrow()
                .value()
                .si();
        assertThat(multiple / 1.45).isCloseTo(ampacityPerRating, within(1e-4));
    }
}
