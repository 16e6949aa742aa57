package io.axiswright.app.wire;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Dimension;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Unit;
import io.axiswright.engine.quantity.Units;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class RoundTripTest {

    static Stream<Class<?>> types() {
        return Stream.of(Design.class, Catalogue.class, RandomKinds.class);
    }

    @ParameterizedTest
    @MethodSource("types")
    void whatIsWrittenIsReadBackEqual(Class<?> type) {
        for (long seed = 0; seed < 100; seed++) {
            Object written = new RandomRecords(seed).next(type);
            byte[] json = RecordWriter.write(written);
            assertThat((Object) RecordReader.read(json, type))
                    .as("seed %d: %s", seed, new String(json, StandardCharsets.UTF_8))
                    .isEqualTo(written);
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    void whatIsReadBackIsWrittenInTheSameBytes(Class<?> type) {
        for (long seed = 0; seed < 20; seed++) {
            byte[] json = RecordWriter.write(new RandomRecords(seed).next(type));
            byte[] again = RecordWriter.write(RecordReader.read(json, type));
            assertThat(again).as("seed %d", seed).isEqualTo(json);
        }
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyUnitOfEveryDimensionIsRead(Dimension dimension) {
        for (Unit unit : Units.of(dimension)) {
            String json = "{\"value\": 5, \"unit\": \"" + unit.symbol() + "\"}";
            Quantity read = (Quantity) RecordReader.read(json.getBytes(StandardCharsets.UTF_8), dimension.type());
            assertThat(read.si()).isEqualTo(unit.toSi(5));
        }
    }

    @Test
    void aQuantityOfAnyDimensionIsToldByTheUnitOfItsAnswer() {
        assertThat(Arrays.stream(Dimension.values())
                        .map(d -> Units.answerUnit(d).symbol()))
                .doesNotHaveDuplicates();
        for (Dimension dimension : Dimension.values()) {
            Quantity quantity = dimension.of(Math.min(300, dimension.most()));
            byte[] json = RecordWriter.write(quantity);
            assertThat(RecordReader.read(json, Quantity.class)).isEqualTo(quantity);
        }
    }

    /** 2.5 mm² and 4.1 m² as a reader expects them; 5.26 mm² must not become 5.260000000000001. */
    @Test
    void theAreaOfAConductorIsToldInSquareMillimetres() {
        assertThat(new String(RecordWriter.write(new ConductorSize("2.5 mm2").area()), StandardCharsets.UTF_8))
                .isEqualTo("{\"value\":2.5,\"unit\":\"mm2\"}");
        assertThat(new String(RecordWriter.write(new Area(5.26e-6)), StandardCharsets.UTF_8))
                .isEqualTo("{\"value\":5.26,\"unit\":\"mm2\"}");
        assertThat(new String(RecordWriter.write(new Area(4.1)), StandardCharsets.UTF_8))
                .isEqualTo("{\"value\":4.1,\"unit\":\"m2\"}");
    }

    @Test
    void aTemperatureIsAnsweredAsItWasSent() {
        for (int tenths = -600; tenths <= 6000; tenths++) {
            String value = Double.toString(tenths / 10.0);
            String json = "{\"value\":" + value + ",\"unit\":\"Cel\"}";
            Quantity read = RecordReader.read(json.getBytes(StandardCharsets.UTF_8), Quantity.class);
            assertThat(new String(RecordWriter.write(read), StandardCharsets.UTF_8))
                    .isEqualTo(json);
        }
    }
}
