package io.axiswright.app.openapi;

import io.axiswright.engine.quantity.Dimension;
import io.axiswright.engine.quantity.Unit;
import io.axiswright.engine.quantity.Units;
import io.swagger.v3.oas.models.media.Schema;
import java.util.List;
import java.util.stream.Collectors;

/** The schemas of quantities: a number and a unit of a closed list. */
final class MeasureSchemas {

    private MeasureSchemas() {}

    /** The schema of one dimension; says the UN/CEFACT Recommendation 20 code of each unit. */
    static Schema<Object> of(Dimension dimension, boolean closed) {
        List<Unit> units = Units.of(dimension);
        Schema<Object> unit = Schemas.words(units.stream().map(Unit::symbol).toList());
        unit.setDescription("the unit of the value");
        Schema<Object> value = Schemas.ofType("number");
        value.setFormat("double");
        value.setDescription("the value in that unit");
        Schema<Object> schema = Schemas.ofType("object");
        schema.setDescription(description(dimension, units));
        schema.addProperty("value", value);
        schema.addProperty("unit", unit);
        schema.setRequired(List.of("value", "unit"));
        if (closed) {
            schema.setAdditionalProperties(false);
        }
        return schema;
    }

    /** The unit of the coherent SI in which bounds are stated. */
    static Unit coherent(Dimension dimension) {
        return Units.of(dimension).stream()
                .filter(unit -> unit.factor() == 1 && unit.zero() == 0)
                .findFirst()
                .orElseThrow();
    }

    private static String description(Dimension dimension, List<Unit> units) {
        String what = Words.of(dimension.type());
        return (what == null ? "A quantity." : what) + " Units, with their codes of UN/CEFACT Recommendation 20: "
                + units.stream().map(MeasureSchemas::named).collect(Collectors.joining("; ")) + ". Answers are in "
                + units.getFirst().symbol() + (dimension == Dimension.AREA ? ", small ones in mm2." : ".");
    }

    private static String named(Unit unit) {
        return unit.symbol() + " " + unit.name() + " (" + (unit.rec20().isEmpty() ? "no code" : unit.rec20()) + ")";
    }
}
