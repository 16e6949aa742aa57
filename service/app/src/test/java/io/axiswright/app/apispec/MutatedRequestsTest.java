package io.axiswright.app.apispec;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.support.Pointers;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Every single value of a good request, spoilt in several ways: an answer or a problem with a place, never our failure. */
class MutatedRequestsTest extends RefusalTest {

    private static final List<JsonNode> VALUES = Stream.of("null", "-1", "0", "1e9", "\"\"", "\"nonsense\"", "[]", "{}")
            .map(MutatedRequestsTest::json)
            .toList();
    private static final List<JsonNode> CONTAINERS =
            Stream.of("null", "-1", "[]", "{}").map(MutatedRequestsTest::json).toList();
    /** Coprime to the number of ways, so that a sample holds all of them. */
    private static final int SAMPLE = 13;

    private static JsonNode json(String text) {
        return JsonMapper.shared().readTree(text);
    }

    private static String circuits() {
        return example("sizeConductors.request.one-branch").toString();
    }

    private static String ownCatalogue() {
        return example("sizeDuty.request.one-axis-in-customary-units").toString();
    }

    @Test
    void someValuesOfEachRequest() {
        assertThat(spoilAndSend(sizing().toString(), "/v1/sizing/system", SAMPLE))
                .isGreaterThan(100);
        assertThat(spoilAndSend(ownCatalogue(), "/v1/sizing/duty", SAMPLE)).isGreaterThan(60);
        assertThat(spoilAndSend(circuits(), "/v1/sizing/conductors", SAMPLE)).isGreaterThan(15);
    }

    @Test
    void listsThatAreNullWhereSomethingMustBe() {
        ObjectNode body = sizing();
        at(body, "/design/axes/0/cycle").putNull("segments");
        at(body, "/design").putNull("stopZones");
        fault(system(body), "MISSING", "/design/axes/0/cycle/segments");
    }

    @Test
    @Tag("slow")
    void everyValueOfADesign() {
        assertThat(spoilAndSend(sizing().toString(), "/v1/sizing/system", 1)).isGreaterThan(1300);
    }

    @Test
    @Tag("slow")
    void everyValueOfACatalogueAndOfCircuits() {
        assertThat(spoilAndSend(ownCatalogue(), "/v1/sizing/duty", 1)).isGreaterThan(700);
        assertThat(spoilAndSend(circuits(), "/v1/sizing/conductors", 1)).isGreaterThan(180);
    }

    /** Sends every so manieth of the spoilt requests; says how many it sent. */
    private int spoilAndSend(String request, String path, int step) {
        var failures = new ArrayList<String>();
        var spoilt = new ArrayList<Spoilt>();
        walk(json(request), "", spoilt);
        int sent = 0;
        for (int k = 0; k < spoilt.size(); k += step, sent++) {
            Spoilt one = spoilt.get(k);
            JsonNode body = json(request);
            replace(body, one.pointer(), one.value());
            Response answer = given(body).post(path);
            if (!isAnsweredOrRefused(body, answer)) {
                failures.add(one + " is answered " + answer.statusCode() + " " + answer.asString());
            }
        }
        assertThat(failures).isEmpty();
        return sent;
    }

    /** A sizing points only to places of what was sent; a member may be missing there. */
    private static boolean isAnsweredOrRefused(JsonNode body, Response answer) {
        JsonNode said = json(answer.asString());
        if (answer.statusCode() == 200) {
            return said.at("/findings")
                    .valueStream()
                    .allMatch(finding -> Pointers.leadsToSomething(
                            body, finding.get("pointer").asString()));
        }
        return answer.statusCode() == 422
                && said.at("/errors")
                        .valueStream()
                        .allMatch(error -> Pointers.leadsToAPlace(
                                body,
                                error.get("pointer").asString(),
                                error.get("code").asString()));
    }

    private record Spoilt(String pointer, JsonNode value) {}

    private static void walk(JsonNode node, String pointer, List<Spoilt> spoilt) {
        if (!pointer.isEmpty()) {
            (node.isContainer() ? CONTAINERS : VALUES).forEach(value -> spoilt.add(new Spoilt(pointer, value)));
        }
        node.propertyStream().forEach(member -> walk(member.getValue(), pointer + "/" + member.getKey(), spoilt));
        for (int k = 0; node.isArray() && k < node.size(); k++) {
            walk(node.get(k), pointer + "/" + k, spoilt);
        }
    }

    private static void replace(JsonNode root, String pointer, JsonNode value) {
        int last = pointer.lastIndexOf('/');
        String name = pointer.substring(last + 1);
        switch (root.at(pointer.substring(0, last))) {
            case ObjectNode object -> object.set(name, value);
            case ArrayNode array -> array.set(Integer.parseInt(name), value);
            default -> throw new IllegalArgumentException(pointer);
        }
    }
}
