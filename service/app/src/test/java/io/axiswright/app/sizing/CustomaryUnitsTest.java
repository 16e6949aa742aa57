package io.axiswright.app.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.support.Demo;
import io.axiswright.app.wire.RecordReader;
import io.axiswright.app.wire.RecordWriter;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.quantity.Dimension;
import io.axiswright.engine.quantity.Unit;
import io.axiswright.engine.quantity.Units;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.topology.LayoutEffort;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * A machine is the same machine whatever units it is stated in: the whole demonstration, every quantity of design and catalogue
 * restated in US customary units, gives the same answer in every discipline.
 */
class CustomaryUnitsTest {

    /** Relative; a restated quantity is off by a rounding or two, and no answer may be off by much more. */
    private static final double TOLERANCE = 1e-12;

    private static final Map<Dimension, String> CUSTOMARY = Map.ofEntries(
            Map.entry(Dimension.LENGTH, "in"),
            Map.entry(Dimension.ANGLE, "rev"),
            Map.entry(Dimension.SPEED, "ft/min"),
            Map.entry(Dimension.LINEAR_ACCELERATION, "ft/s2"),
            Map.entry(Dimension.LINEAR_JERK, "in/s3"),
            Map.entry(Dimension.MASS, "lb"),
            Map.entry(Dimension.INERTIA, "lb.in2"),
            Map.entry(Dimension.FORCE, "lbf"),
            Map.entry(Dimension.TORQUE, "lbf.in"),
            Map.entry(Dimension.LINEAR_DAMPING, "lbf.s/in"),
            Map.entry(Dimension.ROTARY_DAMPING, "lbf.in.s/rad"),
            Map.entry(Dimension.STIFFNESS, "lbf.in/rad"),
            Map.entry(Dimension.PRESSURE, "psi"),
            Map.entry(Dimension.AREA, "in2"),
            Map.entry(Dimension.POWER, "hp"),
            Map.entry(Dimension.ENERGY, "ft.lbf"),
            Map.entry(Dimension.LINE_RESISTANCE, "Ohm/kft"),
            Map.entry(Dimension.TEMPERATURE, "degF"),
            Map.entry(Dimension.TEMPERATURE_RISE, "degF"),
            Map.entry(Dimension.MOTOR_CONSTANT, "ozf.in/W^0.5"));

    private final SystemStudy study = SystemStudy.with(LayoutEffort.HEURISTIC);
    private final Set<Dimension> restated = EnumSet.noneOf(Dimension.class);

    @ParameterizedTest
    @EnumSource(CodeBasis.class)
    void theWholeAnswerIsTheSame(CodeBasis basis) {
        ObjectNode catalogue = Demo.catalogue("units");
        ObjectNode design = (ObjectNode) Demo.revision("", "units", 1).get("design");
        JsonNode metric = answer(basis, catalogue, design);
        restate(catalogue);
        restate(design);
        assertThat(restated).as("dimensions restated").hasSizeGreaterThan(10);
        List<String> differences = new ArrayList<>();
        compare(metric, answer(basis, catalogue, design), "", differences);
        assertThat(differences).isEmpty();
    }

    private JsonNode answer(CodeBasis basis, ObjectNode catalogue, ObjectNode design) {
        var request = new StudyRequest(
                basis, RecordReader.read(catalogue, Catalogue.class), RecordReader.read(design, Design.class));
        return JsonMapper.shared().readTree(RecordWriter.write(study.system(request)));
    }

    private void restate(JsonNode node) {
        if (node instanceof ObjectNode object && object.has("value") && object.has("unit")) {
            unit(object.get("unit").asString()).ifPresent(unit -> restate(object, unit));
        } else {
            node.forEach(this::restate);
        }
    }

    private void restate(ObjectNode quantity, Unit from) {
        String symbol = CUSTOMARY.get(from.dimension());
        if (symbol != null) {
            Unit to = Units.find(from.dimension(), symbol).orElseThrow();
            quantity.put("value", to.fromSi(from.toSi(quantity.get("value").doubleValue())));
            quantity.put("unit", symbol);
            restated.add(from.dimension());
        }
    }

    /** Kelvin are differences of temperature in the demonstration. */
    private static Optional<Unit> unit(String symbol) {
        return "K".equals(symbol)
                ? Units.find(Dimension.TEMPERATURE_RISE, symbol)
                : Arrays.stream(Dimension.values())
                        .flatMap(dimension -> Units.find(dimension, symbol).stream())
                        .findFirst();
    }

    private static void compare(JsonNode one, JsonNode other, String path, List<String> differences) {
        if (one.isNumber() && other.isNumber()) {
            double a = one.doubleValue();
            double b = other.doubleValue();
            if (Math.abs(a - b) > TOLERANCE * Math.max(Math.abs(a), Math.abs(b))) {
                differences.add(path + ": " + a + ", " + b + " off by " + (b - a) / a);
            }
        } else if (one.isContainer() && one.getNodeType() == other.getNodeType() && one.size() == other.size()) {
            if (one.isArray()) {
                for (int k = 0; k < one.size(); k++) {
                    compare(one.get(k), other.get(k), path + "/" + k, differences);
                }
            } else {
                one.propertyNames()
                        .forEach(name -> compare(one.get(name), other.path(name), path + "/" + name, differences));
            }
        } else if (!one.equals(other)) {
            differences.add(path + ": " + one + ", " + other);
        }
    }
}
