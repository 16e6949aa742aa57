package io.axiswright.engine.study;

import io.axiswright.engine.finding.Finding;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Leads the findings of a study, and of each of its disciplines, to other places in the request. */
final class MovedFindings {

    /** Every discipline's result, and the study's, lists its findings under this name. */
    private static final String FINDINGS = "findings";

    private final UnaryOperator<String> place;

    private MovedFindings(UnaryOperator<String> place) {
        this.place = place;
    }

    static StudyResult of(StudyResult study, UnaryOperator<String> place) {
        return (StudyResult) new MovedFindings(place).moved(study, true);
    }

    /** A copy of the record with its findings moved, and on request those of the records in it. */
    private Object moved(Object record, boolean withParts) {
        RecordComponent[] components = record.getClass().getRecordComponents();
        @Nullable Object[] values = new @Nullable Object[components.length];
        Class<?>[] types = new Class<?>[components.length];
        try {
            for (int k = 0; k < components.length; k++) {
                types[k] = components[k].getType();
                Object value = components[k].getAccessor().invoke(record);
                if (components[k].getName().equals(FINDINGS) && value instanceof List<?> findings) {
                    value = findings.stream()
                            .map(Finding.class::cast)
                            .map(finding -> finding.at(place.apply(finding.pointer())))
                            .toList();
                } else if (withParts && value instanceof Record) {
                    value = moved(value, false);
                }
                values[k] = value;
            }
            return record.getClass().getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot rebuild " + record.getClass(), e);
        }
    }
}
