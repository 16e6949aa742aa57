package io.axiswright.app.store;

import java.time.Clock;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import java.util.random.RandomGenerator;

/**
 * Makes keys that sort by the time they were made: UUID version 7 (RFC 9562, 5.7). The 12 bits after the millisecond
 * count within it (RFC 9562, 6.2, method 1) and carry over into the next one, so the keys of one process always rise,
 * even when its clock is set back.
 */
public final class Identifiers {

    private static final int COUNTER_BITS = 12;
    private static final long COUNTER_MASK = (1L << COUNTER_BITS) - 1;
    private static final long VERSION_7 = 7L << COUNTER_BITS;
    private static final long VARIANT = 1L << 63;

    private final Clock clock;
    private final RandomGenerator random;
    private final AtomicLong last = new AtomicLong(-1);

    /** Keys from the given clock and source of randomness; the source must be safe for use by several threads. */
    public Identifiers(Clock clock, RandomGenerator random) {
        this.clock = clock;
        this.random = random;
    }

    /** A new key, above every one before. */
    public UUID next() {
        // starts low in its range so that a busy millisecond seldom has to borrow from the next
        long fresh = clock.millis() << COUNTER_BITS | random.nextLong() & (COUNTER_MASK >>> 1);
        long stamp = last.updateAndGet(previous -> Math.max(previous + 1, fresh));
        long high = stamp >>> COUNTER_BITS << 16 | VERSION_7 | stamp & COUNTER_MASK;
        return new UUID(high, VARIANT | random.nextLong() >>> 2);
    }
}
