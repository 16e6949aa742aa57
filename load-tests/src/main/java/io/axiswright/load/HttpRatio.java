package io.axiswright.load;

import io.axiswright.app.Axiswright;
import io.axiswright.app.wire.RecordWriter;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.concurrent.ExecutionException;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.util.FileSystemUtils;

/**
 * Whether sizing conductors over HTTP reaches at least half the throughput of an endpoint of the same server that reads as
 * many bytes, does nothing, and answers as many.
 */
final class HttpRatio {

    private static final double LEAST = 0.5;
    private static final int WARM_UPS = 3;
    private static final int ROUNDS = 9;
    private static final int REQUESTS = 16_000;
    private static final Duration TIME = Duration.ofSeconds(3);

    private HttpRatio() {}

    static boolean holds() throws IOException, InterruptedException, ExecutionException {
        Path data = Files.createTempDirectory("axiswright-http-ratio");
        try (var service = start(data);
                var client = HttpClient.newBuilder()
                        .version(HttpClient.Version.HTTP_1_1)
                        .build()) {
            return measure(service, client) >= LEAST;
        } finally {
            FileSystemUtils.deleteRecursively(data);
        }
    }

    private static ConfigurableApplicationContext start(Path data) {
        return new SpringApplication(Axiswright.class, NoOp.class)
                .run(
                        "--server.address=127.0.0.1",
                        "--server.port=0",
                        "--spring.main.banner-mode=off",
                        "--logging.level.root=warn",
                        "--axiswright.data-directory=" + data);
    }

    private static double measure(ConfigurableApplicationContext service, HttpClient client)
            throws InterruptedException, ExecutionException {
        String base = "http://127.0.0.1:" + service.getEnvironment().getRequiredProperty("local.server.port");
        byte[] body = RecordWriter.write(Circuits.request());
        var conductors = new Exchange(client, URI.create(base + "/v1/sizing/conductors"), body);
        var noOp = new Exchange(client, URI.create(base + "/noop"), body);
        int length = conductors.once().length;
        service.getBean(NoOp.class).answer(json(length));
        return compare(conductors, noOp, body.length, length);
    }

    @SuppressWarnings("SystemOut") // a report for the terminal
    private static double compare(Exchange conductors, Exchange noOp, int bytesIn, int bytesOut)
            throws InterruptedException, ExecutionException {
        System.out.printf("%d bytes in, %d bytes out%n", bytesIn, bytesOut);
        double[] ratios = new double[ROUNDS];
        for (int round = -WARM_UPS; round < ROUNDS; round++) {
            double doingNothing = noOp.rate(REQUESTS, TIME, bytesOut);
            double sizing = conductors.rate(REQUESTS, TIME, bytesOut);
            System.out.printf(
                    "%s conductors %6.0f/s, no-op %6.0f/s, ratio %.3f%n",
                    round < 0 ? "warm-up:" : "round " + (round + 1) + ":", sizing, doingNothing, sizing / doingNothing);
            if (round >= 0) {
                ratios[round] = sizing / doingNothing;
            }
        }
        Arrays.sort(ratios);
        double median = ratios[ROUNDS / 2];
        System.out.printf("median ratio %.3f; at least %.1f is required%n", median, LEAST);
        System.out.printf("connections broken: conductors %d, no-op %d%n", conductors.broken(), noOp.broken());
        return median;
    }

    /** A JSON string of that many bytes. */
    private static byte[] json(int length) {
        return ("\"" + "x".repeat(length - 2) + "\"").getBytes(StandardCharsets.US_ASCII);
    }
}
