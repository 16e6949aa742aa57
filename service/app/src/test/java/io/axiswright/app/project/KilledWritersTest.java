package io.axiswright.app.project;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.project.HistoryChecker.End;
import io.axiswright.app.project.HistoryChecker.Kept;
import io.axiswright.app.project.HistoryChecker.Told;
import io.axiswright.app.project.Way.Outcome;
import io.axiswright.app.support.Service;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Eight writers in every way with preconditions of all sorts, who send again whatever got no answer, on a service with a durable
 * PostgreSQL that is killed in the middle of it, twice.
 */
@Tag("slow")
class KilledWritersTest {

    private static final int WRITERS = 8;
    private static final int EACH = 6;
    private static final int KILLS = 2;
    private static final String PATIENCE = "--axiswright.idempotency.patience=2s";
    private static final Path EXAMPLES = Path.of("..", "..", "api-spec", "examples");

    @TempDir
    Path directory;

    private final AtomicInteger port = new AtomicInteger();
    private final AtomicInteger answered = new AtomicInteger();
    private final AtomicInteger unanswered = new AtomicInteger();
    private final long deadline = System.nanoTime() + Duration.ofMinutes(8).toNanos();
    private final HttpClient client =
            HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(5)).build();

    private static ObjectNode example(String name) throws IOException {
        return (ObjectNode) JsonMapper.shared().readTree(Files.readString(EXAMPLES.resolve(name + ".json")));
    }

    @Test
    void theHistoryKeepsEveryPromise() throws Exception {
        Service service = Service.launch(directory, "first", PATIENCE);
        port.set(service.port());
        var opened = send(request("/v1/projects", example("openProject.request.label-applicator")));
        String project = tree(opened).get("id").asString();
        List<Told> told = new ArrayList<>();

        try (var threads = Executors.newFixedThreadPool(WRITERS)) {
            var writers = IntStream.range(0, WRITERS)
                    .<Callable<List<Told>>>mapToObj(writer -> () -> write(project, writer))
                    .map(threads::submit)
                    .toList();
            for (int kill = 1; kill <= KILLS; kill++) {
                // all writers are at work then
                while (answered.get() < kill * WRITERS * EACH / (KILLS + 1)) {
                    pause(5);
                }
                service.kill();
                service = Service.launch(directory, "after kill " + kill, PATIENCE);
                port.set(service.port());
            }
            for (var writer : writers) {
                told.addAll(writer.get());
            }
        }

        List<Kept> history = history(project);
        service.close();
        assertThat(told)
                .hasSizeGreaterThanOrEqualTo(WRITERS * EACH)
                .extracting(Told::end)
                .contains(End.STORED, End.REFUSED);
        assertThat(unanswered).as("requests hit by a kill").hasPositiveValue();
        assertThat(history).hasSizeGreaterThan(KILLS);
        assertThat(HistoryChecker.faults(told, history)).isEmpty();
    }

    /** Waits a little, but not for ever. */
    private void pause(int milliseconds) throws InterruptedException {
        assertThat(System.nanoTime()).as("patience of this test").isLessThan(deadline);
        Thread.sleep(milliseconds);
    }

    private List<Told> write(String project, int writer) throws Exception {
        var random = new Random(writer);
        var told = new ArrayList<Told>();
        String stale = "\"of another time\"";
        for (int k = 0; k < EACH; k++) {
            String seen = etag(project);
            String ifMatch = switch (random.nextInt(8)) {
                case 0 -> "*";
                case 1 -> stale;
                case 2 -> null;
                default -> seen;
            };
            Way way = Way.values()[random.nextInt(Way.values().length)];
            told.addAll(add(project, "writer %d, %d".formatted(writer, k), way, ifMatch));
            answered.incrementAndGet();
            stale = seen;
        }
        return told;
    }

    /** Sends revisions until they are answered. */
    private List<Told> add(String project, String message, Way way, @Nullable String ifMatch) throws Exception {
        var revisions = new ArrayList<JsonNode>();
        for (int k = 0; k < way.revisions(); k++) {
            revisions.add(example("addRevision.request.first-state").put("message", message + "." + k));
        }
        JsonNode body = way.body(project, ifMatch, revisions);
        String key = '"' + UUID.randomUUID().toString() + '"';
        while (true) {
            var request = request(way.path(project), body).header("Idempotency-Key", key);
            way.header(ifMatch).ifPresent(tag -> request.header("If-Match", tag));
            HttpResponse<String> answer = sendOnce(request);
            if (answer == null) {
                pause(100);
                continue;
            }
            List<Outcome> outcomes = Way.outcomes(answer.statusCode(), tree(answer));
            switch (outcomes.getFirst().status()) {
                case 201 -> {
                    return stored(ifMatch, outcomes);
                }
                case 412, 428 -> {
                    return revisions.stream()
                            .map(asked -> new Told(asked.get("message").asString(), ifMatch, End.REFUSED, 0, null))
                            .toList();
                }
                // the first one of the key is still under way, or the database is just gone
                case 409, 500, 503 -> pause(100);
                default -> throw new AssertionError(answer.statusCode() + " " + answer.body());
            }
        }
    }

    /** What was stored of one request: the first on the state it named, each further one on the one before. */
    private static List<Told> stored(@Nullable String ifMatch, List<Outcome> outcomes) {
        var told = new ArrayList<Told>();
        String before = ifMatch;
        for (Outcome outcome : outcomes) {
            told.add(new Told(outcome.message(), before, End.STORED, outcome.number(), outcome.etag()));
            before = outcome.etag();
        }
        return told;
    }

    private String etag(String project) throws InterruptedException {
        return send(HttpRequest.newBuilder(), "/v1/projects/" + project)
                .headers()
                .firstValue("ETag")
                .orElseThrow();
    }

    private List<Kept> history(String project) {
        JsonNode items = JsonMapper.shared()
                .readTree(given().port(port.get())
                        .get("/v1/projects/{id}/revisions?limit=100", project)
                        .asString())
                .get("items");
        return items.valueStream()
                .map(item -> new Kept(
                        item.get("number").asInt(),
                        item.has("parent") ? item.get("parent").asInt() : null,
                        item.get("message").asString(),
                        item.get("etag").asString()))
                .toList();
    }

    private HttpRequest.Builder request(String path, JsonNode body) {
        return HttpRequest.newBuilder(URI.create("http://localhost:" + port.get() + path))
                .timeout(Duration.ofSeconds(60))
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(body.toString()));
    }

    private @Nullable HttpResponse<String> sendOnce(HttpRequest.Builder request) throws InterruptedException {
        try {
            return client.send(request.build(), BodyHandlers.ofString());
        } catch (IOException e) {
            unanswered.incrementAndGet();
            return null;
        }
    }

    private HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        HttpResponse<String> answer = client.send(request.build(), BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(answer.body()).isLessThan(300);
        return answer;
    }

    /** Asks until it is answered. */
    private HttpResponse<String> send(HttpRequest.Builder request, String path) throws InterruptedException {
        while (true) {
            HttpResponse<String> answer = sendOnce(request.uri(URI.create("http://localhost:" + port.get() + path))
                    .timeout(Duration.ofSeconds(60)));
            if (answer != null && answer.statusCode() == 200) {
                return answer;
            }
            pause(100);
        }
    }

    private static JsonNode tree(HttpResponse<String> answer) {
        return JsonMapper.shared().readTree(answer.body());
    }
}
