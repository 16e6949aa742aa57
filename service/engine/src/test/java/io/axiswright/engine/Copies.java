package io.axiswright.engine;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Copies of records that differ in one component, so that a test shows nothing but the difference. */
public final class Copies {

    private Copies() {}

    /** The record with another value in the component of that name; fails if there is none. */
    @SuppressWarnings("unchecked") // the constructor of a record's class makes records of that class
    public static <T extends Record> T with(T record, String name, @Nullable Object value) {
        RecordComponent[] components = record.getClass().getRecordComponents();
        if (Arrays.stream(components).noneMatch(c -> c.getName().equals(name))) {
            throw new IllegalArgumentException(record.getClass() + " has no " + name);
        }
        try {
            @Nullable Object[] values = new @Nullable Object[components.length];
            for (int k = 0; k < values.length; k++) {
                values[k] = components[k].getName().equals(name)
                        ? value
                        : components[k].getAccessor().invoke(record);
            }
            Constructor<?> constructor = record.getClass()
                    .getDeclaredConstructor(Arrays.stream(components)
                            .map(RecordComponent::getType)
                            .toArray(Class<?>[]::new));
            return (T) constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
