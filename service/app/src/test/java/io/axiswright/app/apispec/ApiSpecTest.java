package io.axiswright.app.apispec;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.support.ApiDocument.Operation;
import io.axiswright.app.support.HttpTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;

/** Sends requests as the document describes them, and holds the answers against the stored ones. */
abstract class ApiSpecTest extends HttpTest {

    private Lasting lasting = new Lasting();

    @BeforeEach
    void startAnew() {
        lasting = new Lasting();
    }

    /** A request with the body of an example file. */
    RequestSpecification withExample(String file) {
        return given().contentType("application/json").body(SpecFiles.request(file));
    }

    Response send(String operation, RequestSpecification request, Object... pathVariables) {
        Operation described = document().operation(operation);
        return request.request(described.method(), described.path(), pathVariables);
    }

    /** Holds an answer against the example of that name. */
    Response expect(Response answer, String operation, int status, String name) {
        return expect(answer, operation, status, name, Integer.MAX_VALUE);
    }

    /** The same of a long list: the example is its beginning. */
    Response expectStart(Response answer, String operation, int status, String name) {
        return expect(answer, operation, status, name, 3);
    }

    private Response expect(Response answer, String operation, int status, String name, int items) {
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(status);
        var shown = JsonMapper.shared().readTree(lasting.in(answer.asString()));
        if (shown.get("items") instanceof ArrayNode list) {
            while (list.size() > items) {
                list.remove(items);
            }
        }
        SpecFiles.hold(SpecFiles.example(operation + "." + status + "." + name), PrettyJson.of(shown));
        return answer;
    }

    /** The headers the document promises with an answer are there. */
    void expectHeaders(Response answer, String operation) {
        var response = document().answer(document().operation(operation), answer.statusCode());
        for (Map.Entry<String, ?> header : response.path("headers").properties()) {
            assertThat(answer.header(header.getKey()))
                    .as("%s %s", operation, header.getKey())
                    .isNotBlank();
        }
    }
}
