package io.axiswright.engine.catalogue;

import io.axiswright.engine.design.ItemKind;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * An order of a catalogue's items in which each stands before what it needs and what demand rules bring because of it; and where
 * there is none. Needs of every kind count: what is optional today is bought tomorrow. Items are walked depth first, the way
 * down on a stack of our own, since a chain may be as long as the catalogue; the reverse of the order in which they are left is
 * the one looked for, and a link back into the way closes a circle. A rule, and a kind of item that rules count, are
 * stations of their own, so that there are no more links than the catalogue has words for.
 */
public final class NeedOrder {

    private static final int LEFT = -1;

    /** What an item, a rule or a kind of item leads to. */
    private record Link(Station to, String place) {}

    /** An item, a rule, or a kind of item. */
    private static final class Station {
        private final String item;
        private final String rule;
        private final List<Link> links = new ArrayList<>();
        private int next;

        Station(String item, String rule) {
            this.item = item;
            this.rule = rule;
        }

        boolean isItem() {
            return !item.isEmpty();
        }
    }

    private final UnaryOperator<String> pointer;
    private final Map<String, Station> items = new HashMap<>();
    private final List<Station> inOrder = new ArrayList<>();
    private final List<Station> left = new ArrayList<>();
    private final List<Fault> circles = new ArrayList<>();

    private NeedOrder(Catalogue catalogue, UnaryOperator<String> pointer) {
        this.pointer = pointer;
        catalogue.items().forEach(item -> {
            var station = new Station(item.id(), "");
            if (items.putIfAbsent(item.id(), station) == null) {
                inOrder.add(station);
            }
        });
        linkNeeds(catalogue);
        linkRules(catalogue);
        inOrder.forEach(this::walk);
    }

    /**
     * The order of a catalogue's items.
     *
     * @param catalogue the catalogue; what is named but not there is passed over
     * @param pointer leads from a JSON Pointer in the catalogue to the one in the document it came in
     */
    public static NeedOrder of(Catalogue catalogue, UnaryOperator<String> pointer) {
        return new NeedOrder(catalogue, pointer);
    }

    /** One fault for each link that closes a circle. */
    public List<Fault> circles() {
        return List.copyOf(circles);
    }

    /** The place of each item in the order, by id. */
    public Map<String, Integer> ranks() {
        Map<String, Integer> ranks = new HashMap<>();
        for (Station station : left.reversed()) {
            if (station.isItem()) {
                ranks.put(station.item, ranks.size());
            }
        }
        return ranks;
    }

    private void linkNeeds(Catalogue catalogue) {
        catalogue.places().forEach((place, item) -> {
            Station from = items.get(item.id());
            for (int k = 0; from != null && k < item.needs().size(); k++) {
                link(from, item.needs().get(k).item(), place + "/needs/" + k + "/item");
            }
        });
    }

    private void linkRules(Catalogue catalogue) {
        List<DemandRule> rules = catalogue.demandRuleList();
        Map<ItemKind, Station> kinds = new EnumMap<>(ItemKind.class);
        for (int k = 0; k < rules.size(); k++) {
            DemandRule rule = rules.get(k);
            if (!rule.per().countsItems()) {
                continue;
            }
            String place = "/demandRules/" + k;
            Station from = rule.countedItem() != null
                    ? items.get(rule.countedItem())
                    : rule.countedKind() == null
                            ? null
                            : kinds.computeIfAbsent(rule.countedKind(), _ -> new Station("", ""));
            Station station = new Station("", rule.id());
            if (from != null) {
                from.links.add(new Link(station, place));
            }
            for (int a = 0; a < rule.alternates().size(); a++) {
                link(station, rule.alternates().get(a).item(), place + "/alternates/" + a + "/item");
            }
        }
        if (!kinds.isEmpty()) {
            catalogue.places().forEach((place, item) -> {
                Station kind = kinds.get(Shelf.of(item).kind());
                Station from = items.get(item.id());
                if (kind != null && from != null) {
                    from.links.add(new Link(kind, place));
                }
            });
        }
    }

    private void link(Station from, String item, String place) {
        Station to = items.get(item);
        if (to != null) {
            from.links.add(new Link(to, place));
        }
    }

    private void walk(Station start) {
        if (start.next != 0) {
            return;
        }
        Deque<Station> way = new ArrayDeque<>();
        way.addLast(start);
        while (!way.isEmpty()) {
            Station at = way.getLast();
            if (at.next == at.links.size()) {
                at.next = LEFT;
                left.add(at);
                way.removeLast();
                continue;
            }
            Link link = at.links.get(at.next++);
            if (link.to.next > 0) { // begun and not left: it is on the way
                circles.add(circle(way, link));
            } else if (link.to.next == 0) {
                way.addLast(link.to);
            }
        }
    }

    private Fault circle(Deque<Station> way, Link last) {
        List<Station> round =
                new ArrayList<>(way.stream().dropWhile(s -> s != last.to).toList());
        while (!round.getFirst().isItem()) {
            Collections.rotate(round, -1);
        }
        round.add(round.getFirst());
        var words = new StringBuilder();
        String rule = "";
        for (Station station : round) {
            rule = station.rule.isEmpty() ? rule : station.rule;
            if (station.isItem()) {
                words.append(words.isEmpty() ? "" : rule.isEmpty() ? " needs " : " needs by rule " + rule + " ")
                        .append(station.item);
                rule = "";
            }
        }
        return new Fault(
                pointer.apply(last.place), FaultCode.CYCLIC_NEEDS, words + ".", "needs and rules that end somewhere");
    }
}
