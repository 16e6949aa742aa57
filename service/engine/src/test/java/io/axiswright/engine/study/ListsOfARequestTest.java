package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.quantity.AnyOrder;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Of every list a request may hold it is decided whether its order means something. */
class ListsOfARequestTest {

    /** Those whose order does, or from whose order nothing can follow. */
    private static final Set<String> AS_SENT = Set.of(
            // one after the other
            "Axis.gears",
            "Cycle.segments",
            "Custom.points",
            "Custom.instants",
            "PositionCourse.points",
            "SpeedCourse.points",
            "TorqueCourse.points",
            "DriveUnit.continuousCurve",
            "DriveUnit.intermittentCurve",
            "OutputProtection.clearingPoints",
            "ProtectiveDevice.clearingPoints",
            "SaleTerms.priceBreaks",
            "CableAssembly.ends",
            // the first that is admissible
            "DemandRule.alternates",
            // an answer numbers them as the caller does
            "Design.spares",
            // each is judged by itself
            "StopZone.safeguards",
            // only whether one of them is so
            "AllOf.conditions",
            "AnyOf.conditions",
            "NoneOf.conditions",
            "WordTest.oneOf",
            "GearUnit.frameSizes");

    private final Set<Class<?>> seen = new HashSet<>();
    private final Set<String> asSent = new TreeSet<>();
    private int inAnyOrder;

    @Test
    void everyOneIsMarkedOrKnown() {
        look(StudyRequest.class);
        look(OtherMarket.class);
        assertThat(asSent).isEqualTo(new TreeSet<>(AS_SENT));
        assertThat(inAnyOrder).isGreaterThan(50);
    }

    private void look(Class<?> type) {
        if (!seen.add(type)) {
            return;
        }
        if (type.isSealed()) {
            List.of(type.getPermittedSubclasses()).forEach(this::look);
        }
        if (type.isRecord()) {
            List.of(type.getRecordComponents()).forEach(component -> look(type, component));
        }
    }

    private void look(Class<?> owner, RecordComponent component) {
        if (component.getGenericType() instanceof ParameterizedType list) {
            if (component.isAnnotationPresent(AnyOrder.class)) {
                inAnyOrder++;
            } else {
                asSent.add(owner.getSimpleName() + "." + component.getName());
            }
            look((Class<?>) list.getActualTypeArguments()[0]);
        } else {
            look(component.getType());
        }
    }
}
