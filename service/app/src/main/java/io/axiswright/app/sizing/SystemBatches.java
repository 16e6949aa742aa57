package io.axiswright.app.sizing;

import io.axiswright.app.problem.Problems;
import io.axiswright.app.store.Documents;
import io.axiswright.app.web.BatchForm;
import io.axiswright.app.wire.LongList;
import io.axiswright.app.wire.RecordReader;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.topology.SearchGate;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.util.unit.DataSize;

/** Works out batches of systems, as many systems at a time as there are cores, and lets go of each once it is written. */
@Component
class SystemBatches {

    private static final int CORES = Runtime.getRuntime().availableProcessors();

    /** So many are begun before the first of them is written: enough to keep the cores busy, few enough to hold. */
    private static final int AHEAD = 2 * CORES;

    private final StudyRequests requests;
    private final SystemStudy study;
    private final long limit;

    /** Shared by all batches. */
    private final Semaphore running = new Semaphore(CORES, true);

    /**
     * @param limit most bytes of one request, as if it were sent alone
     */
    SystemBatches(StudyRequests requests, SearchGate gate, @Value("${axiswright.wire.body-limit:4MB}") DataSize limit) {
        this.limit = limit.toBytes();
        this.requests = requests;
        this.study = SystemStudy.proving(gate);
    }

    /**
     * Answers with the results in the order of the requests.
     *
     * @param sent the requests
     * @param count how many they are
     * @param path the address of the batch, for problems
     * @throws InterruptedException if the service is ending
     */
    void answer(LongList sent, int count, BatchForm form, String path, HttpServletResponse response)
            throws InterruptedException {
        Queue<Future<byte[]>> begun = new ArrayDeque<>();
        var threads = Executors.newVirtualThreadPerTaskExecutor();
        try {
            form.answer(response, count, written -> {
                for (int next = written + begun.size(); next < count && begun.size() < AHEAD; next++) {
                    int index = next;
                    begun.add(threads.submit(() -> answer(index, sent, path)));
                }
                return result(begun.remove());
            });
        } finally {
            threads.shutdownNow();
        }
    }

    private static byte[] result(Future<byte[]> begun) throws InterruptedException {
        try {
            return begun.get();
        } catch (ExecutionException e) {
            throw new IllegalStateException("the answer to a request of a batch cannot be written", e);
        }
    }

    private byte[] answer(int index, LongList sent, String path) throws InterruptedException {
        running.acquire();
        try {
            return Documents.write(item(index, sent, path));
        } finally {
            running.release();
        }
    }

    private BatchItem item(int index, LongList sent, String path) {
        try {
            SizingRequest read = RecordReader.read(sent.element(index, limit), SizingRequest.class);
            return new BatchItem(index, 200, study.system(requests.of(read)), null);
        } catch (RuntimeException e) {
            var problem = Problems.of(e, "POST", path);
            return new BatchItem(index, problem.status(), null, problem);
        }
    }
}
