package io.axiswright.engine.topology;

import java.util.concurrent.Semaphore;
import java.util.function.Supplier;

/**
 * Lets only so many exact searches run at once, since each takes a core and memory outside the heap; the others wait for their
 * turn. What a search answers does not depend on it.
 */
public final class SearchGate {

    private final Semaphore free;

    /** A gate for at most so many searches at once. */
    public SearchGate(int most) {
        this.free = new Semaphore(most, true);
    }

    /** A gate that is always open. */
    static SearchGate open() {
        return new SearchGate(Integer.MAX_VALUE);
    }

    /** Runs a search as soon as it is its turn. */
    <T> T pass(Supplier<T> search) {
        free.acquireUninterruptibly();
        try {
            return search.get();
        } finally {
            free.release();
        }
    }
}
