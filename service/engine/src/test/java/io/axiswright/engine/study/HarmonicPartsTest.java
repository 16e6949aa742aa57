package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.RectifierInput;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.CommonCoupling;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.harmonic.HarmonicResult;
import io.axiswright.engine.topology.LayoutEffort;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** What a study finds out about the harmonic currents of a machine. */
class HarmonicPartsTest {

    private static StudyResult study(Catalogue catalogue) {
        return SystemStudy.with(LayoutEffort.HEURISTIC)
                .system(new StudyRequest(
                        CodeBasis.IEC_60204_1,
                        catalogue,
                        Copies.with(TestCell.design(3), "commonCoupling", new CommonCoupling(null, null, null))));
    }

    @Test
    void nothingIsSaidWithoutAPointOfCommonCoupling() {
        assertThat(SystemStudy.with(LayoutEffort.HEURISTIC)
                        .system(TestCell.request(1))
                        .harmonics())
                .isNull();
    }

    @Test
    void unknownInputsAreTold() {
        StudyResult study = study(TestCell.catalogue());
        assertThat(Objects.requireNonNull(study.harmonics()).lines()).isEmpty();
        assertThat(study.findings())
                .filteredOn(f -> f.code() == FindingCode.HARMONIC_INPUT_UNKNOWN)
                .singleElement()
                .satisfies(f -> assertThat(f.text()).contains("3 of 3", "axis-0, axis-1, axis-2"));
    }

    /** The rectifiers draw what the buses are supplied with: each of the three axes has a bus of its own. */
    @Test
    void theRectifiersDrawWhatTheBusesTake() {
        Catalogue catalogue = TestCell.catalogue();
        StudyResult study = study(Copies.with(
                catalogue,
                "driveUnits",
                catalogue.driveUnits().stream()
                        .map(u -> Copies.with(u, "rectifier", new RectifierInput(0.03, null)))
                        .toList()));
        HarmonicResult result = Objects.requireNonNull(study.harmonics());
        double supplied = study.braking().totals().meanSuppliedPower().si()
                - study.braking().totals().meanResistorPower().si();
        assertThat(result.groups()).singleElement().satisfies(g -> {
            assertThat(g.axes()).containsExactly("axis-0", "axis-1", "axis-2");
            assertThat(g.power().si()).isGreaterThanOrEqualTo(supplied * (1 - 1e-9));
            assertThat(g.power().si()).isCloseTo(supplied, within(0.2 * supplied));
        });
        assertThat(result.lines()).hasSize(3);
        assertThat(study.findings()).extracting(f -> f.code()).contains(FindingCode.HARMONIC_OTHERS_AS_SINES);
    }
}
