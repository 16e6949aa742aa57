package io.axiswright.engine.graph;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The components of one record class. Looking them up is slow, and a comparison reads millions: they are looked up once for
 * each class.
 */
public final class Components {

    /** Components that name an element among its siblings, best first. */
    private static final List<String> KEYS = List.of("id", "axis", "circuit", "node", "item", "name", "symbol");

    /** Texts that say of what an element without such a name tells. */
    private static final Set<String> SUBJECTS = Set.of(
            "zone",
            "subject",
            "chain",
            "feedPoint",
            "line",
            "place",
            "safeguard",
            "asker",
            "cable",
            "enclosure",
            "reason");

    /** Names an element that nothing else does. */
    private static final String CLAUSE = "clause";

    /** How sure a source is says nothing of which it is. */
    private static final String CONFIDENCE = "confidence";

    private static final ClassValue<Components> KNOWN = new ClassValue<>() {
        @Override
        protected Components computeValue(Class<?> type) {
            return new Components(type);
        }
    };

    private final List<String> names;
    private final List<Boolean> onTheWire;
    private final List<Method> accessors;
    private final Constructor<?> constructor;
    private final int[] keys;
    private final int[] words;

    private Components(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        names = Arrays.stream(components).map(RecordComponent::getName).toList();
        onTheWire = Arrays.stream(components)
                .map(c -> !c.getAccessor().isAnnotationPresent(JsonIgnore.class))
                .toList();
        accessors = Arrays.stream(components).map(RecordComponent::getAccessor).toList();
        accessors.forEach(accessor -> accessor.setAccessible(true));
        keys = KEYS.stream()
                .mapToInt(names::indexOf)
                .filter(place -> place >= 0 && components[place].getType() == String.class)
                .toArray();
        words = IntStream.range(0, components.length)
                .filter(place -> components[place].getType().isEnum()
                                && !names.get(place).equals(CONFIDENCE)
                        || components[place].getType() == String.class && SUBJECTS.contains(names.get(place)))
                .toArray();
        try {
            constructor = type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("no constructor of " + type, e);
        }
        constructor.setAccessible(true);
    }

    /** Those of a record's class. */
    public static Components of(Object owner) {
        return KNOWN.get(owner.getClass());
    }

    /** How many there are. */
    public int count() {
        return names.size();
    }

    /** The name of one. */
    public String name(int place) {
        return names.get(place);
    }

    /** The place of the one of a name; -1 if there is none. */
    public int place(String name) {
        return names.indexOf(name);
    }

    /** Whether one is part of the wire form. */
    public boolean onTheWire(int place) {
        return onTheWire.get(place);
    }

    /** The value of one. */
    public @Nullable Object get(Object owner, int place) {
        try {
            return accessors.get(place).invoke(owner);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + accessors.get(place), e);
        }
    }

    /** A copy of the record in which one component has another value. */
    public Object with(Object owner, int place, @Nullable Object value) {
        @Nullable Object[] values = new @Nullable Object[names.size()];
        for (int k = 0; k < values.length; k++) {
            values[k] = k == place ? value : get(owner, k);
        }
        try {
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot rebuild " + owner.getClass(), e);
        }
    }

    /** What names the record among its siblings: its id, or the words that say of what kind it is; null if nothing does. */
    public @Nullable String key(Object owner) {
        for (int place : keys) {
            if (get(owner, place) instanceof String text) {
                return text;
            }
        }
        String kind = kind(owner);
        int clause = names.indexOf(CLAUSE);
        return kind == null && clause >= 0 && get(owner, clause) instanceof String text ? text : kind;
    }

    private @Nullable String kind(Object owner) {
        StringBuilder kind = new StringBuilder();
        for (int place : words) {
            Object word = get(owner, place);
            if (word != null) {
                kind.append(kind.isEmpty() ? "" : "-").append(word instanceof Enum<?> name ? lowered(name) : word);
            }
        }
        return kind.isEmpty() ? null : kind.toString();
    }

    private static String lowered(Enum<?> name) {
        return name.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
