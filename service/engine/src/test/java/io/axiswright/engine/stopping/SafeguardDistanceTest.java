package io.axiswright.engine.stopping;

import static io.axiswright.engine.stopping.StoppingFixtures.safeguard;
import static io.axiswright.engine.stopping.StoppingFixtures.study;
import static io.axiswright.engine.stopping.StoppingFixtures.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.BeamGrid;
import io.axiswright.engine.design.Detection;
import io.axiswright.engine.design.InterlockedGuard;
import io.axiswright.engine.design.LightCurtain;
import io.axiswright.engine.design.ParallelField;
import io.axiswright.engine.design.PressureMat;
import io.axiswright.engine.design.Safeguard;
import io.axiswright.engine.design.SafeguardStandard;
import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.TwoHandControl;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Speed;
import io.axiswright.engine.quantity.Time;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Distances of safeguards by both editions of ISO 13855. */
class SafeguardDistanceTest {

    private static SafeguardDistance of(Safeguard safeguard, double stop) {
        return study(zone(StopCategory.CATEGORY_1, 0, stop, safeguard))
                .zones()
                .getFirst()
                .safeguards()
                .getFirst();
    }

    private static double millimetres(SafeguardDistance distance) {
        return Objects.requireNonNull(distance.leastDistance()).si() * 1000;
    }

    private static double edition2010(Detection detection, double response, double stop) {
        return millimetres(of(safeguard(SafeguardStandard.ISO_13855_2010, detection, response, null), stop));
    }

    private static LightCurtain curtain(double millimetres) {
        return new LightCurtain(new Length(millimetres / 1000));
    }

    /**
     * Published: 290 ms + 30 ms, 14 mm: 640 mm by 2000 mm/s, therefore 512 mm by 1600 mm/s (worked example of the operating
     * instructions of a light curtain, edition 2012-06-12, p. 41). 15 ms + 150 ms, 14 mm: 330 mm
     * (a public page, how to calculate safety light curtain minimum distance ISO 13855). The others by hand: 30 mm give
     * C = 128 mm; 2000·0.2 + 128 = 528 is above 500, 1600·0.2 + 128 = 448 is not, so 500; 2000·0.02 = 40 is raised to 100.
     */
    @ParameterizedTest
    @CsvSource({
        "14, 0.030, 0.290, 512",
        "14, 0.015, 0.150, 330",
        "30, 0.020, 0.180, 500",
        "30, 0.020, 0.080, 328",
        "14, 0.005, 0.015, 100",
        "10, 0.050, 0.050, 200",
        "40, 0.020, 0.280, 688",
        "50, 0.020, 0.280, 1330"
    })
    void lightCurtains(double capability, double response, double stop, double expected) {
        assertThat(edition2010(curtain(capability), response, stop)).isCloseTo(expected, within(1e-9));
    }

    /** All by 1600 mm/s and T = 0.3 s, 480 mm: what is added is that of the reference table. */
    @Test
    void otherSafeguardsOf2010() {
        assertThat(edition2010(new BeamGrid(), 0.1, 0.2)).isCloseTo(480 + 850, within(1e-9));
        assertThat(edition2010(new ParallelField(new Length(0.05), new Length(0.3)), 0.1, 0.2))
                .isCloseTo(480 + 1200 - 120, within(1e-9));
        assertThat(edition2010(new ParallelField(new Length(0.05), new Length(0.95)), 0.1, 0.2))
                .isCloseTo(480 + 850, within(1e-9)); // 1200 − 380 is below 850
        assertThat(edition2010(new TwoHandControl(false), 0.1, 0.2)).isCloseTo(480 + 250, within(1e-9));
        assertThat(edition2010(new TwoHandControl(true), 0.01, 0.02)).isCloseTo(100, within(1e-9));
        assertThat(edition2010(new TwoHandControl(true), 0.1, 0.2)).isCloseTo(480, within(1e-9));
        assertThat(edition2010(new InterlockedGuard(new Length(0.12)), 0.1, 0.2))
                .isCloseTo(480 + 120, within(1e-9));
        assertThat(edition2010(new PressureMat(null), 0.1, 0.2)).isCloseTo(480 + 1200, within(1e-9));
        assertThat(edition2010(new PressureMat(new Length(0.1)), 0.1, 0.2)).isCloseTo(480 + 1160, within(1e-9));
    }

    private static Safeguard of2024(
            Detection detection, @Nullable Double speed, @Nullable Double reach, @Nullable Double supplement) {
        return new Safeguard(
                "guard",
                SafeguardStandard.ISO_13855_2024,
                detection,
                new Time(0.1),
                speed == null ? null : new Speed(speed),
                reach == null ? null : new Length(reach),
                supplement == null ? null : new Length(supplement),
                null);
    }

    @Test
    void theEditionOf2024() {
        var field = new ParallelField(new Length(0.05), new Length(0.9));
        assertThat(millimetres(of(of2024(field, null, null, null), 0.2))).isCloseTo(480 + 1200, within(1e-9));
        assertThat(millimetres(of(of2024(field, null, null, 0.05), 0.2))).isCloseTo(480 + 1250, within(1e-9));
        assertThat(millimetres(of(of2024(new TwoHandControl(false), 2.0, null, null), 0.2)))
                .isCloseTo(600 + 550, within(1e-9));
        assertThat(millimetres(of(of2024(curtain(30), null, 0.128, null), 0.0001)))
                .isCloseTo(2000 * 0.1001 + 128, within(1e-9));
        // 1600 mm/s for 0.3 s, and what one reaches through the opening, 120 mm
        assertThat(millimetres(of(of2024(new InterlockedGuard(new Length(0.12)), null, null, null), 0.2)))
                .isCloseTo(480 + 120, within(1e-9));
        assertThat(millimetres(of(of2024(new BeamGrid(), 1.6, 0.85, null), 0.2)))
                .isCloseTo(480 + 850, within(1e-9));
    }

    /** A stated approach speed is taken as it is. */
    @Test
    void aStatedSpeedComesFirst() {
        var safeguard = new Safeguard(
                "guard",
                SafeguardStandard.ISO_13855_2010,
                curtain(14),
                new Time(0.03),
                new Speed(2.5),
                null,
                null,
                null);
        SafeguardDistance distance = of(safeguard, 0.29);
        assertThat(millimetres(distance)).isCloseTo(800, within(1e-9));
        assertThat(distance.approachSpeed()).isEqualTo(new Speed(2.5));
    }

    @Test
    void everyThingMissingOrUnknownIsAFault() {
        Safeguard[] wrong = {
            of2024(curtain(30), null, null, null),
            of2024(new TwoHandControl(false), null, null, null),
            of2024(new PressureMat(null), null, null, null),
            new Safeguard(
                    "other",
                    SafeguardStandard.ISO_13855_2010,
                    curtain(80),
                    new Time(0.1),
                    null,
                    new Length(0.1),
                    new Length(0.1),
                    null)
        };
        assertThatThrownBy(() -> study(zone(StopCategory.CATEGORY_1, 0, 1, wrong)))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        e -> assertThat(e.faults())
                                .extracting(Fault::pointer)
                                .containsExactly(
                                        "/design/stopZones/0/safeguards/0/reachingDistance",
                                        "/design/stopZones/0/safeguards/1/id",
                                        "/design/stopZones/0/safeguards/1/approachSpeed",
                                        "/design/stopZones/0/safeguards/2/id",
                                        "/design/stopZones/0/safeguards/2/reachingDistance",
                                        "/design/stopZones/0/safeguards/2/approachSpeed",
                                        "/design/stopZones/0/safeguards/3/reachingDistance",
                                        "/design/stopZones/0/safeguards/3/supplement",
                                        "/design/stopZones/0/safeguards/3/detection/detectionCapability"));
    }

    @Test
    void tooNearIsAViolationAndEveryDistanceACaution() {
        var near = safeguard(SafeguardStandard.ISO_13855_2010, curtain(14), 0.03, 0.4);
        StoppingResult result = study(zone(StopCategory.CATEGORY_1, 0.04, 0.25, near));
        assertThat(result.findings())
                .extracting(f -> f.code())
                .containsExactly(FindingCode.STOPPING_SAFEGUARD_NEAR, FindingCode.STOPPING_DISTANCE_CALCULATED);
        assertThat(result.findings().getFirst().pointer()).isEqualTo("/design/stopZones/0/safeguards/0/distance");
        assertThat(result.findings().getFirst().text()).contains("0.4 m", "0.512 m");
        assertThat(result.derivations()).extracting(d -> d.symbol()).containsExactly("t_stop", "T", "S");
        var far = safeguard(SafeguardStandard.ISO_13855_2010, curtain(14), 0.03, 0.512 + 1e-9);
        assertThat(study(zone(StopCategory.CATEGORY_1, 0.04, 0.25, far)).findings())
                .extracting(f -> f.code())
                .containsExactly(FindingCode.STOPPING_DISTANCE_CALCULATED);
    }

    /** A zone that sees no less than 70 mm must be 15·20 = 300 mm high. */
    @Test
    void aFieldTooLowIsAViolation() {
        var low = safeguard(
                SafeguardStandard.ISO_13855_2010, new ParallelField(new Length(0.07), new Length(0.25)), 0.1, null);
        assertThat(study(zone(StopCategory.CATEGORY_1, 0, 0.2, low)).findings())
                .extracting(f -> f.code())
                .containsExactly(FindingCode.STOPPING_FIELD_LOW, FindingCode.STOPPING_DISTANCE_CALCULATED);
    }

    /** What no open copy confirms is said to be so: here the distance of a two-hand control that is shrouded. */
    @Test
    void aRuleFromMemoryIsSaidToBeOne() {
        var control = safeguard(SafeguardStandard.ISO_13855_2010, new TwoHandControl(true), 0.1, null);
        assertThat(study(zone(StopCategory.CATEGORY_1, 0, 0.2, control)).findings())
                .extracting(f -> f.code())
                .containsExactly(FindingCode.STOPPING_DISTANCE_CALCULATED, FindingCode.STOPPING_RULE_FROM_MEMORY);
    }

    @Test
    void noDistanceProtectsFromWhatNeverRests() {
        var axis = StoppingFixtures.axis(
                StoppingFixtures.shuttle(StoppingFixtures.load(0.004, 0, 0, 0), 100, 0.1, 0.1, 0.1, false), null);
        StoppingResult result = study(
                zone(
                        StopCategory.CATEGORY_0,
                        0,
                        0.2,
                        safeguard(SafeguardStandard.ISO_13855_2010, curtain(14), 0.03, 5.0)),
                axis);
        assertThat(result.zones().getFirst().safeguards().getFirst().leastDistance())
                .isNull();
        assertThat(result.findings())
                .extracting(f -> f.code())
                .containsExactly(FindingCode.STOPPING_NEVER_RESTS, FindingCode.STOPPING_SAFEGUARD_VAIN);
    }
}
