package io.axiswright.app.wire;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A record: its members on the wire, and how to make one of their values. Members are looked up late, so that records may nest in themselves. */
public final class RecordShape implements Shape {

    /**
     * A record component.
     *
     * @param name its name
     * @param shape what it looks like
     * @param presence whether it may be absent, and what it is then
     * @param onTheWire whether it is read and written at all
     */
    public record Member(String name, Shape shape, Presence presence, boolean onTheWire) {}

    /** Whether a member may be absent, and what it is then. */
    public enum Presence {
        /** It must be there. */
        REQUIRED,
        /** Absent means none. */
        NONE,
        /** Absent means false. */
        FALSE,
        /** Absent means an empty list. */
        EMPTY;

        @Nullable
        Object absent() {
            return switch (this) {
                case REQUIRED, NONE -> null;
                case FALSE -> Boolean.FALSE;
                case EMPTY -> List.of();
            };
        }
    }

    private record Layout(List<Member> members, Map<String, Integer> index, String accepted) {}

    private final Class<?> type;
    private final Type genericType;
    private final @Nullable String discriminator;
    private final MethodHandle constructor;
    private volatile @Nullable Layout layout;

    RecordShape(Class<?> type, @Nullable String discriminator) {
        this(type, type, discriminator);
    }

    /** A record whose type parameters the generic type fills in. */
    RecordShape(Class<?> type, Type genericType, @Nullable String discriminator) {
        this.type = type;
        this.genericType = genericType;
        this.discriminator = discriminator;
        this.constructor = constructor(type);
    }

    /** The record class. */
    public Class<?> type() {
        return type;
    }

    /** The record class with its type arguments; the class itself if it has none. */
    public Type genericType() {
        return genericType;
    }

    /** Its members, in the order of its components. */
    public List<Member> members() {
        return layout().members;
    }

    /** The place of a member by its name on the wire; null if there is none. */
    @Nullable
    Integer index(String name) {
        return layout().index.get(name);
    }

    /** The names it accepts, for messages. */
    String accepted() {
        return layout().accepted;
    }

    /** Makes the record; whatever its constructor throws comes through. */
    Object make(@Nullable Object[] values) {
        try {
            return (Object) constructor.invokeExact(values);
        } catch (RuntimeException | Error e) {
            throw e;
        } catch (Throwable e) {
            throw new IllegalStateException(e);
        }
    }

    private Layout layout() {
        Layout known = layout;
        if (known == null) {
            known = lookUp();
            layout = known;
        }
        return known;
    }

    private Layout lookUp() {
        List<Member> members = Arrays.stream(type.getRecordComponents())
                .map(component -> Shapes.member(component, genericType))
                .toList();
        var index = new HashMap<String, Integer>();
        for (int k = 0; k < members.size(); k++) {
            if (members.get(k).onTheWire()) {
                index.put(members.get(k).name(), k);
            }
        }
        String accepted = Stream.concat(
                        Stream.ofNullable(discriminator),
                        members.stream().filter(Member::onTheWire).map(Member::name))
                .collect(Collectors.joining(", "));
        return new Layout(members, index, accepted.isEmpty() ? "no members" : "the members " + accepted);
    }

    private static MethodHandle constructor(Class<?> type) {
        Class<?>[] parameters = Arrays.stream(type.getRecordComponents())
                .map(component -> component.getType())
                .toArray(Class<?>[]::new);
        try {
            return MethodHandles.privateLookupIn(type, MethodHandles.lookup())
                    .findConstructor(type, MethodType.methodType(void.class, parameters))
                    .asSpreader(Object[].class, parameters.length)
                    .asType(MethodType.methodType(Object.class, Object[].class));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
