package io.axiswright.app.apispec;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.support.ApiDocument.Operation;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** What every part of the document has to have. */
class DocumentRulesTest extends ApiSpecTest {

    @Test
    void everyReferenceLeadsSomewhere() {
        for (JsonNode reference : document().root().findValues("$ref")) {
            String pointer = reference.asString().substring(1);
            assertThat(document().root().at(pointer).isMissingNode())
                    .as(pointer)
                    .isFalse();
        }
    }

    @Test
    void everySchemaIsOursAndEveryMemberIsDescribed() {
        for (Map.Entry<String, JsonNode> schema :
                document().root().at("/components/schemas").properties()) {
            for (Map.Entry<String, JsonNode> property :
                    schema.getValue().path("properties").properties()) {
                boolean described = property.getValue().has("description")
                        || property.getValue().has("const");
                assertThat(described)
                        .as(schema.getKey() + "." + property.getKey())
                        .isTrue();
            }
        }
    }

    @Test
    void pagesAreNamedByWhatTheyHold() {
        JsonNode items = document().root().at("/components/schemas/ProjectSummaryPage/properties/items/items/$ref");
        assertThat(items.asString()).isEqualTo("#/components/schemas/ProjectSummary");
    }

    @Test
    void requestsAreClosed() {
        for (String name : List.of("SizingRequest", "Design", "Catalogue", "NewProject", "NewRevision")) {
            JsonNode schema = document().root().at("/components/schemas/" + name);
            assertThat(schema.path("additionalProperties").asBoolean(true))
                    .as(name)
                    .isFalse();
        }
    }

    @Test
    void theHeadIsWhatTheServiceIs() {
        JsonNode root = document().root();
        assertThat(root.get("openapi").asString()).startsWith("3.1");
        assertThat(root.at("/info/title").asString()).isEqualTo("Axiswright");
        assertThat(root.at("/info/license/identifier").asString()).isEqualTo("Apache-2.0");
        assertThat(root.at("/info/description").asString()).contains("a qualified person decides");
        assertThat(root.at("/servers/0/url").asString()).isEqualTo("/");
        assertThat(root.toString()).doesNotContain("localhost");
    }

    @Test
    void operationsAreDescribedAndTheirIdsUnique() {
        List<Operation> operations = document().operations().toList();
        assertThat(operations).hasSize(43).extracting(Operation::id).doesNotHaveDuplicates();
        for (Operation operation : operations) {
            assertThat(operation.content().path("summary").asString(""))
                    .as(operation.id())
                    .isNotBlank();
            assertThat(operation.content().path("description").asString(""))
                    .as(operation.id())
                    .hasSizeGreaterThan(60);
            assertThat(operation.content().path("tags")).as(operation.id()).hasSize(1);
            assertThat(operation.content().path("parameters").valueStream())
                    .as(operation.id())
                    .allMatch(parameter -> document().resolve(parameter).has("description"));
        }
        assertThat(document().root().at("/tags").valueStream().map(tag -> tag.get("name")))
                .containsAll(operations.stream()
                        .map(operation -> operation.content().at("/tags/0"))
                        .toList());
    }

    @Test
    void everyBodyHasAnExample() {
        document()
                .operations()
                .filter(Operation::takesBody)
                .forEach(operation -> assertThat(
                                operation.content().at("/requestBody/content").valueStream())
                        .as(operation.id())
                        .isNotEmpty()
                        .allMatch(media -> !media.path("examples").isEmpty()));
        answers()
                .filter(answer ->
                        !answer.status().equals("204") && !answer.status().equals("304"))
                .forEach(answer -> assertThat(answer.media().path("examples"))
                        .as(answer.name())
                        .isNotEmpty());
    }

    @Test
    void everyFailureIsAProblem() {
        List<Answer> failures = answers()
                .filter(answer -> answer.status().compareTo("400") >= 0)
                .toList();
        assertThat(failures).hasSizeGreaterThan(100);
        for (Answer failure : failures) {
            assertThat(failure.response().path("content").propertyNames())
                    .as(failure.name())
                    .containsExactly("application/problem+json");
            assertThat(failure.media().at("/schema/$ref").asString())
                    .as(failure.name())
                    .isEqualTo("#/components/schemas/Problem");
        }
    }

    @Test
    void everyExampleIsValidByItsSchema() {
        Stream<JsonNode> bodies = document()
                .operations()
                .map(operation -> operation.content().at("/requestBody/content/application~1json"))
                .filter(media -> !media.isMissingNode());
        Stream.concat(bodies, answers().map(Answer::media))
                .forEach(media -> media.path("examples")
                        .forEachEntry((name, example) -> assertThat(document()
                                        .faults(
                                                media.get("schema"),
                                                document().resolve(example).get("value")))
                                .as(name)
                                .isEmpty()));
    }

    @Test
    void everyDefaultIsValidByItsSchema() {
        for (JsonNode owner : document().root().findParents("default")) {
            assertThat(document().faults(owner, owner.get("default")))
                    .as("%s", owner)
                    .isEmpty();
        }
    }

    private record Answer(String name, String status, JsonNode response) {

        JsonNode media() {
            return response.path("content").valueStream().findFirst().orElse(response.path("content"));
        }
    }

    private Stream<Answer> answers() {
        return document()
                .operations()
                .flatMap(operation -> operation
                        .content()
                        .get("responses")
                        .propertyStream()
                        .map(response -> new Answer(
                                operation.id() + " " + response.getKey(),
                                response.getKey(),
                                document().resolve(response.getValue()))));
    }
}
