package io.axiswright.app.project;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.support.JsonParts;
import io.axiswright.app.support.RandomRevisions;
import io.axiswright.app.wire.RecordReader;
import io.axiswright.app.wire.RecordWriter;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.comparison.Comparison;
import io.axiswright.engine.comparison.ComparisonRequest;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.topology.SearchGate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * What comparisons promise, over revisions of the demonstration made by random edits of its JSON. What is checked is the answer as
 * callers get it; it is applied, turned round and studied again by means of the test's own, which know nothing but JSON.
 */
class ComparisonPropertiesTest {

    private static final Comparison COMPARISON = new Comparison(new SearchGate(1));
    private static final int BUDGET = 60;

    /** Places in the result that bear no running number, and whose lists name their elements in one member. */
    private static final Pattern LASTING = Pattern.compile("/duty/axes/[^/]+(/(?!limits/).*)?"
            + "|/mounting/axes/[^/]+(/(?!alternatives/).*)?|/stopping/powerLosses/.*|/energy/total/.*"
            + "|/billOfMaterials/required/total");

    private static final Map<String, String> OPPOSITE =
            Map.of("ADDED", "REMOVED", "REMOVED", "ADDED", "CHANGED", "CHANGED");

    private static StudyRequest request(JsonNode revision) {
        return new StudyRequest(
                CodeBasis.valueOf(revision.required("codeBasis").asString()),
                RecordReader.read(revision.required("catalogue"), Catalogue.class),
                RecordReader.read(revision.required("design"), Design.class));
    }

    private static JsonNode tree(Object part) {
        return JsonMapper.shared().readTree(RecordWriter.write(part));
    }

    private static JsonNode compare(JsonNode before, JsonNode after) {
        return tree(COMPARISON.compare(new ComparisonRequest(request(before), request(after), BUDGET)));
    }

    /** The revision as the service would write it, so that what means the same is the same. */
    private static ObjectNode written(JsonNode revision) {
        StudyRequest request = request(revision);
        ObjectNode result = JsonMapper.shared().createObjectNode();
        result.put("codeBasis", request.codeBasis().name());
        result.set("catalogue", tree(request.catalogue()));
        result.set("design", tree(request.design()));
        return result;
    }

    /** Pairs of revisions with a meaning, and what the comparison says of them. */
    private static void eachPair(long seed, int pairs, BiConsumer<List<ObjectNode>, JsonNode> check) {
        var revisions = new RandomRevisions(seed);
        int checked = 0;
        for (int tries = 0; checked < pairs; tries++) {
            assertThat(tries).as("revisions without meaning").isLessThan(20 * pairs);
            ObjectNode before = revisions.next(1);
            ObjectNode after = revisions.edited(before, 4);
            JsonNode answer;
            try {
                before = written(before);
                after = written(after);
                answer = compare(before, after);
            } catch (InvalidDesign meaningless) {
                continue;
            }
            check.accept(List.of(before, after), answer);
            checked++;
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void aRevisionComparedWithItselfShowsNothing(long seed) {
        eachPair(seed, 3, (pair, _) -> {
            JsonNode answer = compare(pair.getLast(), pair.getLast().deepCopy());
            for (String member : List.of("changes", "consequences", "renames", "splits", "merges", "notExamined")) {
                assertThat(answer.required(member)).as(member).isEmpty();
            }
            assertThat(answer.required("studies").intValue()).isZero();
        });
    }

    @ParameterizedTest
    @ValueSource(longs = {3, 4})
    void theFirstWithAllChangesIsTheSecond(long seed) {
        eachPair(seed, 5, (pair, answer) -> {
            JsonNode there = JsonParts.renamed(pair.getFirst(), answer.required("renames"));
            JsonNode back = pair.getLast().deepCopy();
            for (JsonNode change : answer.required("changes")) {
                JsonParts.put((ObjectNode) there, change, "after");
                JsonParts.put((ObjectNode) back, change, "before");
            }
            assertThat(JsonParts.sorted(there)).isEqualTo(JsonParts.sorted(pair.getLast()));
            assertThat(JsonParts.sorted(back))
                    .isEqualTo(JsonParts.sorted(JsonParts.renamed(pair.getFirst(), answer.required("renames"))));
        });
    }

    @ParameterizedTest
    @ValueSource(longs = {5, 6})
    void turnedRoundItIsTheInverse(long seed) {
        List<Integer> sizes = new ArrayList<>();
        eachPair(seed, 5, (pair, forth) -> {
            // what only changed its name is studied under the second name, so that backwards it is another study
            if (!forth.required("renames").isEmpty()) {
                return;
            }
            JsonNode back = compare(pair.getLast(), pair.getFirst());
            Map<String, List<String>> changes = told(forth.required("changes"), "/.*", false);
            Map<String, List<String>> followed = told(forth.required("consequences"), LASTING.pattern(), false);
            assertThat(told(back.required("changes"), "/.*", true)).isEqualTo(changes);
            assertThat(told(back.required("consequences"), LASTING.pattern(), true))
                    .isEqualTo(followed);
            sizes.add(changes.size() + followed.size());
            for (String part : List.of("/summary/consequences", "/summary/bill/lines", "/summary/network/gateways")) {
                assertThat(forth.at(part + "/appeared")).as(part).isEqualTo(back.at(part + "/vanished"));
                assertThat(forth.at(part + "/vanished")).as(part).isEqualTo(back.at(part + "/appeared"));
                assertThat(forth.at(part + "/changed")).as(part).isEqualTo(back.at(part + "/changed"));
            }
            assertThat(forth.required("counts")).isEqualTo(back.required("counts"));
        });
        assertThat(sizes).hasSizeGreaterThan(1).anyMatch(size -> size > 5);
    }

    /** Kind, old and new by place; turned round if so asked. */
    private static Map<String, List<String>> told(JsonNode differences, String places, boolean round) {
        Map<String, List<String>> told = new TreeMap<>();
        for (JsonNode difference : differences) {
            String path = difference.required("path").asString();
            String kind = difference.required("kind").asString();
            if (path.matches(places)) {
                told.put(
                        path,
                        List.of(
                                round ? OPPOSITE.get(kind) : kind,
                                difference.path(round ? "after" : "before").toString(),
                                difference.path(round ? "before" : "after").toString()));
            }
        }
        return told;
    }

    /** For every single change that is said to bring or to be needed for a value, the design with or without it is studied. */
    @ParameterizedTest
    @ValueSource(longs = {7, 8})
    void causesHoldWhenStudiedAgain(long seed) {
        List<String> held = new ArrayList<>();
        eachPair(seed, 6, (pair, answer) -> {
            JsonNode before = JsonParts.renamed(pair.getFirst(), answer.required("renames"));
            for (JsonNode change : answer.required("changes")) {
                ObjectNode only = (ObjectNode) before.deepCopy();
                JsonParts.put(only, change, "after");
                ObjectNode without = pair.getLast().deepCopy();
                JsonParts.put(without, change, "before");
                JsonNode brought = studied(only);
                JsonNode undone = studied(without);
                for (JsonNode consequence : answer.required("consequences")) {
                    String path = consequence.required("path").asString();
                    if (LASTING.matcher(path).matches()) {
                        String role = role(consequence, change.required("id").asString());
                        held.add(role);
                        assertThat(role)
                                .as("%s for %s", change.required("path"), path)
                                .isEqualTo(role(consequence, path, undone, brought));
                    }
                }
            }
        });
        assertThat(Set.copyOf(held)).contains("NECESSARY_AND_SUFFICIENT", "NONE");
        assertThat(held.size()).isGreaterThan(20);
    }

    private static JsonNode studied(ObjectNode revision) {
        try {
            return tree(SystemStudy.proving().system(request(revision)));
        } catch (InvalidDesign meaningless) {
            return JsonMapper.shared().missingNode();
        }
    }

    private static String role(JsonNode consequence, String change) {
        for (JsonNode cause : consequence.required("causes")) {
            if (cause.required("change").asString().equals(change)) {
                return cause.required("role").asString();
            }
        }
        return "NONE";
    }

    private static String role(JsonNode consequence, String path, JsonNode undone, JsonNode brought) {
        boolean undoes = !undone.isMissingNode() && isAt(undone, path, consequence.path("before"));
        boolean brings = !brought.isMissingNode() && isAt(brought, path, consequence.path("after"));
        if (undoes) {
            return brings ? "NECESSARY_AND_SUFFICIENT" : "NECESSARY";
        }
        if (brings) {
            return "SUFFICIENT";
        }
        boolean other = !undone.isMissingNode() && !isAt(undone, path, consequence.path("after"));
        return other ? "CONTRIBUTING" : "NONE";
    }

    private static boolean isAt(JsonNode result, String path, JsonNode value) {
        return JsonParts.alike(JsonParts.at(result, path), value);
    }

    /** What every sentence must be, whatever changed: one, in words, of figures that differ. */
    @ParameterizedTest
    @ValueSource(longs = {9, 10})
    void sentencesAreInWords(long seed) {
        Set<String> wrong = new TreeSet<>();
        eachPair(seed, 5, (_, answer) -> {
            for (JsonNode consequence : answer.required("consequences")) {
                // a finding's own words may name what the caller wrote, such as a class of insulation
                boolean finding = consequence.required("path").asString().startsWith("/findings");
                String text = consequence.required("text").asString().replace("mOhm", "Ohm");
                if (!text.matches("(?s)[A-Z0-9].*\\.")
                        || text.matches("(?s).*(null|[{}\\[\\]@]|  | of of | from (\\S+( \\S+)?) to \\2[, ]|\\d{9}).*")
                        || !finding && text.matches("(?s).*(_|\\b[a-z]+[A-Z][a-z]).*")) {
                    wrong.add(text);
                }
            }
        });
        assertThat(wrong).isEmpty();
    }
}
