package io.axiswright.app.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.support.Demo;
import io.axiswright.app.wire.RecordReader;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.topology.LayoutEffort;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.DoubleNode;
import tools.jackson.databind.node.ObjectNode;

/** Magnitudes no machine has, in every number of design and catalogue, one at a time. */
class AbsurdMagnitudesTest {

    private static final double HUGE = 1e300;
    private static final double TINY = 1e-300;

    private final ObjectNode design = (ObjectNode) Demo.revision("", "demo", 1).get("design");
    private final ObjectNode catalogue = Demo.catalogue("demo");
    private final List<String> wrong = new ArrayList<>();

    /** For each member, whichever element it is of, a design or catalogue in which it is tiny and which can be read. */
    private final Map<String, JsonNode> tinyAndRead = new HashMap<>();

    private final Set<String> negative = new HashSet<>();
    private int tried;

    @Test
    void ofADesignAreRefusedAtTheirPlaceOrHarmless() {
        each(design, Design.class);
        assertThat(wrong).isEmpty();
        assertThat(tried).isGreaterThan(400);

        Catalogue items = RecordReader.read(catalogue, Catalogue.class);
        tinyAndRead.forEach((member, changed) -> harmless(member, items, RecordReader.read(changed, Design.class)));
        assertThat(tinyAndRead).isNotEmpty();
        assertThat(wrong).isEmpty();
    }

    @Test
    void ofACatalogueAreRefusedAtTheirPlaceOrHarmless() {
        var alone = new HashMap<String, JsonNode>();
        catalogue.propertyStream().filter(list -> list.getValue().isArray()).forEach(list -> {
            for (int k = 0; k < list.getValue().size(); k++) {
                eachOf(list.getKey(), list.getValue(), k, alone);
            }
        });
        assertThat(wrong).isEmpty();
        assertThat(tried).isGreaterThan(1000);

        Design machine = RecordReader.read(design, Design.class);
        alone.forEach((member, whole) -> harmless(member, RecordReader.read(whole, Catalogue.class), machine));
        assertThat(alone).isNotEmpty();
        assertThat(wrong).isEmpty();
    }

    /** An item is read in a catalogue of its own, for speed; what can be read is put back among the others. */
    private void eachOf(String list, JsonNode items, int index, Map<String, JsonNode> alone) {
        ObjectNode small = catalogue.deepCopy();
        small.properties().removeIf(member -> member.getValue().isArray());
        small.putArray(list).add(items.get(index).deepCopy());
        tinyAndRead.clear();
        each(small, Catalogue.class);
        tinyAndRead.forEach((member, changed) -> alone.computeIfAbsent(member, _ -> {
            ObjectNode whole = catalogue.deepCopy();
            ((ArrayNode) whole.get(list))
                    .set(index, changed.at("/" + list + "/0").deepCopy());
            return whole;
        }));
    }

    private void each(ObjectNode document, Class<?> type) {
        List<String> all = new ArrayList<>();
        numbers(document, "", all::add);
        all.forEach(number -> {
            tried++;
            String member = number.replaceAll("/\\d+", "/k");
            refused(document, type, number, HUGE);
            if (!faults(document, type, number, TINY).isEmpty()) {
                refused(document, type, number, TINY);
            } else if (tinyAndRead.putIfAbsent(member, changed(document, number, TINY)) == null
                    && !faults(document, type, number, 0).isEmpty()) {
                wrong.add(number + " may be tiny but not zero");
            }
            if (negative.add(member)) {
                refused(document, type, number, -HUGE);
            }
        });
    }

    private void refused(ObjectNode document, Class<?> type, String number, double value) {
        List<String> faults = faults(document, type, number, value);
        if (!faults.equals(List.of(number))) {
            wrong.add(number + " as " + value + " has its faults at " + faults);
        }
    }

    /** Where the reader finds faults once a number of the document is another. */
    private static List<String> faults(ObjectNode document, Class<?> type, String number, double value) {
        JsonNode before = document.at(number);
        put(document, number, DoubleNode.valueOf(value));
        try {
            RecordReader.read(document, type);
            return List.of();
        } catch (InvalidDesign e) {
            return e.faults().stream().map(Fault::pointer).toList();
        } finally {
            put(document, number, before);
        }
    }

    private static JsonNode changed(ObjectNode document, String number, double value) {
        ObjectNode copy = document.deepCopy();
        put(copy, number, DoubleNode.valueOf(value));
        return copy;
    }

    private static void put(ObjectNode document, String number, JsonNode value) {
        int last = number.lastIndexOf('/');
        ((ObjectNode) document.at(number.substring(0, last))).set(number.substring(last + 1), value);
    }

    /** What can be read can be studied, or is refused by a rule that says where. */
    private void harmless(String member, Catalogue items, Design machine) {
        try {
            SystemStudy.with(LayoutEffort.HEURISTIC).system(new StudyRequest(CodeBasis.IEC_60204_1, items, machine));
        } catch (InvalidDesign e) {
            if (e.faults().stream().anyMatch(fault -> fault.pointer().isEmpty())) {
                wrong.add("a tiny " + member + " leads beyond computing");
            }
        } catch (RuntimeException e) {
            wrong.add("a tiny " + member + " leads to " + e);
        }
    }

    private static void numbers(JsonNode node, String pointer, Consumer<String> found) {
        node.propertyStream().forEach(member -> {
            String inside = pointer + "/" + member.getKey();
            if (member.getValue().isNumber()) {
                found.accept(inside);
            }
            numbers(member.getValue(), inside, found);
        });
        for (int k = 0; node.isArray() && k < node.size(); k++) {
            numbers(node.get(k), pointer + "/" + k, found);
        }
    }
}
