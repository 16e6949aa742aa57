package io.axiswright.app.sizing;

import io.axiswright.app.support.Demo;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.DoubleNode;
import tools.jackson.databind.node.ObjectNode;

/** Requests made from the demonstration by damaging it: much of it cannot be built, some of it means nothing. */
final class Damages {

    private static final long SEED = 20260;
    private static final int SCALED = 200;

    /** A request and what was done to it. */
    record Damaged(String what, ObjectNode body) {}

    private final String basis;
    private final List<Damaged> made = new ArrayList<>();

    private Damages(String basis) {
        this.basis = basis;
    }

    /** Damages of one kind each. */
    static List<Damaged> of(String basis) {
        var damages = new Damages(basis);
        damages.make("nothing", _ -> {});
        damages.emptied();
        damages.stops();
        damages.feeds();
        damages.faults();
        damages.network();
        damages.mounting();
        damages.mechanisms();
        damages.gearUnits();
        damages.cycles();
        damages.meaningless();
        return damages.made;
    }

    /** Numbers of design and catalogue, one at a time, twenty times as large or small. */
    static List<Damaged> scaled(String basis) {
        var damages = new Damages(basis);
        damages.scaled();
        return damages.made;
    }

    private ObjectNode sound() {
        ObjectNode body = JsonMapper.shared().createObjectNode();
        body.put("codeBasis", basis);
        body.set("inlineCatalogue", Demo.catalogue("damaged"));
        body.set("design", Demo.revision("", "damaged", 1).get("design"));
        return body;
    }

    private void make(String what, Consumer<ObjectNode> damage) {
        ObjectNode body = sound();
        damage.accept(body);
        made.add(new Damaged(basis + ": " + what, body));
    }

    /** Each list of the catalogue missing, and cut to its first element. */
    private void emptied() {
        sound().get("inlineCatalogue").propertyStream().forEach(member -> {
            String list = member.getKey();
            if (member.getValue().isArray()) {
                make("no " + list, body -> ((ObjectNode) body.get("inlineCatalogue")).remove(list));
                make("one of " + list, body -> cut(body, "/inlineCatalogue/" + list));
            }
        });
        make("no prices", body -> body.get("inlineCatalogue").forEach(list -> list.forEach(Damages::unpriced)));
    }

    private static void unpriced(JsonNode item) {
        ((ObjectNode) item).remove("price");
    }

    private void stops() {
        make("no stop zone on every other axis", body -> {
            for (int k = 0; k < body.at("/design/axes").size(); k += 2) {
                at(body, "/design/axes/" + k).remove("stopZone");
            }
        });
        make("no stop inputs", body -> each(body, "/inlineCatalogue/gateways", type -> type.put("stopScope", "NONE")));
        make("one bus for all, stopped at once", body -> {
            each(body, "/design/axes", axis -> axis.put("busGroup", "all"));
            each(body, "/design/stopZones", zone -> value(zone, "decelerationTime", 0.001));
        });
        make("stops without control", body -> {
            at(body, "/inlineCatalogue").remove("brakingUnits");
            each(body, "/design/stopZones", zone -> zone.put("category", "CATEGORY_0"));
        });
        make(
                "every axis with brake and kept alive",
                body -> each(
                        body,
                        "/design/axes",
                        axis -> at(axis, "/drive").put("holdingBrake", true).put("keepAlive", true)));
        make(
                "no axis with a brake",
                body -> each(body, "/design/axes", axis -> at(axis, "/drive").remove("holdingBrake")));
    }

    private void feeds() {
        make(
                "everything fed from a DC bus",
                body -> each(body, "/design/axes", axis -> at(axis, "/drive").put("feed", "DC_BUS")));
        make("a feeder and routes without length", body -> {
            value(at(body, "/design/installation"), "feederLength", 0);
            value(at(body, "/design/network/route"), "slackPerEnd", 0);
        });
        make("one phase", body -> at(body, "/design/mains").put("system", "ONE_PHASE_TWO_WIRE"));
        make("hot and crowded", body -> {
            value(at(body, "/design/site"), "altitude", 3000);
            value(at(body, "/design/site"), "ambient", 60);
            value(at(body, "/design/installation"), "ambient", 75);
            at(body, "/design/installation").put("groupedCircuits", 60);
        });
        make(
                "leaking drive units that bear no fault",
                body -> each(body, "/inlineCatalogue/driveUnits", unit -> {
                    value(unit, "leakageCurrent", 0.5);
                    value(unit, "shortCircuitRating", 1);
                }));
    }

    private void faults() {
        make("little known of supply and devices", body -> {
            at(body, "/design/mains").remove(List.of("minimumFaultCurrent", "earthFaultLoopImpedance", "earthing"));
            each(body, "/inlineCatalogue/protectiveDevices", device -> device.remove("clearingPoints"));
        });
        make("little known of the supply", body -> at(body, "/design/mains").remove("earthFaultLoopImpedance"));
        make("earth electrodes", body -> at(body, "/design/mains").put("earthing", "TT"));
        make("no earthing at all", body -> at(body, "/design/mains").put("earthing", "IT"));
        make("a long way to earth", body -> value(at(body, "/design/mains"), "earthFaultLoopImpedance", 20));
        make("a strong supply", body -> value(at(body, "/design/mains"), "prospectiveFaultCurrent", 150));
        make("lowest above highest", body -> value(at(body, "/design/mains"), "minimumFaultCurrent", 150));
        make(
                "devices that let everything through",
                body -> each(
                        body, "/inlineCatalogue/protectiveDevices", device -> value(device, "letThroughEnergy", 1e9)));
        make("transformers", body -> {
            value(at(body, "/design/mains"), "voltage", 690);
            at(body, "/design/installation").put("transformerImpedance", 0.04);
        });
    }

    private void network() {
        make("one place for one gateway", body -> {
            cut(body, "/design/network/places");
            at(body, "/design/network/places/0").put("maxGateways", 1);
        });
        make(
                "short cables",
                body -> each(body, "/inlineCatalogue/cableAssemblies", cable -> value(cable, "length", 0.1)));
        make("commands beyond the host", body -> each(body, "/design/axes", axis -> value(axis, "commandRate", 90000)));
    }

    private void mounting() {
        make(
                "on a key that is sheared, on feet nobody sells",
                body -> each(body, "/design/axes", axis -> {
                    ObjectNode mounting = axis.putObject("mounting");
                    mounting.put("kind", "FOOT").put("safetyFactor", 10);
                    mounting.putObject("shaftHeight").put("value", 1.9).put("unit", "m");
                    ObjectNode key = mounting.putObject("fastening").put("kind", "KEY");
                    key.putObject("engagedLength").put("value", 1).put("unit", "mm");
                    key.putObject("yieldStrength").put("value", 10).put("unit", "MPa");
                }));
    }

    private void mechanisms() {
        make("a whirling screw that buckles, with a nut that wears", body -> {
            ObjectNode screw = at(body, "/design/axes/2/mechanism");
            ObjectNode support = screw.putObject("support").put("ends", "FIXED_FREE");
            support.putObject("rootDiameter").put("value", 2).put("unit", "mm");
            ObjectNode nut = screw.putObject("nut");
            nut.putObject("dynamicLoadRating").put("value", 1).put("unit", "N");
            nut.putObject("requiredLife").put("value", 20000).put("unit", "h");
        });
        make("a slack belt that tears", body -> {
            ObjectNode tension = at(body, "/design/axes/7/mechanism").putObject("tension");
            tension.putObject("workingLoad").put("value", 1).put("unit", "N");
            tension.putObject("pretension").put("value", 0.1).put("unit", "N");
        });
        make("a screw with efficiency and thread, another with neither", body -> {
            ObjectNode thread = at(body, "/design/axes/2/mechanism").putObject("thread");
            thread.put("friction", 0.1);
            thread.putObject("flankAngle").put("value", 0.2).put("unit", "rad");
            thread.putObject("pitchDiameter").put("value", 1).put("unit", "m");
            at(body, "/design/axes/3/mechanism").remove("efficiency");
        });
        make("a rope that is too short", body -> {
            ObjectNode rope = at(body, "/design/axes/10/mechanism").putObject("rope");
            rope.put("compensated", true);
            rope.putObject("mass").put("value", 1).put("unit", "kg");
            rope.putObject("height").put("value", 1).put("unit", "cm");
            rope.putObject("start").put("value", 2).put("unit", "cm");
        });
        make(
                "a crank that turns for ever",
                body -> at(body, "/design/axes/4")
                        .set("mechanism", JsonMapper.shared().readTree("""
                        {"kind": "CRANK", "radius": {"value": 0.1, "unit": "m"}, "rodLength": {"value": 0.05, "unit": "m"},
                         "crankInertia": {"value": 0.1, "unit": "kg.m2"}, "load": {"value": 5, "unit": "kg"},
                         "inclination": {"value": 0, "unit": "rad"}, "startAngle": {"value": 0, "unit": "rad"},
                         "efficiency": 1}
                        """)));
    }

    private void cycles() {
        make("a payload taken up and put down in motion", body -> segments(body, 2, """
                [{"kind": "RAMP", "endSpeed": {"value": 0.1, "unit": "m/s"}, "duration": {"value": 0.1, "unit": "s"}},
                 {"kind": "RUN", "speed": {"value": 0.1, "unit": "m/s"}, "duration": {"value": 0.1, "unit": "s"},
                  "payload": {"value": 1, "unit": "kg"}},
                 {"kind": "RAMP", "startSpeed": {"value": 0.1, "unit": "m/s"}, "duration": {"value": 0.1, "unit": "s"}}]
                """));
        make("a top speed that is never reached", body -> segments(body, 2, """
                [{"kind": "MOVE", "distance": {"value": 10, "unit": "mm"}, "law": {"kind": "TRAPEZOIDAL"},
                  "topSpeed": {"value": 9, "unit": "m/s"}, "acceleration": {"value": 1, "unit": "m/s2"}}]
                """));
        make("segments that contradict themselves and each other", body -> segments(body, 2, """
                [{"kind": "MOVE", "law": {"kind": "TRIANGULAR"}},
                 {"kind": "MOVE", "distance": {"value": 0, "unit": "m"}, "law": {"kind": "TRIANGULAR"}},
                 {"kind": "MOVE", "distance": {"value": 1, "unit": "m"}, "duration": {"value": 1, "unit": "s"},
                  "law": {"kind": "TRAPEZOIDAL", "accelerationShare": 0.8, "decelerationShare": 0.8},
                  "topSpeed": {"value": -9, "unit": "m/s"}},
                 {"kind": "MOVE", "distance": {"value": 1, "unit": "m"}, "duration": {"value": 1, "unit": "s"},
                  "law": {"kind": "CYCLOIDAL"}, "jerk": {"value": 1, "unit": "m/s3"},
                  "topSpeed": {"value": 1, "unit": "rad/s"}},
                 {"kind": "MOVE", "distance": {"value": 1, "unit": "m"}, "duration": {"value": 1, "unit": "s"},
                  "law": {"kind": "TRIANGULAR"}, "jerk": {"value": 1, "unit": "m/s3"}},
                 {"kind": "RUN", "speed": {"value": 0.1, "unit": "m/s"}},
                 {"kind": "RUN", "speed": {"value": 0, "unit": "m/s"}, "duration": {"value": 1, "unit": "s"}},
                 {"kind": "RAMP", "endSpeed": {"value": 0.1, "unit": "m/s"}, "distance": {"value": -1, "unit": "m"}},
                 {"kind": "JOG", "speed": {"value": 0.1, "unit": "m/s"}, "starting": {}, "running": {}, "stopping": {}},
                 {"kind": "SPEED_COURSE", "points": [
                  {"time": {"value": 1, "unit": "s"}, "speed": {"value": 1, "unit": "m/s"}},
                  {"time": {"value": 0, "unit": "s"}, "speed": {"value": 1, "unit": "m/s"}}]},
                 {"kind": "TORQUE_COURSE", "at": "LOAD", "points": [
                  {"time": {"value": 0, "unit": "s"}, "speed": {"value": 1, "unit": "m/s"},
                   "effort": {"value": 1, "unit": "N.m"}},
                  {"time": {"value": 1, "unit": "s"}, "speed": {"value": 2, "unit": "m/s"},
                   "effort": {"value": 1, "unit": "N"}}]},
                 {"kind": "RUN", "speed": {"value": 0.1, "unit": "m/s"}, "duration": {"value": 1, "unit": "s"}}]
                """));
    }

    private static void segments(ObjectNode body, int axis, String segments) {
        at(body, "/design/axes/" + axis + "/cycle")
                .set("segments", JsonMapper.shared().readTree(segments));
    }

    private void gearUnits() {
        String drive = "/design/axes/13/drive";
        make("gear unit named and to be chosen", body -> at(body, drive).put("gearUnit", "gear-60-3"));
        make("gear unit of nothing", body -> named(body, drive, "nothing"));
        make("gear unit that fits no drive unit", body -> {
            named(body, drive, "gear-60-3");
            at(body, drive).put("item", "drive-80-1p-a");
        });
        make("gear unit too weak", body -> {
            named(body, drive, "gear-60-3");
            at(body, drive).put("item", "drive-60-1p-a");
            each(body, "/inlineCatalogue/gearUnits", gear -> {
                for (String limit : List.of("nominalTorque", "peakTorque", "emergencyTorque", "highestInputSpeed")) {
                    value(gear, limit, 0.1);
                }
            });
        });
    }

    private static void named(ObjectNode body, String drive, String gear) {
        at(body, drive).remove("gear");
        at(body, drive).put("gearUnit", gear);
    }

    private void meaningless() {
        for (String part : List.of("network", "controlPower", "installation", "mains", "site")) {
            make("no " + part, body -> at(body, "/design").remove(part));
        }
        make("ids twice and of nothing", body -> {
            at(body, "/design/axes/1").set("id", body.at("/design/axes/0/id"));
            at(body, "/design/axes/2").put("stopZone", "nowhere");
            at(body, "/design/controlPower").put("place", "nowhere");
        });
        make("members missing and unknown", body -> {
            at(body, "/design/axes/3").remove("cycle");
            at(body, "/design/axes/4").put("a/b~c", 1);
            at(body, "/inlineCatalogue/driveUnits/0").remove("feed");
        });
    }

    private void scaled() {
        var random = new SplittableRandom(SEED);
        List<String> numbers = new ArrayList<>();
        numbers(sound(), "", numbers);
        for (int k = 0; k < SCALED; k++) {
            String number = numbers.get(random.nextInt(numbers.size()));
            double factor = random.nextBoolean() ? 20 : 0.05;
            make("seed " + SEED + ", " + number + " times " + factor, body -> {
                int last = number.lastIndexOf('/');
                JsonNode scaled = DoubleNode.valueOf(body.at(number).asDouble() * factor);
                at(body, number.substring(0, last)).set(number.substring(last + 1), scaled);
            });
        }
    }

    private static void numbers(JsonNode node, String pointer, List<String> numbers) {
        node.propertyStream().forEach(member -> {
            String inside = pointer + "/" + member.getKey();
            if (member.getValue().isNumber()) {
                numbers.add(inside);
            }
            numbers(member.getValue(), inside, numbers);
        });
        for (int k = 0; node.isArray() && k < node.size(); k++) {
            numbers(node.get(k), pointer + "/" + k, numbers);
        }
    }

    private static ObjectNode at(ObjectNode body, String pointer) {
        return (ObjectNode) body.at(pointer);
    }

    private static void each(ObjectNode body, String list, Consumer<ObjectNode> change) {
        body.at(list).forEach(element -> change.accept((ObjectNode) element));
    }

    private static void value(ObjectNode owner, String member, double value) {
        at(owner, "/" + member).put("value", value);
    }

    private static void cut(ObjectNode body, String list) {
        var elements = (ArrayNode) body.at(list);
        while (elements.size() > 1) {
            elements.remove(elements.size() - 1);
        }
    }
}
