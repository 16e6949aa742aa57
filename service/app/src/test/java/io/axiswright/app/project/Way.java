package io.axiswright.app.project;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The ways by which revisions come to a project, each with its request and what its answer says. */
enum Way {
    /** A request of its own. */
    SINGLE(1),
    /** One of a batch. */
    BATCH(1),
    /** A history of two. */
    IMPORT(2);

    /**
     * What became of a revision.
     *
     * @param status 201 if it is stored
     * @param number its number then
     */
    record Outcome(int status, int number, String message, String etag) {

        static Outcome stored(JsonNode revision) {
            return new Outcome(
                    201,
                    revision.get("number").asInt(),
                    revision.get("message").asString(),
                    revision.get("etag").asString());
        }

        static Outcome refused(int status) {
            return new Outcome(status, 0, "", "");
        }
    }

    private final int revisions;

    Way(int revisions) {
        this.revisions = revisions;
    }

    /** How many revisions one request brings. */
    int revisions() {
        return revisions;
    }

    String path(String project) {
        return switch (this) {
            case SINGLE -> "/v1/projects/" + project + "/revisions";
            case BATCH -> "/v1/revisions:batch";
            case IMPORT -> "/v1/projects/" + project + "/revisions:import";
        };
    }

    /** The header If-Match of its request; a batch has it in its body. */
    Optional<String> header(@Nullable String ifMatch) {
        return this == BATCH ? Optional.empty() : Optional.ofNullable(ifMatch);
    }

    JsonNode body(String project, @Nullable String ifMatch, List<JsonNode> revisions) {
        ObjectNode body = JsonMapper.shared().createObjectNode();
        return switch (this) {
            case SINGLE -> revisions.getFirst();
            case BATCH -> {
                ObjectNode asked = body.putArray("revisions").addObject().put("project", project);
                if (ifMatch != null) {
                    asked.put("ifMatch", ifMatch);
                }
                asked.putObject("change").put("kind", "REVISION").set("revision", revisions.getFirst());
                yield body;
            }
            case IMPORT -> {
                body.putArray("revisions").addAll(revisions);
                yield body;
            }
        };
    }

    /** What became of each revision of a request, whatever its way. */
    static List<Outcome> outcomes(int status, JsonNode answer) {
        if (answer.has("items")) {
            return answer.get("items")
                    .valueStream()
                    .map(item -> item.has("revision")
                            ? Outcome.stored(item.get("revision"))
                            : Outcome.refused(item.get("status").asInt()))
                    .toList();
        }
        if (answer.has("revisions")) {
            return answer.get("revisions").valueStream().map(Outcome::stored).toList();
        }
        return List.of(status == 201 ? Outcome.stored(answer) : Outcome.refused(status));
    }
}
