package io.axiswright.load;

import io.axiswright.app.wire.RecordReader;
import io.axiswright.app.wire.RecordWriter;
import io.axiswright.engine.comparison.Comparison;
import io.axiswright.engine.comparison.ComparisonRequest;
import io.axiswright.engine.comparison.ComparisonResult;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.topology.SearchGate;
import java.util.Arrays;
import java.util.function.Supplier;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Whether finding the causes of what thirty changes do to a machine of 48 axes costs no more than ten studies of it, layout
 * proven and all: trials must share what their change does not touch.
 */
final class CausesRatio {

    private static final double MOST = 10;
    private static final int AXES = 48;
    private static final int LOADS = 20;
    private static final int POSITIONS = 6;
    private static final int WARM_UP = 3;
    private static final int ROUNDS = 5;

    private CausesRatio() {}

    /** Of a row, whose layout keeps the search busy to its limit, and of a line, whose layout is soon proven. */
    static boolean holds() {
        return holds("row", DemoStudies.row(AXES)) & holds("line", DemoStudies.line(AXES));
    }

    @SuppressWarnings("SystemOut") // a report for the terminal
    private static boolean holds(String name, StudyRequest before) {
        StudyRequest after = new StudyRequest(before.codeBasis(), before.catalogue(), changed(before.design()));
        var comparison = new Comparison(new SearchGate(1));
        double[] ratios = new double[ROUNDS];
        for (int round = -WARM_UP; round < ROUNDS; round++) {
            long study = time(() -> SystemStudy.proving().system(after));
            var result = new ComparisonResult[1];
            long causes = time(() -> result[0] = comparison.compare(new ComparisonRequest(before, after, 1000)));
            System.out.printf(
                    "%s: %d changes, %d consequences, %d studies, %d not examined: %.0f ms; one study %.0f ms; ratio %.2f%n",
                    name,
                    result[0].changes().size(),
                    result[0].consequences().size(),
                    result[0].studies(),
                    result[0].notExamined().size(),
                    causes / 1e6,
                    study / 1e6,
                    (double) causes / study);
            if (round >= 0) {
                ratios[round] = (double) causes / study;
            }
        }
        Arrays.sort(ratios);
        double median = ratios[ROUNDS / 2];
        System.out.printf("%s: median ratio %.2f; at most %.0f is allowed%n", name, median, MOST);
        return median <= MOST;
    }

    private static long time(Supplier<?> work) {
        long start = System.nanoTime();
        if (work.get() == null) {
            throw new IllegalStateException("no answer");
        }
        return System.nanoTime() - start;
    }

    /** Thirty changes: heavier loads, moved axes, and four that touch the whole machine. */
    private static Design changed(Design design) {
        JsonNode tree = JsonMapper.shared().readTree(RecordWriter.write(design));
        int loads = 0;
        int positions = 0;
        for (JsonNode axis : tree.get("axes")) {
            JsonNode mechanism = axis.get("mechanism");
            JsonNode load = mechanism.has("load") ? mechanism.get("load") : mechanism.get("inertia");
            if (load != null && loads < LOADS) {
                scale(load, 1.04);
                loads++;
            } else if (positions < POSITIONS) {
                scale(axis.get("position").get("y"), 1.05);
                positions++;
            }
        }
        scale(tree.get("stopZones").get(0).get("decelerationTime"), 1.1);
        scale(tree.get("stopZones").get(1).get("decelerationTime"), 1.1);
        scale(tree.get("mains").get("voltage"), 1.02);
        ((ObjectNode) tree.get("controlPower")).put("reserve", 0.3);
        return RecordReader.read(tree, Design.class);
    }

    private static void scale(JsonNode quantity, double factor) {
        ((ObjectNode) quantity).put("value", quantity.get("value").doubleValue() * factor);
    }
}
