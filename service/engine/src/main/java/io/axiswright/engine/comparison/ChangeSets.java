package io.axiswright.engine.comparison;

import io.axiswright.engine.quantity.Money;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Puts changes together that are the same one at many places, and mean little one by one: a catalogue in another currency, a new
 * price list, one more column of its tables. In a design, where every value was chosen, only the same value in place of the same one is
 * the same change.
 */
final class ChangeSets {

    /** Our choice: fewer are told, and tried, one by one. */
    private static final int MANY = 10;

    private static final String CATALOGUE = "catalogue";

    /** What is the same wherever one change was made. */
    private sealed interface Sameness {

        /** So many such changes in words. */
        String words(int count);
    }

    private record OtherCurrency(String before, String after) implements Sameness {
        @Override
        public String words(int count) {
            return "the currency changed from " + before + " to " + after + " at " + count + " places";
        }
    }

    private record OfCatalogue(String name, ChangeKind kind) implements Sameness {
        @Override
        public String words(int count) {
            return count + " " + name + " of the catalogue " + verb(kind);
        }
    }

    private record OfDesign(
            String name,
            ChangeKind kind,
            @Nullable Object before,
            @Nullable Object after) implements Sameness {
        @Override
        public String words(int count) {
            String what = name + " at " + count + " places of the design ";
            return kind == ChangeKind.CHANGED
                    ? ChangeWords.changed(what.strip(), " changed", new Difference(List.of(), kind, before, after))
                    : what + verb(kind);
        }
    }

    private ChangeSets() {}

    /** What is to be tried, in the order of the changes. */
    static List<ChangeSet> of(List<Difference> changes) {
        Map<Sameness, List<Integer>> same = new LinkedHashMap<>();
        for (int place = 0; place < changes.size(); place++) {
            same.computeIfAbsent(sameness(changes.get(place)), _ -> new ArrayList<>())
                    .add(place);
        }
        ChangeSet[] sets = new ChangeSet[changes.size()];
        int groups = 0;
        for (var entry : same.entrySet()) {
            List<Integer> places = entry.getValue();
            if (places.size() >= MANY) {
                sets[places.getFirst()] = new ChangeSet(
                        "group-" + ++groups, List.copyOf(places), entry.getKey().words(places.size()));
            } else {
                places.forEach(place -> sets[place] = ChangeSet.single(place, changes.get(place)));
            }
        }
        return Arrays.stream(sets).filter(Objects::nonNull).toList();
    }

    private static Sameness sameness(Difference change) {
        if (change.before() instanceof Money before
                && change.after() instanceof Money after
                && !before.currency().equals(after.currency())) {
            return new OtherCurrency(before.currency(), after.currency());
        }
        String name = name(change.path());
        if (name.equals("currency")
                && change.before() instanceof String before
                && change.after() instanceof String after) {
            return new OtherCurrency(before, after);
        }
        return change.path().getFirst().text().equals(CATALOGUE)
                ? new OfCatalogue(PlaceWords.plural(PlaceWords.words(name)), change.kind())
                : new OfDesign(PlaceWords.words(name), change.kind(), change.before(), change.after());
    }

    /** The last member on the way; of what came or went in a list that of the list. */
    private static String name(List<Step> path) {
        return path.reversed().stream()
                .filter(Step.Member.class::isInstance)
                .findFirst()
                .orElseThrow()
                .text();
    }

    private static String verb(ChangeKind kind) {
        return switch (kind) {
            case ADDED -> "were added";
            case REMOVED -> "were removed";
            case CHANGED -> "changed";
        };
    }
}
