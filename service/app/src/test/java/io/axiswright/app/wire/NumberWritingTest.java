package io.axiswright.app.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringWriter;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.json.JsonMapper;

/** Expected values: {@link Double#toString(double)}, whose form the Java SE 25 API fixes (shortest decimal that reads back). */
class NumberWritingTest {

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    @ParameterizedTest
    @ValueSource(
            doubles = {
                0,
                -0.0,
                1,
                -1,
                0.1,
                -0.25,
                10,
                100.5,
                0.001,
                0.0009,
                0.0010000000000000002,
                0.12345,
                400.0001,
                9999999.9999,
                9999999,
                10000000,
                -9999999.5,
                12.0500,
                0.30000000000000004,
                1e-300,
                1.7976931348623157e308
            })
    void aNumberIsWrittenAsItsShortestDecimal(double value) {
        assertThat(written(value)).isEqualTo(Double.toString(value));
    }

    @Test
    void decimalsOfEverySizeAndTheirNeighboursAreWrittenAsTheirShortestDecimal() {
        var random = new SplittableRandom(20261128);
        for (int k = 0; k < 200_000; k++) {
            double power = Math.pow(10, random.nextInt(9));
            double value = random.nextLong(-1_000_000_000_000L, 1_000_000_000_000L) / power;
            for (double near : new double[] {value, Math.rint(value), Math.nextUp(value), Math.nextDown(value)}) {
                assertThat(written(near)).isEqualTo(Double.toString(near));
            }
        }
    }

    private static String written(double value) {
        var text = new StringWriter();
        try (JsonGenerator json = MAPPER.createGenerator(text)) {
            NumberWriting.write(value, json);
        }
        return text.toString();
    }
}
