package io.axiswright.engine.study;

import io.axiswright.engine.graph.Components;
import io.axiswright.engine.graph.Reach;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** An answer told of another request than the one it was worked out from: its pointers lead there, and its lists follow those there. */
final class Retelling {

    /** Whatever points into the request does so under this name. */
    private static final String POINTER = "pointer";

    /** What is retold: pointers, and lists that follow one of the caller's. */
    private static final Reach<Optional<CallersList>> RETOLD = new Reach<>(Retelling::retold);

    private final UnaryOperator<String> pointer;
    private final Map<CallersList, Map<String, Integer>> order;

    /**
     * A retelling.
     *
     * @param pointer leads from a place in the one request to the same in the other
     * @param order of the lists that stand in another order there: the place of each id
     */
    Retelling(UnaryOperator<String> pointer, Map<CallersList, Map<String, Integer>> order) {
        this.pointer = pointer;
        this.order = order;
    }

    private static @Nullable Optional<CallersList> retold(RecordComponent component) {
        CallersList followed = CallersList.followedBy(component);
        boolean isPointer = component.getName().equals(POINTER) && component.getType() == String.class;
        return followed != null || isPointer ? Optional.ofNullable(followed) : null;
    }

    /** The answer retold. */
    @SuppressWarnings("unchecked") // a copy is of the class of its original
    <T> T of(T answer) {
        return (T) record(answer);
    }

    private Object record(Object owner) {
        Components components = Components.of(owner);
        Object result = owner;
        for (Reach.Way<Optional<CallersList>> way : RETOLD.from(owner)) {
            Object old = components.get(owner, way.place());
            Object next = switch (old) {
                case String text -> pointer(text);
                case List<?> list ->
                    list(list, way.sought() == null ? null : way.sought().orElse(null));
                case Record inner -> record(inner);
                case null, default -> old;
            };
            if (next != old) {
                result = components.with(result, way.place(), next);
            }
        }
        return result;
    }

    private String pointer(String text) {
        String next = pointer.apply(text);
        return next.equals(text) ? text : next;
    }

    private List<?> list(List<?> list, @Nullable CallersList followed) {
        List<Object> next = new ArrayList<>(list.size());
        boolean same = true;
        for (Object element : list) {
            Object retold = element instanceof Record inner ? record(inner) : element;
            same &= retold == element;
            next.add(retold);
        }
        if (followed == null || !order.containsKey(followed)) {
            return same ? list : next;
        }
        Map<String, Integer> places = order.get(followed);
        next.sort(Comparator.comparingInt(element -> followed.place(element, places)));
        return next;
    }
}
