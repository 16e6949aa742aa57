package io.axiswright.app.wire;

import com.fasterxml.jackson.annotation.JsonIgnore;
import io.axiswright.engine.quantity.Quantity;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.io.SerializedString;

/** Writes the records of one class: their kind, where they are one of a choice, then their components that are not null. */
final class RecordWriting implements Writing {

    private final Map<String, String> kind;
    private final Component[] components;

    RecordWriting(Class<?> type) {
        kind = Shapes.kindMember(type);
        components = Arrays.stream(type.getRecordComponents())
                .filter(component -> !component.getAccessor().isAnnotationPresent(JsonIgnore.class))
                .map(Component::of)
                .toArray(Component[]::new);
    }

    @Override
    public void write(Object value, JsonGenerator json) {
        json.writeStartObject();
        kind.forEach(json::writeStringProperty);
        for (Component component : components) {
            Object part = component.of(value);
            if (part != null) {
                json.writeName(component.name());
                Writing known = component.writing();
                (known == null ? Writings.of(part.getClass()) : known).write(part, json);
            }
        }
        json.writeEndObject();
    }

    /**
     * A component.
     *
     * @param name its name
     * @param accessor takes it from a record
     * @param writing how it is written, if its declared type leaves no choice and cannot nest in itself, as records may
     */
    private record Component(
            SerializedString name,
            MethodHandle accessor,
            @Nullable Writing writing) {

        static Component of(RecordComponent component) {
            Class<?> type = component.getType();
            boolean leaf = Modifier.isFinal(type.getModifiers())
                    && !type.isPrimitive()
                    && (!type.isRecord() || Quantity.class.isAssignableFrom(type));
            return new Component(
                    new SerializedString(component.getName()), accessor(component), leaf ? Writings.of(type) : null);
        }

        private static MethodHandle accessor(RecordComponent component) {
            try {
                return MethodHandles.privateLookupIn(component.getDeclaringRecord(), MethodHandles.lookup())
                        .unreflect(component.getAccessor())
                        .asType(MethodType.methodType(Object.class, Object.class));
            } catch (IllegalAccessException e) {
                throw new IllegalStateException(e);
            }
        }

        @Nullable
        Object of(Object owner) {
            try {
                return (Object) accessor.invokeExact(owner);
            } catch (RuntimeException | Error e) {
                throw e;
            } catch (Throwable e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
