package io.axiswright.engine.supply;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Circuits on lines against published optima and complete enumeration. */
class PhaseBalancingTest {

    static Stream<NamedCsvRecord> sets() throws IOException {
        try (var in = Objects.requireNonNull(
                        PhaseBalancingTest.class.getResourceAsStream("/supply/number-partitioning.csv"));
                var csv = CsvReader.builder()
                        .commentStrategy(CommentStrategy.SKIP)
                        .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return csv.stream().toList().stream();
        }
    }

    private static List<PhaseBalancing.Ask> asks(NamedCsvRecord set) {
        return Arrays.stream(set.getField("numbers").split(" "))
                .map(number -> new PhaseBalancing.Ask(Long.parseLong(number), 1))
                .toList();
    }

    /** Two lines: the heaviest is lightest where the difference is smallest, and that is published. */
    @ParameterizedTest
    @MethodSource("sets")
    void twoLinesReachThePublishedDifference(NamedCsvRecord set) {
        var answer = PhaseBalancing.of(2, asks(set));

        assertThat(answer.proven()).isTrue();
        assertThat(answer.spread()).isEqualTo(Long.parseLong(set.getField("published_two_way_difference")));
    }

    /** Three lines: exact dynamic programming of the reference, where it has a value; proven for ten circuits. */
    @ParameterizedTest
    @MethodSource("sets")
    void threeLinesReachTheReferenceOptimum(NamedCsvRecord set) {
        var answer = PhaseBalancing.of(3, asks(set));

        assertThat(answer.bound()).isLessThanOrEqualTo(answer.heaviest());
        if (set.getField("n").equals("10")) {
            assertThat(answer.proven()).isTrue();
        }
        if (!set.getField("three_way_smallest_heaviest").isEmpty()) {
            long best = Long.parseLong(set.getField("three_way_smallest_heaviest"));
            assertThat(answer.heaviest()).isEqualTo(best);
            assertThat(answer.bound()).isLessThanOrEqualTo(best);
            assertThat(answer.spread())
                    .isGreaterThanOrEqualTo(Long.parseLong(set.getField("three_way_smallest_spread")));
        }
    }

    /** Smallest heaviest line, then smallest spread, over every way there is; heaviest and spread in one number. */
    private static long[] enumerated(int lines, List<PhaseBalancing.Ask> asks, int k, long[] load) {
        if (k == asks.size()) {
            long most = Arrays.stream(load).max().orElseThrow();
            return new long[] {most, most - Arrays.stream(load).min().orElseThrow()};
        }
        long[] best = {Long.MAX_VALUE, Long.MAX_VALUE};
        for (int mask = 1; mask < 1 << lines; mask++) {
            if (Integer.bitCount(mask) != asks.get(k).lines()) {
                continue;
            }
            var next = load.clone();
            for (int l = 0; l < lines; l++) {
                next[l] += (mask >> l & 1) * asks.get(k).microamperes();
            }
            var found = enumerated(lines, asks, k + 1, next);
            if (Arrays.compare(found, best) < 0) {
                best = found;
            }
        }
        return best;
    }

    @Test
    void equalsCompleteEnumeration() {
        for (int seed = 0; seed < 400; seed++) {
            var random = new SplittableRandom(seed);
            int lines = random.nextInt(2, 4);
            long step = random.nextBoolean() ? 1_000_000 : 1;
            var asks = new ArrayList<PhaseBalancing.Ask>();
            for (int k = random.nextInt(1, 8); k > 0; k--) {
                asks.add(new PhaseBalancing.Ask(step * random.nextLong(1, 30), random.nextInt(1, 3)));
            }

            var answer = PhaseBalancing.of(lines, asks);

            assertThat(answer.proven()).as("seed %d", seed).isTrue();
            assertThat(new long[] {answer.heaviest(), answer.spread()})
                    .as("seed %d", seed)
                    .isEqualTo(enumerated(lines, asks, 0, new long[lines]));
            assertThat(loads(lines, asks, answer)).as("seed %d", seed).contains(answer.heaviest());
        }
    }

    private static List<Long> loads(int lines, List<PhaseBalancing.Ask> asks, PhaseBalancing.Answer answer) {
        return IntStream.range(0, lines)
                .mapToObj(l -> IntStream.range(0, asks.size())
                        .mapToLong(k ->
                                (answer.masks().get(k) >> l & 1) * asks.get(k).microamperes())
                        .sum())
                .toList();
    }

    /** Hard on purpose: twelve large numbers without a common measure, a mix of both connections. */
    @Test
    void twelveCircuitsAreAlwaysProven() {
        for (int seed = 0; seed < 5; seed++) {
            var random = new SplittableRandom(seed);
            var asks = IntStream.range(0, 12)
                    .mapToObj(k -> new PhaseBalancing.Ask(random.nextLong(1, 1_000_000_000), 1 + k % 2))
                    .toList();

            assertThat(PhaseBalancing.of(3, asks).proven()).as("seed %d", seed).isTrue();
        }
    }

    /** Currents without a common measure, on one line or between two: the bound itself is reached. */
    @Test
    void sixtyCircuitsAreProvenByTheBound() {
        for (int seed = 0; seed < 20; seed++) {
            var random = new SplittableRandom(seed);
            int twoLine = seed % 3;
            var asks = IntStream.range(0, 60)
                    .mapToObj(
                            k -> new PhaseBalancing.Ask(random.nextLong(500_000, 30_000_000), k % 3 < twoLine ? 2 : 1))
                    .toList();

            var answer = PhaseBalancing.of(3, asks);

            // no heaviest line is below the third part of the whole, rounded up; nor its spread below what is left over
            long total =
                    asks.stream().mapToLong(a -> a.lines() * a.microamperes()).sum();
            var on = loads(3, asks, answer);
            assertThat(answer.proven()).as("seed %d", seed).isTrue();
            assertThat(answer.heaviest()).as("seed %d", seed).isEqualTo(Math.ceilDiv(total, 3L));
            assertThat(answer.spread()).as("seed %d", seed).isEqualTo(total % 3 == 0 ? 0 : 1);
            assertThat(answer.bound()).as("seed %d", seed).isEqualTo(answer.heaviest());
            assertThat(Collections.max(on)).as("seed %d", seed).isEqualTo(answer.heaviest());
            assertThat(Collections.max(on) - Collections.min(on))
                    .as("seed %d", seed)
                    .isEqualTo(answer.spread());
            for (int k = 0; k < 60; k++) {
                assertThat(Integer.bitCount(answer.masks().get(k)))
                        .isEqualTo(asks.get(k).lines());
            }
        }
    }

    /** Sixty circuits of a few catalogue ratings in tenths of an ampere: against every load two lines can carry together. */
    @Test
    void sixtyCircuitsOfFewRatingsAreProven() {
        for (int seed = 0; seed < 12; seed++) {
            var random = new SplittableRandom(seed);
            var ratings = random.ints(2 + seed % 3, 5, 60).toArray();
            var tenths = random.ints(60, 0, ratings.length).map(k -> ratings[k]).toArray();
            int twoLine = seed % 4 == 0 ? 20 : 0;
            var asks = IntStream.range(0, 60)
                    .mapToObj(k -> new PhaseBalancing.Ask(tenths[k] * 100_000L, k < twoLine ? 2 : 1))
                    .toList();

            var answer = PhaseBalancing.of(3, asks);

            assertThat(answer.proven()).as("seed %d", seed).isTrue();
            assertThat(new long[] {answer.heaviest() / 100_000, answer.spread() / 100_000})
                    .as("seed %d", seed)
                    .isEqualTo(tabulated(tenths, twoLine));
            assertThat(Collections.max(loads(3, asks, answer)))
                    .as("seed %d", seed)
                    .isEqualTo(answer.heaviest());
        }
    }

    /** Smallest heaviest line, then smallest spread, of all pairs of loads on two lines. */
    private static long[] tabulated(int[] tenths, int twoLine) {
        int total = IntStream.range(0, tenths.length)
                .map(k -> tenths[k] * (k < twoLine ? 2 : 1))
                .sum();
        int side = total / 3 + 200;
        var reached = new boolean[side][side];
        reached[0][0] = true;
        for (int k = 0; k < tenths.length; k++) {
            var next = new boolean[side][side];
            int w = tenths[k];
            for (int x = 0; x < side; x++) {
                for (int y = 0; y < side; y++) {
                    if (reached[x][y]) {
                        boolean pair = k < twoLine;
                        mark(next, x + w, pair ? y + w : y);
                        mark(next, pair ? x + w : x, pair ? y : y + w);
                        mark(next, x, pair ? y + w : y);
                    }
                }
            }
            reached = next;
        }
        long[] best = {Long.MAX_VALUE, Long.MAX_VALUE};
        for (int x = 0; x < side; x++) {
            for (int y = 0; y < side; y++) {
                if (reached[x][y]) {
                    var line = new int[] {x, y, total - x - y};
                    Arrays.sort(line);
                    var found = new long[] {line[2], line[2] - line[0]};
                    if (Arrays.compare(found, best) < 0) {
                        best = found;
                    }
                }
            }
        }
        return best;
    }

    private static void mark(boolean[][] reached, int x, int y) {
        if (x < reached.length && y < reached.length) {
            reached[x][y] = true;
        }
    }

    @Test
    void anExactSumIsFoundWhereverThereIsOne() {
        for (int seed = 0; seed < 200; seed++) {
            var random = new SplittableRandom(seed);
            var numbers =
                    random.longs(random.nextInt(1, 40), -1_000_000, 1_000_000).toArray();
            long sum = Arrays.stream(numbers).filter(_ -> random.nextBoolean()).sum();

            var found = ExactSum.of(numbers, sum);

            assertThat(found.isPresent()).as("seed %d", seed).isTrue();
            assertThat(found.orElseThrow().stream().mapToLong(k -> numbers[k]).sum())
                    .as("seed %d", seed)
                    .isEqualTo(sum);
        }
        assertThat(ExactSum.of(new long[] {2, 4, 6}, 5)).isEmpty();
    }

    @Test
    void manyCircuitsCarryTheirBound() {
        var random = new SplittableRandom(7);
        var asks = IntStream.range(0, 600)
                .mapToObj(_ -> new PhaseBalancing.Ask(random.nextLong(1_000_000, 30_000_000), 1))
                .toList();

        var answer = PhaseBalancing.of(3, asks);

        long total = asks.stream().mapToLong(PhaseBalancing.Ask::microamperes).sum();
        assertThat(answer.bound()).isBetween(Math.ceilDiv(total, 3L), answer.heaviest());
        assertThat(answer.heaviest() - answer.bound()).isLessThan(1_000_000); // less than the smallest load
    }
}
