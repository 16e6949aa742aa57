package io.axiswright.load;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.Stream;

/** One request, sent over and over on a fixed number of connections. */
final class Exchange {

    private static final int CONNECTIONS = 8;
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final HttpClient client;
    private final HttpRequest request;
    private final LongAdder broken = new LongAdder();

    Exchange(HttpClient client, URI uri, byte[] body) {
        this.client = client;
        this.request = HttpRequest.newBuilder(uri)
                .timeout(PATIENCE)
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofByteArray(body))
                .build();
    }

    /** The answer to one request. */
    byte[] once() {
        try {
            HttpResponse<byte[]> response = send();
            if (response.statusCode() != 200) {
                throw new IOException(request.uri() + " answered " + response.statusCode());
            }
            return response.body();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** One request, sent once more if the JDK loses a connection it takes out of its pool (JDK-8357639). */
    private HttpResponse<byte[]> send() throws IOException, InterruptedException {
        try {
            return client.send(request, BodyHandlers.ofByteArray());
        } catch (IOException _) {
            broken.increment();
            return client.send(request, BodyHandlers.ofByteArray());
        }
    }

    /** Connections that broke. */
    long broken() {
        return broken.sum();
    }

    /** Requests per second over at most that many requests and about that much time; every answer has the given length. */
    double rate(int mostRequests, Duration mostTime, int length) throws InterruptedException, ExecutionException {
        long start = System.nanoTime();
        Callable<Integer> connection = () -> {
            int done = 0;
            while (done < mostRequests / CONNECTIONS && System.nanoTime() - start < mostTime.toNanos()) {
                if (once().length != length) {
                    throw new IllegalStateException(request.uri() + " did not answer " + length + " bytes");
                }
                done++;
            }
            return done;
        };
        int done = 0;
        try (var threads = Executors.newFixedThreadPool(CONNECTIONS)) {
            for (Future<Integer> part : threads.invokeAll(
                    Stream.generate(() -> connection).limit(CONNECTIONS).toList())) {
                done += part.get();
            }
        }
        return done * 1e9 / (System.nanoTime() - start);
    }
}
