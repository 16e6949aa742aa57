package io.axiswright.engine.graph;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Which components of records are sought, or hold records that have such a component anywhere below: who looks for them need not look
 * into the rest. That follows from the classes alone and is worked out once for each.
 *
 * @param <S> what is known of a component that is sought
 */
public final class Reach<S> {

    /**
     * A component worth looking into.
     *
     * @param place its place among the components of the record
     * @param name its name
     * @param sought what is known of it, if it is one of those sought itself
     */
    public record Way<S>(int place, String name, @Nullable S sought) {}

    private final Function<RecordComponent, @Nullable S> sought;
    private final ClassValue<List<Way<S>>> ways = new ClassValue<>() {
        @Override
        protected List<Way<S>> computeValue(Class<?> type) {
            return ways(type);
        }
    };

    /**
     * The reach of some components.
     *
     * @param sought tells what is known of a component; null of those that are not sought
     */
    public Reach(Function<RecordComponent, @Nullable S> sought) {
        this.sought = sought;
    }

    /** The components of a record worth looking into. */
    public List<Way<S>> from(Object owner) {
        return ways.get(owner.getClass());
    }

    private List<Way<S>> ways(Class<?> type) {
        List<Way<S>> found = new ArrayList<>();
        RecordComponent[] components = type.getRecordComponents();
        for (int k = 0; k < components.length; k++) {
            S itself = sought.apply(components[k]);
            if (itself != null || leadsOn(components[k].getGenericType(), new HashSet<>())) {
                found.add(new Way<>(k, components[k].getName(), itself));
            }
        }
        return List.copyOf(found);
    }

    private boolean leadsOn(Type type, Set<Class<?>> seen) {
        return switch (type) {
            case ParameterizedType list ->
                Arrays.stream(list.getActualTypeArguments()).anyMatch(element -> leadsOn(element, seen));
            case WildcardType some -> Arrays.stream(some.getUpperBounds()).anyMatch(bound -> leadsOn(bound, seen));
            case Class<?> one when !seen.add(one) -> false;
            case Class<?> one
            when one.isRecord() ->
                Arrays.stream(one.getRecordComponents())
                        .anyMatch(c -> sought.apply(c) != null || leadsOn(c.getGenericType(), seen));
            case Class<?> one
            when one.isSealed() -> Arrays.stream(one.getPermittedSubclasses()).anyMatch(kind -> leadsOn(kind, seen));
            default -> false;
        };
    }
}
