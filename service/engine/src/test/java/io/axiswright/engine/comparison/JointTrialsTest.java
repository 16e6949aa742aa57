package io.axiswright.engine.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Machines that are nothing but a table of which sets of changes bring a consequence, drawn at random, so that more changes may
 * well undo what fewer bring. What is claimed is looked up in the table.
 */
class JointTrialsTest {

    private static final String PLACE = "/x";

    /** Which sets bring the consequence, by their bits; all together do, none does alone. */
    private record Table(int changes, boolean[] brings, int[] left) {

        static Table random(Random random, int studies) {
            int changes = 2 + random.nextInt(5);
            boolean[] brings = new boolean[1 << changes];
            double often = random.nextDouble();
            for (int set = 0; set < brings.length; set++) {
                brings[set] = Integer.bitCount(set) > 1 && random.nextDouble() < often;
            }
            brings[brings.length - 1] = true;
            return new Table(changes, brings, new int[] {studies});
        }

        boolean brings(Collection<Integer> set) {
            return brings[set.stream().mapToInt(k -> 1 << k).sum()];
        }

        Unlike unlike(Collection<Integer> set) {
            return Unlike.of(
                    brings(set)
                            ? List.of()
                            : List.of(new Difference(List.of(new Step.Member("x")), ChangeKind.CHANGED, 1, 2)));
        }

        Optional<Unlike> study(SortedSet<Integer> set) {
            return left[0]-- > 0 ? Optional.of(unlike(set)) : Optional.empty();
        }

        JointTrials trials() {
            List<Trial> single = all().stream()
                    .map(k -> new Trial(k, Unlike.EVERYWHERE, unlike(without(all(), k)), unlike(List.of(k))))
                    .toList();
            return new JointTrials(changes, single, this::study);
        }

        Joint together(Set<Integer> candidates) {
            return trials().together(PLACE, part(candidates, true), part(candidates, false));
        }

        private List<Integer> part(Set<Integer> candidates, boolean needed) {
            return candidates.stream().filter(k -> needed(k) == needed).toList();
        }

        /** Whether all the others do not bring it. */
        boolean needed(int change) {
            return !brings(without(all(), change));
        }

        List<Integer> all() {
            return IntStream.range(0, changes).boxed().toList();
        }

        /** Two at least, as those are of which something joint can be asked. */
        Set<Integer> some(Random random) {
            var places = new TreeSet<Integer>();
            while (places.size() < 2 || random.nextBoolean() && places.size() < changes) {
                places.add(random.nextInt(changes));
            }
            return places;
        }
    }

    private static List<Integer> without(Collection<Integer> set, Integer change) {
        List<Integer> fewer = new ArrayList<>(set);
        fewer.remove(change);
        return fewer;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void whatIsClaimedHolds(int seed) {
        var random = new Random(seed);
        int unfinished = 0;
        for (int round = 0; round < 2000; round++) {
            Table table = Table.random(random, random.nextInt(8));
            Joint joint = table.together(table.some(random));
            assertThat(joint.changes().isEmpty() || table.brings(joint.changes()))
                    .isTrue();
            if (joint.minimal()) {
                assertThat(joint.changes())
                        .isNotEmpty()
                        .allMatch(k -> table.needed(k) || !table.brings(without(joint.changes(), k)));
            }
            assertThat(joint.examined()).isEqualTo(table.left()[0] >= 0);
            unfinished += joint.examined() ? 0 : 1;
        }
        assertThat(unfinished).isBetween(100, 1900);
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 5})
    void withStudiesEnoughASetThatBringsItIsFoundAndMinimal(int seed) {
        var random = new Random(seed);
        for (int round = 0; round < 1000; round++) {
            Table table = Table.random(random, 1000);
            Set<Integer> candidates = table.some(random);
            boolean brought = table.brings(candidates);
            assertThat(table.together(candidates))
                    .returns(brought, joint -> !joint.changes().isEmpty())
                    .returns(brought, Joint::minimal)
                    .returns(true, Joint::examined);
        }
    }
}
