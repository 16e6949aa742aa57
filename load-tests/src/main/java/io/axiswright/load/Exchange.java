package io.axiswright.load;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;

/** One request, sent over and over on a fixed number of connections. */
final class Exchange {

    private static final int CONNECTIONS = 8;
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final HttpClient client;
    private final HttpRequest request;

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
            var response = client.send(request, BodyHandlers.ofByteArray());
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
