package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.bill.BillLine;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.ReservedAxis;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.topology.LayoutEffort;
import io.axiswright.engine.topology.PlacedGateway;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Axes to come through all disciplines: ports and current are kept, nothing of them is bought. */
class GrowthStudyTest {

    private static final SystemStudy STUDY = SystemStudy.with(LayoutEffort.HEURISTIC);

    private static StudyResult study(@Nullable Current current) {
        Design d = TestCell.design(3);
        var toCome =
                new ReservedAxis("to come", 2, null, null, "panel-0", null, null, "zone", new Frequency(250), current);
        var network = Copies.with(Objects.requireNonNull(d.network()), "reserved", List.of(toCome));
        var request = TestCell.request(3);
        return STUDY.system(
                new StudyRequest(request.codeBasis(), request.catalogue(), Copies.with(d, "network", network)));
    }

    private static double gatewayCurrent(StudyResult result) {
        return result.controlPower().supplies().stream()
                .mapToDouble(supply -> supply.steadyCurrent().si())
                .sum();
    }

    @Test
    void portsAreKeptAndNothingIsBought() {
        StudyResult plain = STUDY.system(TestCell.request(3));
        StudyResult grown = study(null);

        PlacedGateway gateway = grown.topology().gateways().getFirst();
        assertThat(gateway.reservedList()).singleElement().satisfies(kept -> {
            assertThat(kept.id()).isEqualTo("to come");
            assertThat(kept.ports()).isEqualTo(2);
        });
        assertThat(gateway.spareDrivePorts())
                .isEqualTo(plain.topology().gateways().getFirst().spareDrivePorts());
        assertThat(grown.billOfMaterials().required().lines())
                .extracting(BillLine::item, BillLine::quantity)
                .containsExactlyElementsOf(plain.billOfMaterials().required().lines().stream()
                        .map(line -> tuple(line.item(), line.quantity()))
                        .toList());
        assertThat(grown.billOfMaterials().connections().gaps()).isEmpty();
    }

    @Test
    void theirCurrentIsKept() {
        // two axes to come of 0.5 A each, taken at the gateway at constant current
        assertThat(gatewayCurrent(study(new Current(0.5))) - gatewayCurrent(study(null)))
                .isCloseTo(1, within(0.02));
    }
}
