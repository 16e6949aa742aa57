package io.axiswright.app.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Revisions of the demonstration made by random edits of its JSON, the same for the same seed. Some have no meaning, as those of people
 * do.
 */
public final class RandomRevisions {

    private static final ObjectNode DEMO = demo();

    private final Random random;

    /** A row of revisions. */
    public RandomRevisions(long seed) {
        random = new Random(seed);
    }

    private static ObjectNode demo() {
        ObjectNode revision = JsonMapper.shared().createObjectNode().put("codeBasis", "IEC_60204_1");
        revision.set("catalogue", read("catalogue"));
        revision.set("design", read("design"));
        return revision;
    }

    private static JsonNode read(String name) {
        try (var in = Objects.requireNonNull(RandomRevisions.class.getResourceAsStream("/demo/" + name + ".json"))) {
            return JsonMapper.shared().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The demonstration with up to so many edits. */
    public ObjectNode next(int edits) {
        return edited(DEMO, edits);
    }

    /** Another revision with at least one and up to so many edits. */
    public ObjectNode edited(ObjectNode revision, int edits) {
        ObjectNode next = revision.deepCopy();
        for (int edit = 1 + random.nextInt(edits); edit > 0; edit--) {
            edit(next);
        }
        return next;
    }

    private void edit(ObjectNode revision) {
        var design = (ObjectNode) revision.required("design");
        var axes = (ArrayNode) design.required("axes");
        ObjectNode axis = (ObjectNode) axes.required(random.nextInt(axes.size()));
        switch (random.nextInt(10)) {
            case 0 -> axes.add(axis.deepCopy().put("id", "another-" + random.nextInt(1000)));
            case 1 -> remove(axes, axis);
            case 2 -> rename(design, axis.required("id").asString(), "renamed-" + random.nextInt(1000));
            case 3 -> shuffle(axes);
            case 4 -> ((ArrayNode) axis.at("/cycle/segments")).add(dwell());
            case 5 -> revision.put("codeBasis", random.nextBoolean() ? "NFPA_79" : "IEC_60204_1");
            case 6 -> scaleOne(quantities(revision.required("catalogue").required("driveUnits")));
            case 7 -> reprice((ArrayNode) revision.required("catalogue").required("driveUnits"));
            case 8 -> scaleOne(quantities(axis));
            default -> scaleOne(quantities(design));
        }
    }

    private static void remove(ArrayNode axes, ObjectNode axis) {
        for (int k = 0; k < axes.size(); k++) {
            if (axes.required(k) == axis) {
                axes.remove(k);
                return;
            }
        }
    }

    private static void rename(ObjectNode design, String id, String next) {
        JsonNode renamed =
                JsonMapper.shared().readTree(design.toString().replace("\"" + id + "\"", "\"" + next + "\""));
        design.removeAll();
        design.setAll((ObjectNode) renamed);
    }

    private void shuffle(ArrayNode axes) {
        List<JsonNode> order = new ArrayList<>();
        axes.forEach(order::add);
        Collections.shuffle(order, random);
        axes.removeAll();
        axes.addAll(order);
    }

    private ObjectNode dwell() {
        ObjectNode dwell =
                JsonMapper.shared().createObjectNode().put("kind", "DWELL").put("brakeHolds", false);
        dwell.putObject("duration").put("value", 0.1 * (1 + random.nextInt(20))).put("unit", "s");
        return dwell;
    }

    private void reprice(ArrayNode items) {
        var item = (ObjectNode) items.required(random.nextInt(items.size()));
        ((ObjectNode) item.required("price")).put("amount", (100 + random.nextInt(1000)) + ".50");
    }

    private static List<ObjectNode> quantities(JsonNode node) {
        List<ObjectNode> found = new ArrayList<>();
        if (node.has("value") && node.has("unit")) {
            found.add((ObjectNode) node);
        }
        node.forEach(inner -> found.addAll(quantities(inner)));
        return found;
    }

    private void scaleOne(List<ObjectNode> quantities) {
        ObjectNode quantity = quantities.get(random.nextInt(quantities.size()));
        double factor = 0.8 + 0.05 * random.nextInt(11);
        quantity.put("value", quantity.required("value").doubleValue() * factor);
    }
}
