package io.axiswright.engine.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Groups of which some changes, drawn at random, matter each by itself, and the others do nothing. */
class NarrowingTest {

    private static final Trial NOTHING = new Trial(0, Unlike.EVERYWHERE, Unlike.of(List.of()), Unlike.EVERYWHERE);
    private static final Trial MATTERS = new Trial(0, Unlike.EVERYWHERE, Unlike.EVERYWHERE, Unlike.EVERYWHERE);

    private static Set<Integer> found(List<Integer> group, Set<Integer> matter, int[] left) {
        var narrowing = new Narrowing(
                part -> left[0]-- > 0
                        ? Optional.of(part.stream().anyMatch(matter::contains) ? MATTERS : NOTHING)
                        : Optional.empty(),
                trial -> trial.role("/x") != null);
        return narrowing.within(group).entrySet().stream()
                .filter(entry -> entry.getValue() == MATTERS)
                .map(entry -> entry.getKey())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** A change at the end of n is found by halves of halves: two for each of log2 n levels, rounded up. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void allThatMatterAreFoundWithoutTryingWhatDoesNot(int seed) {
        var random = new Random(seed);
        for (int round = 0; round < 500; round++) {
            int size = 2 + random.nextInt(60);
            List<Integer> group = IntStream.range(7, 7 + size).boxed().toList();
            Set<Integer> matter = IntStream.range(0, random.nextInt(6))
                    .mapToObj(_ -> 7 + random.nextInt(size))
                    .collect(Collectors.toSet());
            int[] left = {1000};
            assertThat(found(group, matter, left)).isEqualTo(new TreeSet<>(matter));
            int levels = 32 - Integer.numberOfLeadingZeros(size - 1);
            assertThat(1000 - left[0]).isLessThanOrEqualTo(2 * levels * Math.max(1, matter.size()));

            int[] few = {random.nextInt(8)};
            assertThat(matter).containsAll(found(group, matter, few));
        }
    }
}
