package io.axiswright.engine.duty;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Cycloidal;
import io.axiswright.engine.design.DriveSelection;
import io.axiswright.engine.design.DriveWish;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A motor that holds a weight at standstill; 10 N·m for ever while it turns slowly, 100 K then, time constant 60 s. */
class HoldTest {

    private static final DriveUnit UNIT = Fixtures.unit("u", "F1", 10, 400, 100);

    private static DutyResult size(
            double torque, @Nullable Double stall, DriveSelection drive, List<VentilationKit> kits, Segment... cycle) {
        double mass = torque / (Mechanics.FREE_FALL * 0.05);
        Axis axis = Fixtures.axis("lift", Fixtures.hoist(0.1, 0, mass, 0, 1), null, drive, cycle);
        DriveUnit unit = Copies.with(UNIT, "stallTorque", stall == null ? null : new Torque(stall));
        return new DutySizing()
                .size(new DutyRequest(
                        Fixtures.SITE,
                        Fixtures.MAINS,
                        List.of(axis),
                        List.of(),
                        List.of(unit),
                        List.of(),
                        kits,
                        List.of()));
    }

    private static DutyResult holding(double torque, @Nullable Double stall) {
        return size(torque, stall, Fixtures.ANY, List.of(), Fixtures.dwell(600));
    }

    private static double winding(DutyResult result) {
        return result.axes().getFirst().limits().stream()
                .filter(use -> use.limit() == DutyLimit.WINDING)
                .findFirst()
                .orElseThrow()
                .value()
                .si();
    }

    private static List<Finding> of(DutyResult result, FindingCode code) {
        return result.findings().stream()
                .filter(finding -> finding.code() == code)
                .toList();
    }

    /** 9 N·m heat all phases by 100·0.9² = 81 K; the one with the peak of the current, twice its mean heat, by 162 K. */
    @Test
    void whereTheCatalogueIsSilentTheHottestPhaseIsACaution() {
        DutyResult result = holding(9, null);
        assertThat(result.axes().getFirst().feasible()).isTrue();
        assertThat(winding(result)).isCloseTo(81, within(1e-9));
        Finding finding = of(result, FindingCode.DUTY_STANDSTILL_UNSTATED).getFirst();
        assertThat(requireNonNull(finding.value()).si()).isCloseTo(162, within(1e-9));
        assertThat(requireNonNull(finding.limit()).si()).isEqualTo(100);
        assertThat(of(holding(7, null), FindingCode.DUTY_STANDSTILL_UNSTATED)).isEmpty(); // 98 K
    }

    /** Stated, it decides: 100·(9/9.5)² = 89.75 K hold, 100·(9/8)² = 126.6 K do not; one above the curve changes nothing. */
    @Test
    void whereTheCatalogueStatesItItDecides() {
        DutyResult strong = holding(9, 9.5);
        assertThat(strong.axes().getFirst().feasible()).isTrue();
        assertThat(winding(strong)).isCloseTo(8100 / (9.5 * 9.5), within(1e-9));
        assertThat(of(strong, FindingCode.DUTY_STANDSTILL_UNSTATED)).isEmpty();
        DutyResult weak = holding(9, 8.0);
        assertThat(weak.axes().getFirst().feasible()).isFalse();
        Finding hot = of(weak, FindingCode.DUTY_WINDING_HOT).getFirst();
        assertThat(requireNonNull(hot.value()).si()).isCloseTo(8100 / 64.0, within(1e-9));
        // all of it larger by 9/8 would do
        assertThat(requireNonNull(weak.axes().getFirst().candidates().getFirst().shortfall()))
                .isCloseTo(9 / 8.0, within(1e-6));
        assertThat(winding(holding(9, 12.0))).isCloseTo(81, within(1e-9));
    }

    /** Of a hold of one time constant the phase feels 1 − 1/e; while the brake holds it feels nothing. */
    @Test
    void aShortHoldHeatsTheHottestPhaseLess() {
        Segment[] cycle = {
            Fixtures.travel(0.01, 1, new Cycloidal()),
            Fixtures.dwell(60),
            Fixtures.travel(-0.01, 1, new Cycloidal()),
            new Dwell(new Time(600), null, null, true)
        };
        DriveSelection braked = new DriveWish().braked(true).made();
        DutyResult even = size(9, null, Fixtures.ANY, List.of(), cycle);
        assertThat(of(even, FindingCode.DUTY_STANDSTILL_UNSTATED)).hasSize(1); // without brake the motor holds 600 s
        List<Hold> holds = Hold.of(AxisLoad.of(Fixtures.axis(
                        "lift", Fixtures.hoist(0.1, 0, 9 / (Mechanics.FREE_FALL * 0.05), 0, 1), null, braked, cycle))
                .pieces());
        assertThat(holds).singleElement().satisfies(hold -> {
            assertThat(hold.duration()).isEqualTo(60);
            assertThat(hold.end()).isEqualTo(61);
            assertThat(hold.torqueSquared()).isCloseTo(81, within(1e-9));
            // 100 K·(81/8² − 81/10²)·(1 − 1/e) of a phase that holds 8 N·m for ever at standstill
            assertThat(hold.extraRise(100 / 64.0 - 1, new HeatPath.Body(1, 60)))
                    .isCloseTo(45.5625 * (1 - Math.exp(-1)), within(1e-9));
            // of two bodies only the winding's share is a phase's own
            assertThat(hold.extraRise(1, new HeatPath.Body(0.7, 60)))
                    .isCloseTo(0.7 * 81 * (1 - Math.exp(-1)), within(1e-9));
        });
    }

    /** The cycle begins in the middle of a standstill: 20 s at its end and 10 s at its start are one of 30 s. */
    @Test
    void aHoldGoesOnAcrossTheEndOfTheCycle() {
        Axis axis = Fixtures.axis(
                "lift",
                Fixtures.hoist(0.1, 0, 10, 0, 1),
                null,
                Fixtures.ANY,
                Fixtures.dwell(4),
                Fixtures.dwell(6),
                Fixtures.travel(0.1, 1, new Cycloidal()),
                Fixtures.dwell(3),
                Fixtures.travel(-0.1, 1, new Cycloidal()),
                Fixtures.dwell(20));
        assertThat(Hold.of(AxisLoad.of(axis).pieces()))
                .extracting(Hold::duration)
                .containsExactlyInAnyOrder(30.0, 3.0);
    }

    /** 11 N·m with a fan that raises 10 N·m by 1.3; without it 100·1.1² = 121 K. */
    @Test
    void aFanThatIsNeededIsSaidSo() {
        DriveSelection ventilated = new DriveWish().ventilated(true).made();
        List<VentilationKit> kits = List.of(Fixtures.kit("fan", "F1", 1.3, 10));
        DutyResult result = size(11, 13.0, ventilated, kits, Fixtures.dwell(600));
        assertThat(result.axes().getFirst().ventilationKit()).isEqualTo("fan");
        Finding finding = of(result, FindingCode.DUTY_FAN_NEEDED).getFirst();
        assertThat(requireNonNull(finding.value()).si()).isCloseTo(121, within(1e-9));
        assertThat(requireNonNull(finding.limit()).si()).isEqualTo(100);
        assertThat(of(size(9, 13.0, ventilated, kits, Fixtures.dwell(600)), FindingCode.DUTY_FAN_NEEDED))
                .isEmpty();
    }
}
