package io.axiswright.app.wire;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Temperature;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

class RecordWriterTest {

    private record Numbers(double real, int whole, long wide, BigDecimal decimal) {}

    private record Words(String text, @Nullable String absent, boolean truth, List<Integer> list) {}

    private record Own(Length length, Temperature ambient, ConductorSize size, Money price, Polynomial curve) {}

    private record Tokens(UUID id, Instant at, Map<String, Length> lengths, Map<String, Length> none) {}

    private static String json(Object value) {
        return new String(RecordWriter.write(value), StandardCharsets.UTF_8);
    }

    @Test
    void componentsStandInTheirOrderAndNothingForNull() {
        assertThat(json(new Words("a", null, true, List.of(1, 2))))
                .isEqualTo("{\"text\":\"a\",\"truth\":true,\"list\":[1,2]}");
        assertThat(json(new Words("", "b", false, List.of())))
                .isEqualTo("{\"text\":\"\",\"absent\":\"b\",\"truth\":false,\"list\":[]}");
        assertThat(json(new Numbers(1, -2, 3_000_000_000L, new BigDecimal("4.50"))))
                .isEqualTo("{\"real\":1.0,\"whole\":-2,\"wide\":3000000000,\"decimal\":4.50}");
    }

    @Test
    void theEnginesOwnTypesHaveFormsOfTheirOwn() {
        var own = new Own(
                new Length(0.25),
                new Temperature(313.15),
                new ConductorSize("2.5 mm2"),
                new Money(new BigDecimal("12.30"), "EUR"),
                Polynomial.of(1, 0.5));
        assertThat(json(own))
                .isEqualTo(
                        "{\"length\":{\"value\":0.25,\"unit\":\"m\"},\"ambient\":{\"value\":40.0,\"unit\":\"Cel\"},"
                                + "\"size\":\"2.5 mm2\",\"price\":{\"amount\":\"12.30\",\"currency\":\"EUR\"},\"curve\":[1.0,0.5]}");
        var id = new UUID(1, 2);
        assertThat(json(new Tokens(id, Instant.EPOCH, Map.of("a", new Length(3)), Map.of())))
                .isEqualTo("{\"id\":\"" + id + "\",\"at\":\"1970-01-01T00:00:00Z\","
                        + "\"lengths\":{\"a\":{\"value\":3.0,\"unit\":\"m\"}},\"none\":{}}");
    }

    @Test
    void everyCharacterIsWrittenAsTheLibraryWritesIt() {
        var mapper = JsonMapper.shared();
        for (int c = 0; c < 0x11000; c++) {
            if (c < Character.MIN_SURROGATE || c > Character.MAX_SURROGATE) {
                String text = "a" + Character.toString(c) + "\"z";
                assertThat(json(text)).as("U+%04X", c).isEqualTo(mapper.writeValueAsString(text));
            }
        }
    }

    @Test
    void everyNumberIsWrittenAsJavaWritesIt() {
        long seed = 11;
        var random = new SplittableRandom(seed);
        for (int k = 0; k < 100_000; k++) {
            double value = switch (k % 4) {
                case 0 -> random.nextInt(-20_000_000, 20_000_000);
                case 1 -> random.nextInt(-2_000, 2_000) / 100.0;
                case 2 -> random.nextInt(-3, 4) * 0.0 + random.nextInt(-3, 4);
                default -> Double.longBitsToDouble(random.nextLong());
            };
            if (Double.isFinite(value)) {
                assertThat(json(value)).as("seed %d", seed).isEqualTo(Double.toString(value));
            }
        }
        assertThat(json(-0.0)).isEqualTo("-0.0");
    }

    @Test
    void aLongAnswerIsWrittenWhole() {
        List<String> words = java.util.Collections.nCopies(20_000, "zwölf \u0001 Kreise");
        assertThat(JsonMapper.shared().readValue(json(words), List.class)).isEqualTo(words);
    }
}
