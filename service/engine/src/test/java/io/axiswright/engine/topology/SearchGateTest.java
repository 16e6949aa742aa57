package io.axiswright.engine.topology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.axiswright.engine.catalogue.StopScope;
import java.util.Collections;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;

/** Searches at once, and searches whose caller goes away: here one that would go on for ever if nobody stopped it. */
class SearchGateTest {

    private static boolean endless(SearchStop stop) {
        var stopped = new CountDownLatch(1);
        stop.by(stopped::countDown);
        try {
            stopped.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
        return true;
    }

    @Test
    void searchesWaitForTheirTurn() throws InterruptedException, ExecutionException {
        var gate = new SearchGate(2);
        var inside = new AtomicInteger();
        var most = new AtomicInteger();
        try (var threads = Executors.newFixedThreadPool(6)) {
            for (var answer : threads.invokeAll(Collections.nCopies(
                    12,
                    () -> gate.pass(stop -> {
                        most.accumulateAndGet(inside.incrementAndGet(), Math::max);
                        LockSupport.parkNanos(20_000_000);
                        return inside.decrementAndGet();
                    })))) {
                answer.get();
            }
        }
        assertThat(most).hasValue(2);
    }

    @Test
    void aSearchStopsOnceItsCallerHasGoneAndGivesItsPlaceUp() {
        var gone = new AtomicBoolean(true);
        var gate = new SearchGate(1, gone::get);

        assertThatThrownBy(() -> gate.pass(SearchGateTest::endless)).isInstanceOf(SearchAbandoned.class);

        gone.set(false);
        int next = gate.pass(stop -> 7);
        assertThat(next).isEqualTo(7);
    }

    @Test
    void aCallerWhoGoesWhileWaitingIsNotWaitedFor() throws InterruptedException {
        var gone = new AtomicBoolean();
        var gate = new SearchGate(1, gone::get);
        var inside = new CountDownLatch(1);
        var first = Thread.ofPlatform()
                .start(() -> assertThatThrownBy(() -> gate.pass(stop -> {
                            inside.countDown();
                            return endless(stop);
                        }))
                        .isInstanceOf(SearchAbandoned.class));
        inside.await();
        var begun = new AtomicBoolean();
        var second = Thread.ofPlatform().start(() -> {
            Thread.currentThread().interrupt();
            assertThatThrownBy(() -> gate.pass(stop -> {
                        begun.set(true);
                        return true;
                    }))
                    .isInstanceOf(SearchAbandoned.class);
        });
        second.join();
        gone.set(true);
        first.join();

        assertThat(begun).isFalse();
        gone.set(false);
        int next = gate.pass(stop -> 7);
        assertThat(next).isEqualTo(7);
    }

    @Test
    void anInterruptedThreadStopsItsSearchAndStaysInterrupted() throws InterruptedException {
        var gate = new SearchGate(1);
        var inside = new CountDownLatch(1);
        var abandoned = new AtomicBoolean();
        var thread = Thread.ofVirtual().start(() -> {
            try {
                gate.pass(stop -> {
                    inside.countDown();
                    return endless(stop);
                });
            } catch (SearchAbandoned e) {
                abandoned.set(Thread.currentThread().isInterrupted());
            }
        });
        inside.await();
        thread.interrupt();
        thread.join();

        assertThat(abandoned).isTrue();
        int next = gate.pass(stop -> 7);
        assertThat(next).isEqualTo(7);
    }

    @Test
    void theExactSearchHearsThatItIsToStop() {
        // The limit is a hundred thousand times what the machine takes: without stopping this would not end today.
        var gone = new AtomicBoolean(true);
        LayoutModel model = modelOf(TopologyRequests.machine(128, 32, 6, 7).build());

        assertThatThrownBy(() -> new ExactSolver(1e5, new SearchGate(1, gone::get)).solve(model, null))
                .isInstanceOf(SearchAbandoned.class);
    }

    /** The search over whole trunks sets out from a layout; long trunks and binding rates leave it no end in sight. */
    @Test
    void theSearchOverTrunksHearsThatItIsToStop() {
        var gone = new AtomicBoolean(true);
        TopologyRequests machine = TopologyRequests.machine(128, 32, 6, 7);
        machine.types.clear();
        machine.type(420, 8, 6, 4, StopScope.GATEWAY);
        LayoutModel model = modelOf(machine.build());
        Layout start = new PlainSolver(SearchBreadth.NARROW).solve(model, null).layout();

        assertThat(start).isNotNull();
        assertThatThrownBy(() -> new ExactSolver(1e5, new SearchGate(1, gone::get)).solve(model, start))
                .isInstanceOf(SearchAbandoned.class);
    }

    @Test
    void aFailureOfTheSearchIsTheCallers() {
        assertThatThrownBy(() -> new SearchGate(1).pass(stop -> {
                    throw new IllegalArgumentException("of the search");
                }))
                .hasRootCauseMessage("of the search");
    }

    private static LayoutModel modelOf(TopologyRequest request) {
        return new ModelReader(request, new Routes(request)).read();
    }
}
