package io.axiswright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class IdentifiersTest {

    private static final long SEED = 7;

    @Test
    void laysOutTheExampleOfTheStandard() {
        // RFC 9562 A.6: 2022-02-22 14:22:22 -05:00, unix_ts_ms 0x017F22E279B0, rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F.
        // Our counter starts below 0x800, so the example's 0xCC3 is reached by counting up from there.
        var clock = Clock.fixed(Instant.ofEpochMilli(0x017F22E279B0L), ZoneOffset.UTC);
        RandomGenerator random = () -> 0x18C4DC0C0C07398FL << 2 | 0x3;
        var identifiers = new Identifiers(clock, random);

        UUID id = identifiers.next();
        while ((id.getMostSignificantBits() & 0xFFF) < 0xCC3) {
            id = identifiers.next();
        }

        assertThat(id).hasToString("017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
    }

    @Test
    void risesWithinAMillisecondAndWhenTheClockIsSetBack() {
        var now = new AtomicLong(1_800_000_000_000L);
        var identifiers = new Identifiers(clock(now), new SplittableRandom(SEED));

        List<UUID> ids = IntStream.range(0, 20_000)
                .mapToObj(k -> {
                    now.addAndGet(k % 1000 == 999 ? -50 : k % 100 == 99 ? 1 : 0);
                    return identifiers.next();
                })
                .toList();

        assertThat(ids).as("seed " + SEED).allSatisfy(id -> {
            assertThat(id.version()).isEqualTo(7);
            assertThat(id.variant()).isEqualTo(2);
        });
        assertThat(ids.stream().map(UUID::toString))
                .as("seed " + SEED)
                .isSorted()
                .doesNotHaveDuplicates();
    }

    @Test
    void givesEachThreadItsOwn() throws Exception {
        var identifiers = new Identifiers(Clock.systemUTC(), new SecureRandom());
        Callable<List<UUID>> thousand =
                () -> Stream.generate(identifiers::next).limit(1000).toList();

        try (var threads = Executors.newVirtualThreadPerTaskExecutor()) {
            var all = threads.invokeAll(java.util.Collections.nCopies(8, thousand)).stream()
                    .flatMap(done -> done.resultNow().stream());
            assertThat(all).hasSize(8000).doesNotHaveDuplicates();
        }
    }

    private static Clock clock(AtomicLong now) {
        return new Clock() {
            @Override
            public Instant instant() {
                return Instant.ofEpochMilli(now.get());
            }

            @Override
            public java.time.ZoneId getZone() {
                return ZoneOffset.UTC;
            }

            @Override
            public Clock withZone(java.time.ZoneId zone) {
                return this;
            }
        };
    }
}
