package io.axiswright.app.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class DriftApiTest extends ProjectFixture {

    @Autowired
    private JdbcClient database;

    private static JsonNode json(String text) {
        return JsonMapper.shared().readTree(text.replace('\'', '"'));
    }

    @Test
    void nothingMovesUnderTheEngineThatMadeIt() {
        String project = openAndGetId();
        add(project, "*", revision("fresh")).statusCode(201);

        given().get("/v1/projects/{id}/revisions/1/drift", project)
                .then()
                .statusCode(200)
                .body("compared", greaterThan(100))
                .body("moved", empty());
    }

    @Test
    void namesWhatAnotherEngineHadWorkedOutAndLeavesItAsItIs() {
        String project = openAndGetId();
        add(project, "*", revision("old")).statusCode(201);
        var document = (ObjectNode) JsonMapper.shared()
                .readTree(given().get("/v1/projects/{id}/revisions/1", project).asByteArray());
        var duty = (ObjectNode) document.at("/result/duty");
        assertThat(duty.isEmpty()).isFalse();
        duty.put("fromBefore", 7);
        byte[] old = OlderRevision.store(database, project, document);

        given().get("/v1/projects/{id}/revisions/1/drift", project)
                .then()
                .body("moved.path", equalTo(List.of("/duty/fromBefore")))
                .body("moved[0].kind", equalTo("REMOVED"))
                .body("moved[0].before", equalTo(7));
        assertThat(given().get("/v1/projects/{id}/revisions/1", project).asByteArray())
                .isEqualTo(old);
        given().get("/v1/projects/{id}/revisions/2/drift", project).then().statusCode(404);
    }

    @Test
    void matchesElementsByIdAndSubtractsInTheUnitOfBoth() {
        JsonNode before = json("""
                {'engineVersion': '1', 'axes': [{'id': 'a', 'torque': {'value': 2.5, 'unit': 'N.m'}, 'ok': true},
                                                {'id': 'b', 'share': 0.5}], 'list': [1, 2]}""");
        JsonNode after = json("""
                {'engineVersion': '2', 'axes': [{'id': 'b', 'share': 0.75}, {'id': 'c'},
                                                {'id': 'a', 'torque': {'value': 4.0, 'unit': 'N.m'}, 'ok': true}],
                 'list': [1, 2.0, 3]}""");

        var drift = new ResultDrift(before, after, Set.of("engineVersion"));

        // a's id, torque and ok, b's id and share, c itself, three of the list
        assertThat(drift.compared()).isEqualTo(9);
        assertThat(drift.moved())
                .extracting(Drift::path)
                .containsExactly("/axes/a/torque", "/axes/b/share", "/axes/c", "/list/2");
        assertThat(drift.moved().getFirst().difference()).isEqualTo(json("{'value': 1.5, 'unit': 'N.m'}"));
        assertThat(drift.moved().get(1).difference()).isEqualTo(json("0.25"));
        assertThat(drift.moved().get(2).before()).isNull();
    }
}
