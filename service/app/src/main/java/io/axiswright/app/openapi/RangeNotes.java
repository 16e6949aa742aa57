package io.axiswright.app.openapi;

import io.axiswright.app.wire.Range;
import io.axiswright.app.wire.Shape;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Ranges of quantities in words: the unit a caller chooses decides the number, so a schema alone cannot state them. */
final class RangeNotes {

    private RangeNotes() {}

    /** The description of a member with the range it must lie in; null if there is nothing to say. */
    static @Nullable String describe(@Nullable String what, Shape shape) {
        String range = range(shape);
        if (range == null) {
            return what;
        }
        return (Objects.requireNonNullElse(what, "") + " (" + range + ")").strip();
    }

    private static @Nullable String range(Shape shape) {
        return switch (shape) {
            case Shape.Measure measure when !measure.range().isAny() -> words(measure);
            case Shape.Many many -> range(many.element());
            default -> null;
        };
    }

    private static String words(Shape.Measure measure) {
        Range range = measure.range();
        String unit = measure.dimensions().size() == 1
                ? MeasureSchemas.coherent(measure.dimensions().getFirst()).symbol()
                : "";
        return range.inWords(si -> si, unit);
    }
}
