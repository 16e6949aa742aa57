package io.axiswright.app.openapi;

import io.axiswright.app.wire.Range;
import io.axiswright.app.wire.Shape;
import io.axiswright.engine.quantity.Dimension;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Ranges of quantities in words: the unit a caller chooses decides the number, so a schema alone cannot state them. */
final class RangeNotes {

    private RangeNotes() {}

    /** The description of a member with the range it must lie in; null if there is nothing to say. */
    static @Nullable String describe(@Nullable String what, Shape shape, boolean input) {
        String range = range(shape, input);
        if (range == null) {
            return what;
        }
        return (Objects.requireNonNullElse(what, "") + " (" + range + ")").strip();
    }

    private static @Nullable String range(Shape shape, boolean input) {
        return switch (shape) {
            case Shape.Measure measure when input || !measure.range().isAny() -> words(measure, input);
            case Shape.Many many -> range(many.element(), input);
            default -> null;
        };
    }

    private static String words(Shape.Measure measure, boolean input) {
        return measure.dimensions().stream()
                .map(dimension -> words(dimension, input ? measure.checked(dimension) : measure.range()))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private static String words(Dimension dimension, Range range) {
        return range.inWords(si -> si, MeasureSchemas.coherent(dimension).symbol());
    }
}
