package io.axiswright.engine.catalogue;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Finds items that need themselves through others. Needs of every kind count: what is optional today is bought
 * tomorrow. The way down is kept on a stack of our own, since a chain may be as long as the catalogue.
 */
final class NeedCircles {

    private final Map<String, String> pointers = new HashMap<>();
    private final Map<String, Item> items = new HashMap<>();
    private final Set<String> done = new HashSet<>();
    private final Set<String> open = new HashSet<>();
    private final Deque<Step> way = new ArrayDeque<>();
    private final List<Fault> faults = new ArrayList<>();

    private NeedCircles(Map<String, Item> byPointer) {
        byPointer.forEach((pointer, item) -> {
            if (items.putIfAbsent(item.id(), item) == null) {
                pointers.put(item.id(), pointer);
            }
        });
    }

    /** One fault for each need that closes a circle; items by their JSON Pointers, in document order. */
    static List<Fault> faults(Map<String, Item> byPointer) {
        var search = new NeedCircles(byPointer);
        byPointer.values().forEach(item -> search.from(item.id()));
        return search.faults;
    }

    private void from(String start) {
        enter(start);
        while (!way.isEmpty()) {
            Step step = way.getLast();
            @Nullable Need need = step.next();
            if (need == null) {
                way.removeLast();
                open.remove(step.item.id());
                done.add(step.item.id());
            } else if (open.contains(need.item())) {
                faults.add(circle(step, need.item()));
            } else {
                enter(need.item());
            }
        }
    }

    private void enter(String id) {
        Item item = items.get(id);
        if (item != null && !done.contains(id)) {
            open.add(id);
            way.addLast(new Step(item));
        }
    }

    private Fault circle(Step last, String back) {
        String ids = Stream.concat(
                        way.stream().map(step -> step.item.id()).dropWhile(id -> !id.equals(back)), Stream.of(back))
                .collect(Collectors.joining(" needs "));
        return new Fault(
                pointers.get(last.item.id()) + "/needs/" + (last.taken - 1) + "/item",
                FaultCode.CYCLIC_NEEDS,
                ids + ".",
                "needs that end somewhere");
    }

    /** An item on the way down, and how many of its needs have been followed. */
    private static final class Step {

        private final Item item;
        private int taken;

        private Step(Item item) {
            this.item = item;
        }

        private @Nullable Need next() {
            return taken < item.needs().size() ? item.needs().get(taken++) : null;
        }
    }
}
