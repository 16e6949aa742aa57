package io.axiswright.app.project;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ConcurrentRevisionsTest extends ProjectFixture {

    private static final int WRITERS = 8;
    private static final int EACH = 2;

    /** What one writer was told: the number and message of all it stored, and every status it saw. */
    private record Told(List<String> stored, List<Integer> statuses) {}

    @Test
    void losesNothingAndLeavesNoGapWhenManyWriteAtOnceInEveryWay() throws Exception {
        String project = openAndGetId();
        List<Callable<Told>> writers = IntStream.range(0, WRITERS)
                .<Callable<Told>>mapToObj(writer -> () -> write(project, writer))
                .toList();
        List<String> acknowledged = new ArrayList<>();
        List<Integer> statuses = new ArrayList<>();

        try (var threads = Executors.newFixedThreadPool(WRITERS)) {
            for (var done : threads.invokeAll(writers)) {
                acknowledged.addAll(done.get().stored());
                statuses.addAll(done.get().statuses());
            }
        }

        List<String> kept = given().get("/v1/projects/{id}/revisions?limit=100", project)
                .then()
                .extract()
                .path("items.collect { it.number + ': ' + it.message }");
        assertThat(statuses).containsOnly(201, 412);
        assertThat(kept).hasSizeGreaterThanOrEqualTo(WRITERS * EACH);
        assertThat(kept).containsExactlyInAnyOrderElementsOf(acknowledged);
        assertThat(kept.stream().map(line -> Integer.parseInt(line.substring(0, line.indexOf(':')))))
                .containsExactly(IntStream.rangeClosed(1, kept.size())
                        .map(k -> kept.size() + 1 - k)
                        .boxed()
                        .toArray(Integer[]::new));
    }

    private Told write(String project, int writer) {
        var told = new Told(new ArrayList<>(), new ArrayList<>());
        Way way = Way.values()[writer % Way.values().length];
        while (told.stored().size() < EACH) {
            String message = "writer " + writer + ", " + told.stored().size();
            List<JsonNode> revisions = IntStream.range(0, way.revisions())
                    .mapToObj(k -> revision(message + "." + k))
                    .toList();
            String seen = etag(project);
            var request = given(way.body(project, seen, revisions)).urlEncodingEnabled(false);
            way.header(seen).ifPresent(tag -> request.header("If-Match", tag));
            var answer = request.post(way.path(project));
            List<Way.Outcome> outcomes =
                    Way.outcomes(answer.statusCode(), JsonMapper.shared().readTree(answer.asString()));
            told.statuses().add(outcomes.getFirst().status());
            outcomes.stream()
                    .filter(outcome -> outcome.status() == 201)
                    .forEach(outcome -> told.stored().add(outcome.number() + ": " + outcome.message()));
        }
        return told;
    }
}
