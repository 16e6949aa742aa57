package io.axiswright.app.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.restassured.response.Response;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A document that says otherwise than the service does is noticed, whatever it says otherwise. */
class DocumentedTrafficTest extends HttpTest {

    private static final String LIST = "/v1/projects";

    /** Lists projects under a document that was tampered with. */
    private Response listUnder(Consumer<ObjectNode> tamper) {
        var tampered = (ObjectNode) document().root().deepCopy();
        tamper.accept(tampered);
        return given(new ApiDocument(tampered.toString())).get(LIST);
    }

    private static ObjectNode at(ObjectNode root, String pointer) {
        return (ObjectNode) root.at(pointer);
    }

    private void isNoticed(Consumer<ObjectNode> tamper, String words) {
        assertThatThrownBy(() -> listUnder(tamper))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining(words);
    }

    @Test
    void answers() {
        String operation = "/paths/~1v1~1projects/get";
        assertThat(listUnder(document -> {}).statusCode()).isEqualTo(200);
        isNoticed(document -> at(document, "/paths").remove(LIST), "no such operation");
        isNoticed(document -> at(document, operation + "/responses").remove("200"), "no answer of this status");
        isNoticed(
                document -> at(document, operation + "/responses/200/content").removeAll(), "not as application/json");
        isNoticed(
                document -> at(document, operation + "/responses/200").remove("content"), "a body where there is none");
        isNoticed(
                document ->
                        ((ArrayNode) document.at("/components/schemas/ProjectSummaryPage/required")).add("unheardOf"),
                "unheardOf");
        isNoticed(document -> at(document, "/components/headers/ETag/schema").put("pattern", "^unheard of$"), "ETag");
        isNoticed(
                document -> at(document, operation + "/responses/200/headers")
                        .putObject("Unheard-Of")
                        .put("required", true),
                "without Unheard-Of");
    }

    @Test
    void requests() {
        var shortened = (ObjectNode) document().root().deepCopy();
        at(shortened, "/paths/~1v1~1projects/get").remove("parameters");
        assertThatThrownBy(() -> given(new ApiDocument(shortened.toString())).get(LIST + "?limit=1"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("accepted with the unknown parameter limit");
        isNoticed(
                document -> at(document, "/paths/~1v1~1projects/get")
                        .putArray("parameters")
                        .addObject()
                        .put("name", "unheardOf")
                        .put("in", "query")
                        .put("required", true),
                "accepted without unheardOf");
        var tampered = (ObjectNode) document().root().deepCopy();
        at(tampered, "/components/schemas/NewProject/properties/name").put("maxLength", 1);
        assertThatThrownBy(() -> given(new ApiDocument(tampered.toString()))
                        .contentType("application/json")
                        .body("{\"name\": \"" + name("project") + "\"}")
                        .post(LIST))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("accepted with /name");
    }
}
