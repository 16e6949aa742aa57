package io.axiswright.app.wire;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
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
                .map(Component::new)
                .toArray(Component[]::new);
    }

    @Override
    public void write(Object value, JsonGenerator json) {
        json.writeStartObject();
        kind.forEach(json::writeStringProperty);
        for (Component component : components) {
            component.write(value, json);
        }
        json.writeEndObject();
    }

    /** A component. How it was written last is kept without a lock: whichever thread's was last, it is whole. */
    private static final class Component {

        private final SerializedString name;
        private final Function<Object, @Nullable Object> accessor;
        private LastWriting last = LastWriting.NONE;

        Component(RecordComponent component) {
            name = new SerializedString(component.getName());
            accessor = Accessors.of(component);
        }

        void write(Object owner, JsonGenerator json) {
            Object part = accessor.apply(owner);
            if (part != null) {
                json.writeName(name);
                LastWriting known = last.orOf(part);
                if (known != last) {
                    last = known;
                }
                known.writing().write(part, json);
            }
        }
    }
}
