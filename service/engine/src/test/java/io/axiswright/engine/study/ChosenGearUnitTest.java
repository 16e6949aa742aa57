package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.Copies;
import io.axiswright.engine.bill.BillLine;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.GearUnit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.DriveWish;
import io.axiswright.engine.design.GearChoice;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.topology.LayoutEffort;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A gear unit that is chosen is bought. */
class ChosenGearUnitTest {

    @Test
    void billBuysTheChosenGearUnit() {
        Design cell = TestCell.design(1);
        Axis axis = cell.axes().getFirst();
        Axis choosing = new Axis(
                axis.id(),
                axis.description(),
                axis.mechanism(),
                List.of(),
                axis.couplingInertia(),
                axis.cycle(),
                axis.position(),
                axis.stopZone(),
                axis.busGroup(),
                axis.commandRate(),
                new DriveWish().item("unit-small").gear(GearChoice.CHOOSE).made(),
                axis.mounting());
        Design design = Copies.with(cell, "axes", List.of(choosing));
        StudyResult result = SystemStudy.with(LayoutEffort.HEURISTIC)
                .system(new StudyRequest(TestCell.request(1).codeBasis(), withGear(TestCell.catalogue()), design));
        assertThat(result.duty().axes().getFirst().gearUnit()).isEqualTo("gear");
        assertThat(result.billOfMaterials().required().lines())
                .extracting(BillLine::item)
                .contains("gear");
    }

    private static Catalogue withGear(Catalogue c) {
        GearUnit gear = new GearUnit(
                "gear",
                "invented gear unit",
                new Money(new BigDecimal("150.00"), "EUR"),
                List.of(),
                List.of("frame"),
                10,
                0.95,
                null,
                new Inertia(0.4e-4),
                null,
                new Torque(60),
                new Torque(120),
                new AngularSpeed(600),
                null);
        return Copies.with(c, "gearUnits", List.of(gear));
    }
}
