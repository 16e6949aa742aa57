package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Unit;
import io.axiswright.engine.quantity.Units;
import io.axiswright.engine.topology.LayoutEffort;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Every quantity of a request in the unit that lies farthest from ours: the answer is the same to the rounding of the conversion. */
class CustomaryUnitsTest {

    /** Quantities below this are the rounding of larger ones. */
    private static final double NOTHING = 1e-9;

    private int converted;
    private int compared;

    @Test
    void dutyBrakingAndStoppingAreTheSame() throws ReflectiveOperationException {
        StudyRequest metric = TestCell.request(3);
        var customary = (StudyRequest) Objects.requireNonNull(customary(metric));
        StudyResult one = SystemStudy.with(LayoutEffort.HEURISTIC).system(metric);
        StudyResult other = SystemStudy.with(LayoutEffort.HEURISTIC).system(customary);
        same("duty", one.duty().axes(), other.duty().axes());
        same("braking", one.braking().groups(), other.braking().groups());
        same("stopping", one.stopping(), other.stopping());
        assertThat(converted).isGreaterThan(200);
        assertThat(compared).isGreaterThan(200);
    }

    private @Nullable Object customary(@Nullable Object value) throws ReflectiveOperationException {
        return switch (value) {
            case Quantity quantity -> converted(quantity);
            case List<?> list -> {
                Object[] all = new Object[list.size()];
                for (int k = 0; k < all.length; k++) {
                    all[k] = Objects.requireNonNull(customary(list.get(k)));
                }
                yield List.of(all);
            }
            case Record record -> copy(record);
            case null, default -> value;
        };
    }

    private Record copy(Record record) throws ReflectiveOperationException {
        RecordComponent[] components = record.getClass().getRecordComponents();
        @Nullable Object[] values = new @Nullable Object[components.length];
        for (int k = 0; k < values.length; k++) {
            components[k].getAccessor().setAccessible(true);
            values[k] = customary(components[k].getAccessor().invoke(record));
        }
        Constructor<? extends Record> constructor = record.getClass()
                .getDeclaredConstructor(
                        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        constructor.setAccessible(true);
        return constructor.newInstance(values);
    }

    /** There and back by the unit whose factor lies farthest from 1: inches, pounds, degrees Fahrenheit, where there are such. */
    private Quantity converted(Quantity quantity) {
        Unit unit = Units.of(quantity.dimension()).getLast();
        converted += unit == Units.of(quantity.dimension()).getFirst() ? 0 : 1;
        return quantity.dimension().of(unit.toSi(unit.fromSi(quantity.si())));
    }

    private void same(String place, @Nullable Object one, @Nullable Object other) throws ReflectiveOperationException {
        switch (one) {
            case Finding finding ->
                assertThat(((Finding) Objects.requireNonNull(other)).code())
                        .as(place)
                        .isEqualTo(finding.code());
            case Derivation derivation ->
                same(
                        place + derivation.symbol(),
                        derivation.result(),
                        ((Derivation) Objects.requireNonNull(other)).result());
            case Quantity quantity -> number(place, quantity.si(), ((Quantity) Objects.requireNonNull(other)).si());
            case Double number -> number(place, number, (Double) Objects.requireNonNull(other));
            case List<?> list -> {
                List<?> others = (List<?>) Objects.requireNonNull(other);
                assertThat(others).as(place).hasSameSizeAs(list);
                for (int k = 0; k < list.size(); k++) {
                    same(place + "/" + k, list.get(k), others.get(k));
                }
            }
            case Record record
            when record.getClass().getPackageName().startsWith("io.axiswright") -> {
                for (RecordComponent component : record.getClass().getRecordComponents()) {
                    component.getAccessor().setAccessible(true);
                    if (!List.of("course", "stopModel", "coasting").contains(component.getName())) {
                        same(
                                place + "/" + component.getName(),
                                component.getAccessor().invoke(record),
                                component.getAccessor().invoke(Objects.requireNonNull(other)));
                    }
                }
            }
            case null, default -> assertThat(other).as(place).isEqualTo(one);
        }
    }

    private void number(String place, double one, double other) {
        compared++;
        assertThat(other).as(place).isCloseTo(one, within(1e-12 * Math.abs(one) + NOTHING * 1e-3));
    }
}
