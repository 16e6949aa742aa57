package io.axiswright.app.apispec;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.node.ObjectNode;

/** Designs without meaning: the place and kind of every fault is said. */
class RefusedSizingTest extends RefusalTest {

    @ParameterizedTest
    @CsvSource({
        "/design/axes/0/gears/0, ratio, 0",
        "/design/axes/0/gears/0, ratio, -3",
        "/design/axes/0/gears/0, efficiency, 1.5",
        "/design/axes/0/mechanism/load, value, -1",
        "/design/axes/0/commandRate, value, 0",
        "/design/axes/0/cycle/segments/0/duration, value, 0",
        "/design/axes/0/cycle/segments/0/duration, value, 1e300",
        "/design/mains/voltage, value, -400",
        "/design/installation, groupedCircuits, 0",
        "/catalogue, version, 0"
    })
    void numbersThatMakeNoSense(String object, String member, double number) {
        ObjectNode body = sizing();
        at(body, object).put(member, number);
        if (number == Math.rint(number) && Math.abs(number) < 1000) {
            at(body, object).put(member, (int) number);
        }
        fault(system(body), "OUT_OF_RANGE", object + "/" + member);
    }

    @Test
    void numbersTooLargeForAnything() {
        String body = sizing().toString().replace("\"ratio\":5", "\"ratio\":1e999");
        assertThat(body).contains("1e999");
        fault(raw(body).post("/v1/sizing/system"), "OUT_OF_RANGE", "/design/axes/0/gears/0/ratio");
    }

    @Test
    void membersUnknownMissingAndOfTheWrongUnit() {
        ObjectNode unknown = sizing();
        at(unknown, "/design/axes/1").put("gearing", 3);
        fault(system(unknown), "UNKNOWN_MEMBER", "/design/axes/1/gearing");
        ObjectNode missing = sizing();
        at(missing, "/design").remove("mains");
        fault(system(missing), "MISSING", "/design/mains");
        ObjectNode unit = sizing();
        at(unit, "/design/axes/0/mechanism/load").put("unit", "stone");
        fault(system(unit), "WRONG_UNIT", "/design/axes/0/mechanism/load/unit");
        at(unit, "/design/axes/0/mechanism/load").put("unit", "m");
        fault(system(unit), "WRONG_UNIT", "/design/axes/0/mechanism/load/unit");
        ObjectNode basis = sizing().put("codeBasis", "HOUSE_RULES");
        fault(system(basis), "UNKNOWN_VALUE", "/codeBasis");
        ObjectNode kind = sizing();
        at(kind, "/design/axes/0/mechanism").put("kind", "LEVITATION");
        fault(system(kind), "UNKNOWN_VALUE", "/design/axes/0/mechanism/kind");
    }

    @Test
    void namesThatContradictEachOther() {
        ObjectNode twice = sizing();
        at(twice, "/design/axes/1").put("id", "label-feed");
        fault(system(twice), "DUPLICATE_ID", "/design/axes/1/id");
        ObjectNode zone = sizing();
        at(zone, "/design/axes/0").put("stopZone", "nowhere");
        fault(system(zone), "DANGLING_REFERENCE", "/design/axes/0/stopZone");
        ObjectNode place = sizing();
        at(place, "/design/controlPower").put("place", "nowhere");
        fault(system(place), "DANGLING_REFERENCE", "/design/controlPower/place");
        ObjectNode item = sizing();
        at(item, "/design/axes/0/drive").put("item", "drive-of-dreams");
        fault(system(item), "DANGLING_REFERENCE", "/design/axes/0/drive/item");
    }

    @ParameterizedTest
    @CsvSource({
        "topology, network",
        "control-power, network",
        "control-power, controlPower",
        "supply, installation",
        "bill-of-materials, installation",
        "system, network"
    })
    void partsThatAnEndpointNeeds(String endpoint, String part) {
        ObjectNode body = sizing();
        at(body, "/design").remove(part);
        if (part.equals("network")) {
            // its place is the network's
            at(body, "/design").remove("controlPower");
        }
        fault(given(body).post("/v1/sizing/" + endpoint), "MISSING", "/design/" + part);
    }

    @Test
    void cataloguesNamedTwiceOrNotAtAllOrUnknown() {
        ObjectNode none = sizing();
        none.remove("catalogue");
        fault(system(none), "MISSING", "/catalogue");
        ObjectNode two = sizing();
        two.set("inlineCatalogue", catalogue());
        fault(system(two), "INCONSISTENT", "/inlineCatalogue");
        ObjectNode unknown = sizing();
        at(unknown, "/catalogue").put("name", "nobody's");
        fault(system(unknown), "DANGLING_REFERENCE", "/catalogue");
        ObjectNode version = sizing();
        at(version, "/catalogue").put("version", 4711);
        fault(system(version), "DANGLING_REFERENCE", "/catalogue");
    }
}
