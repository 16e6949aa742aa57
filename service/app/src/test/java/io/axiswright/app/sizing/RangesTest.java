package io.axiswright.app.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.wire.Range;
import io.axiswright.app.wire.RecordShape;
import io.axiswright.app.wire.Shape;
import io.axiswright.app.wire.Shapes;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.conductor.ConductorRequest;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every number a caller can send has a range with two ends. */
class RangesTest {

    private final Set<Shape> walked = new HashSet<>();
    private final List<String> unbounded = new ArrayList<>();
    private final List<String> overruled = new ArrayList<>();
    private int numbers;

    @ParameterizedTest
    @ValueSource(classes = {SizingRequest.class, Catalogue.class, ConductorRequest.class})
    void everyNumberHasTwoEnds(Class<?> request) {
        walk(Shapes.of(request), request.getSimpleName());
        assertThat(numbers).isGreaterThan(9);
        assertThat(unbounded).isEmpty();
        assertThat(overruled).as("stated but beyond what the dimension allows").isEmpty();
    }

    private void walk(Shape shape, String place) {
        switch (shape) {
            case RecordShape record -> {
                if (walked.add(record)) {
                    record.members()
                            .forEach(member ->
                                    walk(member.shape(), record.type().getSimpleName() + "." + member.name()));
                }
            }
            case Shape.Choice choice -> choice.kinds().values().forEach(kind -> walk(kind, place));
            case Shape.Many many -> walk(many.element(), place);
            case Shape.Table table -> walk(table.value(), place);
            case Shape.Measure measure ->
                measure.dimensions().forEach(d -> check(place + " as " + d, measure.range(), measure.checked(d)));
            case Shape.Plain plain
            when plain.digits() == Shape.Digits.REAL -> check(place, plain.range(), plain.checked());
            case Shape.Leaf _ -> {}
        }
    }

    private void check(String place, Range stated, Range checked) {
        numbers++;
        boolean low = Double.isFinite(checked.min()) || Double.isFinite(checked.above());
        if (!low || !Double.isFinite(checked.max()) || checked.min() >= checked.max()) {
            unbounded.add(place + " " + checked);
        }
        if (Double.isFinite(stated.max()) && stated.max() != checked.max()
                || Double.isFinite(stated.min()) && stated.min() != checked.min()) {
            overruled.add(place + " " + stated);
        }
    }
}
