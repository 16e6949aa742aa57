package io.axiswright.app.sizing;

import io.axiswright.app.problem.Problems;
import io.axiswright.app.store.Documents;
import io.axiswright.app.wire.RecordReader;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.topology.SearchGate;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import org.springframework.stereotype.Component;
import tools.jackson.databind.JsonNode;

/** Works out batches of systems, as many systems at a time as there are cores, and lets go of each once it is written. */
@Component
class SystemBatches {

    private static final int CORES = Runtime.getRuntime().availableProcessors();

    /** So many are begun before the first of them is written: enough to keep the cores busy, few enough to hold. */
    private static final int AHEAD = 2 * CORES;

    private final StudyRequests requests;
    private final SystemStudy study;

    /** Shared by all batches. */
    private final Semaphore running = new Semaphore(CORES, true);

    SystemBatches(StudyRequests requests, SearchGate gate) {
        this.requests = requests;
        this.study = SystemStudy.proving(gate);
    }

    /**
     * Writes the answers in the order of the requests.
     *
     * @param path the address of the batch, for problems
     * @throws IOException if the caller no longer takes them; what has not been begun is left then
     * @throws InterruptedException if the service is ending
     */
    void write(SystemBatch batch, BatchForm form, String path, OutputStream out)
            throws IOException, InterruptedException {
        Queue<Future<byte[]>> begun = new ArrayDeque<>();
        var threads = Executors.newVirtualThreadPerTaskExecutor();
        try {
            out.write(form.start());
            List<JsonNode> all = batch.requests();
            int next = 0;
            for (int written = 0; written < all.size(); written++) {
                while (next < all.size() && begun.size() < AHEAD) {
                    int index = next++;
                    begun.add(threads.submit(() -> answer(index, all.get(index), path)));
                }
                out.write(begun.remove().get());
                out.write(written + 1 < all.size() ? form.between() : form.end());
                out.flush();
            }
        } catch (ExecutionException e) {
            throw new IllegalStateException("the answer to a request of a batch cannot be written", e);
        } finally {
            threads.shutdownNow();
        }
    }

    private byte[] answer(int index, JsonNode request, String path) throws InterruptedException {
        running.acquire();
        try {
            return Documents.write(item(index, request, path));
        } finally {
            running.release();
        }
    }

    private BatchItem item(int index, JsonNode request, String path) {
        try {
            SizingRequest read = RecordReader.read(request, SizingRequest.class);
            return new BatchItem(index, 200, study.system(requests.of(read)), null);
        } catch (RuntimeException e) {
            var problem = Problems.of(e, "POST", path);
            return new BatchItem(index, problem.status(), null, problem);
        }
    }
}
