package io.axiswright.app.wire;

import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.Dimension;
import io.axiswright.engine.quantity.Unit;
import io.axiswright.engine.quantity.Units;
import tools.jackson.core.JsonGenerator;

/** Writes areas. They are those of conductors for the most part: small ones in mm2, if the very same area is read back. */
final class AreaWriting implements Writing {

    private static final Unit WHOLE = Units.answerUnit(Dimension.AREA);
    private static final Unit SMALL =
            Units.find(Dimension.AREA, "mm2").orElseThrow(() -> new IllegalStateException("no mm2"));

    /** From 0.1 m2 on, and below 0.1 mm2, the number is stated in m2. */
    private static final double NOT_SMALL = 0.1;

    private static final double TINY = 0.1e-6;

    private final QuantityWriting whole = new QuantityWriting(WHOLE);
    private final QuantityWriting small = new QuantityWriting(SMALL);

    @Override
    public void write(Object value, JsonGenerator json) {
        double si = ((Area) value).si();
        double magnitude = Math.abs(si);
        if (magnitude < NOT_SMALL && magnitude >= TINY) {
            double millimetres = Readings.of(si, SMALL);
            if (SMALL.toSi(millimetres) == si) {
                small.write(millimetres, json);
                return;
            }
        }
        whole.write(Readings.of(si, WHOLE), json);
    }
}
