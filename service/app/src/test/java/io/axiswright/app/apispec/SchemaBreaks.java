package io.axiswright.app.apispec;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/**
 * What a later schema breaks for whom keeps to an earlier one. A caller must still be able to send what was taken, and still
 * find in answers what was promised. Answers may gain members, words of closed lists (findings are added all the time) and choices.
 */
final class SchemaBreaks {

    /** Which way the documents of a schema go. */
    enum Way {
        REQUEST,
        ANSWER
    }

    /** Keywords that forbid more the higher they are. */
    private static final List<String> LEAST =
            List.of("minimum", "exclusiveMinimum", "minLength", "minItems", "minProperties");

    /** Keywords that forbid more the lower they are. */
    private static final List<String> MOST =
            List.of("maximum", "exclusiveMaximum", "maxLength", "maxItems", "maxProperties");

    private final JsonNode before;
    private final JsonNode after;
    private final Set<String> seen = new HashSet<>();
    private final List<String> found = new ArrayList<>();

    SchemaBreaks(JsonNode before, JsonNode after) {
        this.before = before;
        this.after = after;
    }

    List<String> found() {
        return found;
    }

    /** Compares what stands at one place in both documents. */
    void compare(String place, Way way, JsonNode earlier, JsonNode later) {
        JsonNode old = resolve(before, earlier);
        JsonNode now = resolve(after, later);
        // named schemas refer to each other in circles; what was found at the first place is not told at others
        if (earlier.has("$ref")
                && !seen.add(way
                        + earlier.get("$ref").asString()
                        + later.path("$ref").asString(""))) {
            return;
        }
        types(place, way, old, now);
        words(place, way, old, now);
        members(place, way, old, now);
        if (way == Way.REQUEST) {
            ranges(place, old, now);
        } else {
            promises(place, old, now);
        }
        within(place + "[]", way, old.path("items"), now.path("items"));
        within(place + ".*", way, old.path("additionalProperties"), now.path("additionalProperties"));
        choices(place, way, old, now);
    }

    private void within(String place, Way way, JsonNode old, JsonNode now) {
        if (old.isObject() && now.isObject()) {
            compare(place, way, old, now);
        } else if (way == Way.ANSWER && old.isObject()) {
            found.add(place + ": may be anything now");
        }
    }

    private static JsonNode resolve(JsonNode root, JsonNode node) {
        return node.has("$ref") ? root.at(node.get("$ref").asString().substring(1)) : node;
    }

    private void types(String place, Way way, JsonNode old, JsonNode now) {
        Set<String> earlier = texts(old.path("type"));
        Set<String> later = texts(now.path("type"));
        boolean kept = way == Way.REQUEST
                ? later.isEmpty() || !earlier.isEmpty() && later.containsAll(earlier)
                : earlier.isEmpty() || !later.isEmpty() && earlier.containsAll(later);
        if (!kept) {
            found.add(place + ": type " + earlier + " became " + later);
        }
        if (!old.path("const").equals(now.path("const"))) {
            found.add(place + ": another constant");
        }
    }

    private void words(String place, Way way, JsonNode old, JsonNode now) {
        Set<String> lost = texts(old.path("enum"));
        lost.removeAll(texts(now.path("enum")));
        if (way == Way.REQUEST && now.has("enum") && (!old.has("enum") || !lost.isEmpty())) {
            found.add(place + ": words no longer taken: " + lost);
        }
        if (way == Way.ANSWER && old.has("enum") && !now.has("enum")) {
            found.add(place + ": no longer a closed list of words");
        }
    }

    private void members(String place, Way way, JsonNode old, JsonNode now) {
        for (Map.Entry<String, JsonNode> member : old.path("properties").properties()) {
            String at = place + "." + member.getKey();
            JsonNode later = now.path("properties").path(member.getKey());
            if (later.isMissingNode()) {
                found.add(at + ": member removed");
            } else {
                compare(at, way, member.getValue(), later);
            }
        }
        Set<String> demanded = texts((way == Way.REQUEST ? now : old).path("required"));
        demanded.removeAll(texts((way == Way.REQUEST ? old : now).path("required")));
        demanded.forEach(name -> found.add(place + "." + name
                + (way == Way.REQUEST ? ": must be sent now" : ": need not be in the answer any more")));
        boolean closed = now.path("additionalProperties").isBoolean()
                && !now.path("additionalProperties").asBoolean();
        boolean wasClosed = old.path("additionalProperties").isBoolean()
                && !old.path("additionalProperties").asBoolean();
        if (way == Way.REQUEST && closed && !wasClosed) {
            found.add(place + ": no further members are taken any more");
        }
    }

    private void ranges(String place, JsonNode old, JsonNode now) {
        LEAST.forEach(keyword -> range(place, keyword, old, now, (was, is) -> is > was));
        MOST.forEach(keyword -> range(place, keyword, old, now, (was, is) -> is < was));
        for (String keyword : List.of("pattern", "format")) {
            if (now.has(keyword) && !now.get(keyword).equals(old.path(keyword))) {
                found.add(place + ": another " + keyword);
            }
        }
        if (now.path("uniqueItems").asBoolean(false) && !old.path("uniqueItems").asBoolean(false)) {
            found.add(place + ": elements must differ now");
        }
        JsonNode step = now.path("multipleOf");
        if (!step.isMissingNode() && !isWhole(old.path("multipleOf").asDouble(Double.NaN) / step.asDouble())) {
            found.add(place + ": multipleOf narrowed from " + old.path("multipleOf") + " to " + step);
        }
        // who left it out meant this
        if (old.has("default") && !old.get("default").equals(now.path("default"))) {
            found.add(place + ": default " + old.get("default") + " became " + now.path("default"));
        }
        for (String keyword : List.of("oneOf", "anyOf", "allOf", "not")) {
            if (now.has(keyword) && !old.has(keyword)) {
                found.add(place + ": " + keyword + " is asked for now");
            }
        }
    }

    private static boolean isWhole(double ratio) {
        return ratio == Math.rint(ratio);
    }

    /** What of an answer's form somebody may have relied on. */
    private void promises(String place, JsonNode old, JsonNode now) {
        for (String keyword : List.of("pattern", "format")) {
            if (old.has(keyword) && !old.get(keyword).equals(now.path(keyword))) {
                found.add(place + ": another " + keyword);
            }
        }
    }

    private void range(String place, String keyword, JsonNode old, JsonNode now, BiPredicate<Double, Double> narrower) {
        if (now.has(keyword)
                && (!old.has(keyword)
                        || narrower.test(
                                old.get(keyword).asDouble(), now.get(keyword).asDouble()))) {
            found.add(place + ": " + keyword + " narrowed from " + old.path(keyword) + " to " + now.get(keyword));
        }
    }

    private void choices(String place, Way way, JsonNode old, JsonNode now) {
        JsonNode discriminator = old.path("discriminator");
        JsonNode later = now.path("discriminator");
        if (!discriminator.path("propertyName").equals(later.path("propertyName"))) {
            found.add(place + ": another discriminator");
        }
        discriminator.path("mapping").forEachEntry((word, schema) -> {
            if (later.path("mapping").has(word)
                    && !later.path("mapping").get(word).equals(schema)) {
                found.add(place + ": " + word + " means another choice");
            }
        });
        choice(place, way, old, now);
    }

    private void choice(String place, Way way, JsonNode old, JsonNode now) {
        for (String keyword : List.of("oneOf", "anyOf")) {
            for (int k = 0; k < old.path(keyword).size(); k++) {
                JsonNode choice = old.get(keyword).get(k);
                JsonNode later = alike(choice, now.path(keyword), k);
                if (later.isMissingNode()) {
                    if (way == Way.REQUEST) {
                        found.add(place + ": choice " + choice.path("$ref").asString(Integer.toString(k)) + " removed");
                    }
                } else {
                    compare(place + "|" + k, way, choice, later);
                }
            }
        }
    }

    /** A named choice by its name, any other by its place. */
    private static JsonNode alike(JsonNode choice, JsonNode choices, int place) {
        return choice.has("$ref")
                ? choices.valueStream()
                        .filter(other -> other.path("$ref").equals(choice.get("$ref")))
                        .findFirst()
                        .orElse(choices.path(-1))
                : choices.path(place);
    }

    private static Set<String> texts(JsonNode node) {
        Set<String> texts = new HashSet<>();
        (node.isArray() ? node.valueStream() : Stream.of(node))
                .filter(JsonNode::isString)
                .forEach(text -> texts.add(text.asString()));
        return texts;
    }
}
