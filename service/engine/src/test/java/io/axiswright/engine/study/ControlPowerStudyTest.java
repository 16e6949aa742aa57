package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.InstanceOfAssertFactories.DOUBLE;

import io.axiswright.engine.Copies;
import io.axiswright.engine.bill.LineDemand;
import io.axiswright.engine.catalogue.BufferKind;
import io.axiswright.engine.catalogue.BufferUnit;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.ClearingPoint;
import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.catalogue.OutputProtection;
import io.axiswright.engine.catalogue.ProtectionKind;
import io.axiswright.engine.controlpower.ChosenBuffer;
import io.axiswright.engine.controlpower.HoldUp;
import io.axiswright.engine.controlpower.TerminalKind;
import io.axiswright.engine.design.ControlPower;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.FieldDevice;
import io.axiswright.engine.design.LoadLaw;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.topology.LayoutEffort;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Sensors, protection, buffers and redundant supplies from the design to supply and bill. */
class ControlPowerStudyTest {

    private static final SystemStudy STUDY = SystemStudy.with(LayoutEffort.HEURISTIC);

    private static final FieldDevice SENSOR = new FieldDevice(
            "sensor", "axis-1", LoadLaw.CONSTANT_CURRENT, new Current(0.2), new Voltage(18), false, null);

    private static StudyResult study(boolean redundant) {
        Design d = TestCell.design(2);
        var design = Copies.with(
                d, "controlPower", new ControlPower("panel-0", 0.2, true, List.of(SENSOR), null, redundant, null));
        Catalogue c = TestCell.catalogue();
        var protection = new OutputProtection(
                "channel",
                "electronic channel",
                null,
                List.of(),
                ProtectionKind.ELECTRONIC,
                new Current(4),
                List.of(new ClearingPoint(new Current(6), new Time(0.1))));
        var buffer = new BufferUnit(
                "buffer",
                "capacitor buffer",
                null,
                List.of(),
                BufferKind.CAPACITOR,
                new Energy(200),
                0.8,
                new Voltage(23),
                new Current(20),
                2);
        var catalogue = Copies.with(
                Copies.with(
                        Copies.with(
                                c,
                                "controlSupplies",
                                c.controlSupplies().stream()
                                        .map(ControlPowerStudyTest::parallel)
                                        .toList()),
                        "outputProtections",
                        List.of(protection)),
                "bufferUnits",
                List.of(buffer));
        var request = TestCell.request(2);
        return STUDY.system(new StudyRequest(request.codeBasis(), catalogue, design));
    }

    private static ControlSupply parallel(ControlSupply s) {
        return Copies.with(s, "maxParallel", 2);
    }

    @Test
    void aSensorHangsOnTheGatewayOfItsAxis() {
        assertThat(study(false).controlPower().voltages()).anySatisfy(voltage -> {
            assertThat(voltage.subject()).isEqualTo("sensor");
            assertThat(voltage.terminal()).isEqualTo(TerminalKind.FIELD_DEVICE);
        });
    }

    /** The stop zone takes 30 ms and 0.4 s; the supply of 10 A alone would last 25 ms at full load. */
    @Test
    void controlledStopsAreHeldUpToTheirEnd() {
        var result = study(false);
        assertThat(result.controlPower().holdUps())
                .filteredOn(holdUp -> holdUp.terminal() == TerminalKind.DRIVE_UNIT)
                .hasSize(2)
                .extracting(HoldUp::needed)
                .allSatisfy(needed -> assertThat(needed)
                        .isNotNull()
                        .extracting(Time::si)
                        .asInstanceOf(DOUBLE)
                        .isCloseTo(0.43, within(1e-12)));
        assertThat(result.controlPower().holdUps())
                .allMatch(holdUp -> holdUp.needed() == null
                        || holdUp.inBand().si() >= holdUp.needed().si());
    }

    @Test
    void protectionAndBuffersAreOnTheBill() {
        var result = study(false);
        assertThat(result.billOfMaterials().required().lines())
                .filteredOn(line -> line.item().equals("channel"))
                .singleElement()
                .satisfies(line -> assertThat(line.quantity()).isEqualByComparingTo("1"));
        assertThat(result.controlPower().supplies().getFirst().buffer()).isEqualTo(new ChosenBuffer("buffer", 1));
        assertThat(result.billOfMaterials().required().lines())
                .filteredOn(line -> line.item().equals("buffer"))
                .hasSize(1);
    }

    @Test
    void redundantSuppliesAreEachFedAndBought() {
        var result = study(true);
        var placed = result.controlPower().supplies().getFirst();
        assertThat(placed.count()).isEqualTo(2);
        assertThat(result.supply().circuits().stream().map(BranchCircuit::loads).flatMap(List::stream))
                .contains(placed.id() + "/1", placed.id() + "/2");
        assertThat(result.billOfMaterials().required().lines())
                .filteredOn(line -> line.item().equals(placed.item()))
                .singleElement()
                .satisfies(line -> assertThat(line.quantity()).isEqualByComparingTo("2"));
    }

    /** The chain starts at panel-0, 16 m from panel-1: a supply that may stand at either stands as if it had to stand there. */
    @Test
    void aSupplyAtAFurtherPlaceIsFedAndCabledFromThere() {
        var free = study("panel-1", List.of("panel-0"));
        var bound = study("panel-0", null);

        assertThat(study("panel-1", null).controlPower().links())
                .isNotEqualTo(bound.controlPower().links());
        assertThat(free.controlPower()).isEqualTo(bound.controlPower());
        assertThat(free.supply()).isEqualTo(bound.supply());
        assertThat(boughtFor(free, "/design/controlPower")).isEqualTo(boughtFor(bound, "/design/controlPower"));
        assertThat(boughtFor(free, "/design/installation")).isEqualTo(boughtFor(bound, "/design/installation"));
    }

    private static List<LineDemand> boughtFor(StudyResult result, String pointer) {
        return result.billOfMaterials().required().lines().stream()
                .flatMap(line -> line.demands().stream())
                .filter(demand -> demand.pointer().equals(pointer))
                .toList();
    }

    private static StudyResult study(String place, @Nullable List<String> furtherPlaces) {
        var design = Copies.with(
                TestCell.design(16),
                "controlPower",
                new ControlPower(place, 0.2, true, null, null, null, furtherPlaces));
        var request = TestCell.request(16);
        return STUDY.system(new StudyRequest(request.codeBasis(), request.catalogue(), design));
    }
}
