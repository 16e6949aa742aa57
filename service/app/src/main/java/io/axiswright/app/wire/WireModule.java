package io.axiswright.app.wire;

import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.io.SerializedString;
import tools.jackson.databind.BeanDescription;
import tools.jackson.databind.SerializationConfig;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.BeanPropertyWriter;
import tools.jackson.databind.ser.ValueSerializerModifier;
import tools.jackson.databind.ser.std.StdSerializer;

/** How the engine's own types are written. */
final class WireModule extends SimpleModule {

    private static final long serialVersionUID = 1L;

    /** Answers hold hundreds of quantities: their names are encoded once. */
    private static final SerializedString VALUE = new SerializedString("value");

    private static final SerializedString UNIT = new SerializedString("unit");

    WireModule() {
        super("axiswright-wire");
        add(Quantity.class, (quantity, json) -> {
            json.writeStartObject();
            json.writeName(VALUE);
            json.writeNumber(Readings.of(quantity));
            json.writeName(UNIT);
            json.writeString(Readings.unit(quantity));
            json.writeEndObject();
        });
        add(Money.class, (money, json) -> {
            json.writeStartObject();
            json.writeStringProperty("amount", money.amount().toPlainString());
            json.writeStringProperty("currency", money.currency());
            json.writeEndObject();
        });
        add(ConductorSize.class, (size, json) -> json.writeString(size.label()));
        add(FindingCode.class, (code, json) -> json.writeString(code.code()));
        add(Polynomial.class, (polynomial, json) -> {
            json.writeStartArray();
            for (int power = 0; power <= polynomial.degree(); power++) {
                json.writeNumber(polynomial.coefficient(power));
            }
            json.writeEndArray();
        });
        setSerializerModifier(new ComponentsOnly());
    }

    private <T> void add(Class<T> type, BiConsumer<T, JsonGenerator> write) {
        addSerializer(type, new Writer<>(type, write));
    }

    private static final class Writer<T> extends StdSerializer<T> {

        private final BiConsumer<T, JsonGenerator> write;

        Writer(Class<T> type, BiConsumer<T, JsonGenerator> write) {
            super(type);
            this.write = write;
        }

        @Override
        public void serialize(T value, JsonGenerator json, SerializationContext context) {
            write.accept(value, json);
        }
    }

    /** A record is its components in their order; other accessors of it are not data. */
    private static final class ComponentsOnly extends ValueSerializerModifier {

        private static final long serialVersionUID = 1L;

        @Override
        public List<BeanPropertyWriter> orderProperties(
                SerializationConfig config, BeanDescription.Supplier bean, List<BeanPropertyWriter> properties) {
            if (!bean.getBeanClass().isRecord()) {
                return properties;
            }
            Map<String, BeanPropertyWriter> byName =
                    properties.stream().collect(Collectors.toMap(BeanPropertyWriter::getName, Function.identity()));
            return Arrays.stream(bean.getBeanClass().getRecordComponents())
                    .map(RecordComponent::getName)
                    .map(byName::get)
                    .filter(Objects::nonNull)
                    .toList();
        }
    }
}
