package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Choosing by the controlled stop. A table of 1 kg·m² turns by 1 rad in 1 s by a triangle and rests for 2 s: 2 rad/s at most, 4 N·m while
 * it speeds up, 2.3 N·m rms. A stop from 2 rad/s in t takes 2/t N·m.
 */
class StopChoiceTest {

    /** 3 N·m for ever and 9 N·m at once; twice that. */
    private static final DriveUnit WEAK = Fixtures.unit("weak", 3, 100);

    private static final DriveUnit STRONG = Fixtures.unit("strong", 6, 200);

    private static AxisDuty chosen(StopZone zone) {
        return size(zone).axes().getFirst();
    }

    private static DutyResult size(StopZone zone) {
        Axis axis = Fixtures.inZone(Fixtures.axis(
                "t",
                Fixtures.table(1, 0, 1),
                null,
                Fixtures.ANY,
                Fixtures.turn(1, 1, new Triangular()),
                Fixtures.dwell(2)));
        return new DutySizing()
                .size(Copies.with(Fixtures.request(List.of(axis), List.of(WEAK, STRONG)), "stopZones", List.of(zone)));
    }

    private static StopZone in(double deceleration) {
        return Copies.with(Fixtures.ZONE, "decelerationTime", new Time(deceleration));
    }

    @ParameterizedTest
    @CsvSource({"0.5, weak", "0.25, weak", "0.2, strong", "0.12, strong"})
    void theCheapestThatStopsInTimeIsChosen(double deceleration, String unit) {
        AxisDuty duty = chosen(in(deceleration));
        assertThat(duty.driveUnit()).isEqualTo(unit);
        assertThat(duty.feasibleCandidates()).isEqualTo(2);
        LimitUse stop = Objects.requireNonNull(duty.hardestStop());
        assertThat(stop.broken()).isFalse();
        // the rotor adds less than a thousandth
        assertThat(stop.value().si()).isCloseTo(2 / deceleration, within(0.001 * 2 / deceleration));
    }

    @Test
    void whereNoneStopsInTimeTheCheapestThatHoldsTheCycleIsTaken() {
        AxisDuty duty = chosen(in(0.1));
        assertThat(duty.driveUnit()).isEqualTo("weak");
        assertThat(duty.feasible()).isTrue();
        assertThat(Objects.requireNonNull(duty.hardestStop()).broken()).isTrue();
        assertThat(size(in(0.1)).findings()).extracting(Finding::code).contains(FindingCode.STUDY_STOP_TOO_HARD);
        assertThat(size(in(0.12)).findings()).extracting(Finding::code).doesNotContain(FindingCode.STUDY_STOP_TOO_HARD);
    }

    @Test
    void aStopWithoutTorqueAsksNothingOfTheDriveUnit() {
        assertThat(chosen(Copies.with(in(0.1), "category", StopCategory.CATEGORY_0))
                        .driveUnit())
                .isEqualTo("weak");
    }
}
