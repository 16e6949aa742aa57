package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Enclosure;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.enclosure.EnclosureBalance;
import io.axiswright.engine.enclosure.HeatSource;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.topology.LayoutEffort;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** What of a study gives off heat in its enclosures. */
class EnclosurePartsTest {

    private static final SystemStudy STUDY = SystemStudy.with(LayoutEffort.HEURISTIC);

    private static StudyRequest request(Enclosure... enclosures) {
        Design d = TestCell.design(3);
        Installation i = Objects.requireNonNull(d.installation());
        var installation = Copies.with(i, "enclosures", List.of(enclosures));
        return new StudyRequest(
                CodeBasis.IEC_60204_1, TestCell.catalogue(), Copies.with(d, "installation", installation));
    }

    private static Enclosure panel(String place, double side, String... axes) {
        return new Enclosure(
                place,
                new Length(side),
                new Length(side),
                new Length(side),
                false,
                null,
                false,
                null,
                List.of(axes),
                new Power(40),
                null,
                null);
    }

    @Test
    void suppliesGatewaysElectronicsAndTheRestAreCounted() {
        StudyResult study = STUDY.system(request(panel("panel-0", 1, "axis-1")));
        EnclosureBalance balance = study.enclosures().enclosures().getFirst();
        double supplies = study.controlPower().supplies().stream()
                .mapToDouble(s -> s.heat().si())
                .sum();
        // the gateway draws 8 W of its own in the test catalogue
        assertThat(balance.sources())
                .extracting(HeatSource::name)
                .contains("G1", "axis-1", "other")
                .containsAll(study.controlPower().supplies().stream()
                        .map(s -> s.id())
                        .toList());
        double electronics = balance.sources().stream()
                .filter(s -> s.name().equals("axis-1"))
                .findFirst()
                .orElseThrow()
                .power()
                .si();
        String chosen = Objects.requireNonNull(study.duty().axes().get(1).driveUnit());
        assertThat(TestCell.catalogue().driveUnits())
                .filteredOn(u -> u.id().equals(chosen))
                .singleElement()
                .satisfies(
                        u -> assertThat(electronics).isEqualTo(u.standbyLoss().si()));
        assertThat(balance.losses().si()).isCloseTo(supplies + 8 + electronics + 40, within(1e-9));
        assertThat(study.findings()).extracting(f -> f.code()).doesNotContain(FindingCode.ENCLOSURE_TOO_HOT);
    }

    @Test
    void aSmallBoxIsTooHot() {
        assertThat(STUDY.system(request(panel("panel-0", 0.2))).findings())
                .filteredOn(f -> f.code() == FindingCode.ENCLOSURE_TOO_HOT)
                .singleElement()
                .satisfies(f -> assertThat(f.pointer()).isEqualTo("/design/installation/enclosures/0"));
    }

    @Test
    void placesAndAxesMustExistAndPlacesTakeOneEnclosure() {
        assertThatThrownBy(() ->
                        STUDY.system(request(panel("panel-0", 1, "axis-9"), panel("panel-0", 1), panel("nowhere", 1))))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        e -> assertThat(e.faults())
                                .extracting(Fault::pointer)
                                .containsExactly(
                                        "/design/installation/enclosures/0/axes/0",
                                        "/design/installation/enclosures/1/place",
                                        "/design/installation/enclosures/2/place"));
    }
}
