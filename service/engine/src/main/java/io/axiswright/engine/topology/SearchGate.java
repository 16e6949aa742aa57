package io.axiswright.engine.topology;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/**
 * Lets only so many exact searches run at once, since each takes a core and memory outside the heap; the others wait for their
 * turn. Who no longer wants the answer, or is interrupted, stops waiting or stops the search and gives the place up. What a search
 * answers does not depend on it.
 */
public final class SearchGate {

    /** How often the caller is asked after, in ms. */
    private static final long GLANCE = 100;

    private final Semaphore free;
    private final BooleanSupplier gone;
    private final boolean open;

    /** A gate for at most so many searches at once, for callers that stay. */
    public SearchGate(int most) {
        this(most, () -> false);
    }

    /**
     * A gate for at most so many searches at once.
     *
     * @param gone whether the caller has gone whom the thread that asks works for; asked now and then on that very thread
     */
    public SearchGate(int most, BooleanSupplier gone) {
        this.free = new Semaphore(most, true);
        this.gone = gone;
        this.open = false;
    }

    private SearchGate() {
        this.free = new Semaphore(0);
        this.gone = () -> false;
        this.open = true;
    }

    /** A gate that is always open. */
    static SearchGate open() {
        return new SearchGate();
    }

    /**
     * Runs a search as soon as it is its turn.
     *
     * @param search gets what it can be stopped by
     * @throws SearchAbandoned if the caller has gone or the thread is interrupted, once the search has stopped
     */
    <T> T pass(Function<SearchStop, T> search) {
        var stop = new SearchStop();
        if (open) {
            return search.apply(stop);
        }
        enter();
        try {
            return watched(search, stop);
        } finally {
            free.release();
        }
    }

    private void enter() {
        try {
            while (!free.tryAcquire(GLANCE, TimeUnit.MILLISECONDS)) {
                if (gone.getAsBoolean()) {
                    throw new SearchAbandoned();
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new SearchAbandoned();
        }
    }

    /** The search is native code that hears no interruption, so a thread of its own runs it and this one looks after the caller. */
    private <T> T watched(Function<SearchStop, T> search, SearchStop stop) {
        var answer = new CompletableFuture<T>();
        Thread.ofPlatform().daemon().name("layout-search").start(() -> run(search, stop, answer));
        boolean interrupted = false;
        while (true) {
            try {
                T found = answer.get(GLANCE, TimeUnit.MILLISECONDS);
                if (interrupted) {
                    Thread.currentThread().interrupt();
                }
                if (stop.asked()) {
                    throw new SearchAbandoned();
                }
                return found;
            } catch (TimeoutException e) {
                if (stop.asked() || gone.getAsBoolean()) {
                    stop.ask();
                }
            } catch (InterruptedException e) {
                interrupted = true;
                stop.ask();
            } catch (ExecutionException e) {
                throw new IllegalStateException("the search for a layout failed", e.getCause());
            }
        }
    }

    // Whatever it fails with belongs to the thread that waits for the answer.
    private static <T> void run(Function<SearchStop, T> search, SearchStop stop, CompletableFuture<T> answer) {
        try {
            answer.complete(search.apply(stop));
        } catch (RuntimeException | Error e) {
            answer.completeExceptionally(e);
        }
    }
}
