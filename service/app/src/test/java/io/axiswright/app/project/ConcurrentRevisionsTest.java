package io.axiswright.app.project;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class ConcurrentRevisionsTest extends ProjectFixture {

    private static final int WRITERS = 8;
    private static final int EACH = 2;

    /** What one writer was told: the message it stored under each number, and every status it saw. */
    private record Told(List<String> stored, List<Integer> statuses) {}

    @Test
    void losesNothingAndLeavesNoGapWhenManyWriteAtOnce() throws Exception {
        String project = openAndGetId();
        List<Callable<Told>> writers = IntStream.range(0, WRITERS)
                .<Callable<Told>>mapToObj(writer -> () -> write(project, "writer " + writer))
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
        assertThat(kept).containsExactlyInAnyOrderElementsOf(acknowledged);
        assertThat(kept.stream().map(line -> Integer.parseInt(line.substring(0, line.indexOf(':')))))
                .containsExactly(IntStream.rangeClosed(1, WRITERS * EACH)
                        .map(k -> WRITERS * EACH + 1 - k)
                        .boxed()
                        .toArray(Integer[]::new));
    }

    private Told write(String project, String writer) {
        var told = new Told(new ArrayList<>(), new ArrayList<>());
        String seen = etag(project);
        while (told.stored().size() < EACH) {
            String message = writer + ", " + told.stored().size();
            JsonNode revision = revision(message);
            var answer = add(project, seen, revision).extract();
            told.statuses().add(answer.statusCode());
            if (answer.statusCode() == 201) {
                told.stored().add(answer.path("number") + ": " + message);
            }
            seen = answer.header("ETag");
        }
        return told;
    }
}
