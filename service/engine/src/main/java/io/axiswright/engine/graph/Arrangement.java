package io.axiswright.engine.graph;

import io.axiswright.engine.quantity.AnyOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A record graph in which every list of {@link AnyOrder} stands in the order of its content, and the way back from places in it to those
 * in the graph as it was. Graphs that differ in nothing but the order of such lists have the same arrangement.
 */
public final class Arrangement<T extends Record> {

    private static final Reach<AnyOrder> LISTS = new Reach<>(component -> component.getAnnotation(AnyOrder.class));

    /**
     * What stood elsewhere, at a place and below.
     *
     * @param before of a list that was in another order: where each element stood
     * @param below by the token that leads there now; only what differs
     */
    private record Moves(int @Nullable [] before, Map<String, Moves> below) {}

    /** A value arranged, and what moved in it, if anything did. */
    private record Arranged(Object value, @Nullable Moves moves) {}

    private final T value;
    private final @Nullable Moves moves;

    private Arrangement(T value, @Nullable Moves moves) {
        this.value = value;
        this.moves = moves;
    }

    /** The arrangement of a graph. */
    @SuppressWarnings("unchecked") // a copy is of the class of its original
    public static <T extends Record> Arrangement<T> of(T graph) {
        Arranged arranged = record(graph);
        return new Arrangement<>((T) arranged.value(), arranged.moves());
    }

    /** The graph arranged; the very same object where nothing had to move. */
    public T value() {
        return value;
    }

    /** Whether all stands as it stood. */
    public boolean isAsBefore() {
        return moves == null;
    }

    /** JSON Pointer, in the graph as it was, to what a pointer leads to here; it may lead on to what is missing. */
    public String before(String pointer) {
        if (moves == null) {
            return pointer;
        }
        var place = new StringBuilder();
        Moves here = moves;
        int end = 0;
        while (here != null && end < pointer.length()) {
            int start = end + 1;
            int next = pointer.indexOf('/', start);
            end = next < 0 ? pointer.length() : next;
            String token = pointer.substring(start, end);
            place.append('/').append(here.before() == null ? token : here.before()[Integer.parseInt(token)]);
            here = here.below().get(token);
        }
        return place.append(pointer, end, pointer.length()).toString();
    }

    private static Arranged record(Record owner) {
        Record result = owner;
        Map<String, Moves> below = new HashMap<>();
        for (Reach.Way<AnyOrder> way : LISTS.from(owner)) {
            Object old = Components.of(owner).get(owner, way.place());
            if (old == null) {
                continue;
            }
            Arranged next = old instanceof List<?> list ? list(list, way.sought() != null) : element(old);
            if (next.moves() != null) {
                result = (Record) Components.of(owner).with(result, way.place(), next.value());
                below.put(way.name(), next.moves());
            }
        }
        return new Arranged(result, below.isEmpty() ? null : new Moves(null, below));
    }

    private static Arranged element(Object old) {
        return old instanceof Record inner ? record(inner) : new Arranged(old, null);
    }

    private static Arranged list(List<?> list, boolean inAnyOrder) {
        List<Arranged> elements = new ArrayList<>(list.size());
        for (Object element : list) {
            elements.add(element(element));
        }
        int[] before = inAnyOrder ? byContent(elements) : null;
        List<Object> values = new ArrayList<>(list.size());
        Map<String, Moves> below = new HashMap<>();
        for (int k = 0; k < list.size(); k++) {
            Arranged element = elements.get(before == null ? k : before[k]);
            values.add(element.value());
            if (element.moves() != null) {
                below.put(String.valueOf(k), element.moves());
            }
        }
        return before == null && below.isEmpty()
                ? new Arranged(list, null)
                : new Arranged(values, new Moves(before, below));
    }

    /** Where each element in the order of content stands; null where they stand in it. */
    private static int @Nullable [] byContent(List<Arranged> elements) {
        boolean inOrder = true;
        for (int k = 1; inOrder && k < elements.size(); k++) {
            inOrder = compare(elements, k - 1, k) <= 0;
        }
        if (inOrder) {
            return null;
        }
        Integer[] places = new Integer[elements.size()];
        Arrays.setAll(places, k -> k);
        Arrays.sort(places, (one, other) -> compare(elements, one, other));
        return Arrays.stream(places).mapToInt(place -> place).toArray();
    }

    private static int compare(List<Arranged> elements, int one, int other) {
        return ContentOrder.compare(
                elements.get(one).value(), elements.get(other).value());
    }
}
