package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.GearUnit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.DriveSelection;
import io.axiswright.engine.design.DriveWish;
import io.axiswright.engine.design.GearChoice;
import io.axiswright.engine.design.Polynomial345;
import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.design.TorquePlace;
import io.axiswright.engine.design.TorquePoint;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A gear unit that is named, and what a stop puts on it. */
class GearUnitTest {

    private static final DriveSelection CHOOSE =
            new DriveWish().item("u").gear(GearChoice.CHOOSE).made();
    private static final DriveSelection NAMED =
            new DriveWish().item("u").gearUnit("g").made();

    /** 10 kg·m² through 1 rad in 0.5 s by the 3-4-5 law, which peaks at 1.875/0.5 = 3.75 rad/s and 231 N·m. */
    private static Axis table(DriveSelection drive) {
        return Fixtures.inZone(
                Fixtures.axis("t", Fixtures.table(10, 0, 1), null, drive, Fixtures.turn(1, 0.5, new Polynomial345())));
    }

    private static DutyResult size(Axis axis, StopCategory category, double deceleration, GearUnit... gears) {
        StopZone zone = new StopZone(Fixtures.ZONE.id(), category, new Time(0), new Time(deceleration), null);
        return new DutySizing()
                .size(new DutyRequest(
                        Fixtures.SITE,
                        Fixtures.MAINS,
                        List.of(axis),
                        List.of(zone),
                        List.of(Fixtures.unit("u", "F1", 60, 400, 100)),
                        List.of(),
                        List.of(),
                        List.of(gears)));
    }

    private static DutyResult size(DriveSelection drive, double deceleration, GearUnit... gears) {
        return size(table(drive), StopCategory.CATEGORY_1, deceleration, gears);
    }

    /** Bears 200 N·m for ever, 400 N·m in the cycle, and in a stop what is given. */
    private static GearUnit gear(String id, @Nullable Double emergency) {
        GearUnit gear = RandomShop.gear(id, 20, 200, 1000, 10);
        return new GearUnit(
                gear.id(),
                gear.description(),
                gear.price(),
                gear.needs(),
                gear.frameSizes(),
                gear.ratio(),
                gear.efficiency(),
                gear.backDrivingEfficiency(),
                gear.inertia(),
                gear.noLoadTorque(),
                gear.nominalTorque(),
                gear.peakTorque(),
                gear.highestInputSpeed(),
                emergency == null ? null : new Torque(emergency));
    }

    /** From 3.75 rad/s in 0.05 s: 10 kg·m² · 75 rad/s² = 750 N·m, the motion at its fastest half-way through the move. */
    @Test
    void stopFromTheHighestSpeedIsHeldAgainstTheGearUnit() {
        AxisDuty duty = size(CHOOSE, 0.05, gear("g", 1000.0)).axes().getFirst();
        LimitUse stop = use(duty, DutyLimit.GEAR_STOP);
        assertThat(stop.value().si()).isCloseTo(750, within(1e-9));
        assertThat(stop.allowed()).isEqualTo(new Torque(1000));
        assertThat(stop.use()).isCloseTo(0.75, within(1e-12));
        assertThat(Objects.requireNonNull(stop.instant()).si()).isCloseTo(0.25, within(1e-9));
        assertThat(duty.feasible()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"700, false", "800, true"})
    void stopDecidesWhetherAGearUnitHolds(double emergency, boolean holds) {
        DutyResult result = size(CHOOSE, 0.05, gear("g", emergency));
        Candidate geared = result.axes().getFirst().candidates().stream()
                .filter(candidate -> "g".equals(candidate.gearUnit()))
                .findFirst()
                .orElseThrow();
        assertThat(geared.feasible()).isEqualTo(holds);
        assertThat(geared.limit()).isEqualTo(DutyLimit.GEAR_STOP);
        assertThat(geared.use()).isCloseTo(750 / emergency, within(1e-12));
    }

    /** Nothing is known of stops but what the cycle may ask: 400 N·m, and 10 · 3.75/0.1 = 375 N·m are below it. */
    @Test
    void gearUnitWithoutAnEmergencyTorqueBearsItsPeakTorqueInAStop() {
        LimitUse stop = use(size(NAMED, 0.1, gear("g", null)).axes().getFirst(), DutyLimit.GEAR_STOP);
        assertThat(stop.value().si()).isCloseTo(375, within(1e-9));
        assertThat(stop.allowed()).isEqualTo(new Torque(400));
    }

    @Test
    void stopTooHardForANamedGearUnitIsAViolationAtItsName() {
        List<Finding> findings = size(NAMED, 0.05, gear("g", 700.0)).findings();
        assertThat(findings)
                .filteredOn(finding -> finding.code() == FindingCode.DUTY_GEAR_STOP_TORQUE_HIGH)
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.pointer()).isEqualTo("/design/axes/0/drive/gearUnit");
                    assertThat(finding.value())
                            .isInstanceOfSatisfying(
                                    Torque.class,
                                    torque -> assertThat(torque.si()).isCloseTo(750, within(1e-9)));
                    assertThat(finding.limit()).isEqualTo(new Torque(700));
                });
    }

    @Test
    void stopWithoutControlAsksNothingOfTheGearUnit() {
        AxisDuty duty = size(table(NAMED), StopCategory.CATEGORY_0, 0.001, gear("g", 1.0))
                .axes()
                .getFirst();
        assertThat(duty.limits()).extracting(LimitUse::limit).doesNotContain(DutyLimit.GEAR_STOP);
        assertThat(duty.feasible()).isTrue();
    }

    @Test
    void namedGearUnitIsTakenWhateverOthersCost() {
        GearUnit cheaper = RandomShop.gear("h", 20, 200, 1000, 1);
        AxisDuty named = size(NAMED, 0.2, cheaper, gear("g", null)).axes().getFirst();
        assertThat(named.gearUnit()).isEqualTo("g");
        assertThat(named.candidates()).hasSize(1).allMatch(candidate -> "g".equals(candidate.gearUnit()));
        AxisDuty chosen = size(CHOOSE, 0.2, cheaper, gear("g", null)).axes().getFirst();
        assertThat(chosen.gearUnit()).isEqualTo("h");
        assertThat(named.figures()).isEqualTo(chosen.figures());
    }

    @Test
    void gearUnitThatFitsNoDriveUnitIsSaidSo() {
        GearUnit gear = gear("g", null);
        GearUnit other = new GearUnit(
                gear.id(),
                gear.description(),
                gear.price(),
                gear.needs(),
                List.of("F9"),
                gear.ratio(),
                gear.efficiency(),
                gear.backDrivingEfficiency(),
                gear.inertia(),
                gear.noLoadTorque(),
                gear.nominalTorque(),
                gear.peakTorque(),
                gear.highestInputSpeed(),
                gear.emergencyTorque());
        DutyResult result = size(NAMED, 0.2, other);
        assertThat(result.axes().getFirst().driveUnit()).isNull();
        assertThat(result.findings())
                .filteredOn(finding -> finding.code() == FindingCode.DUTY_GEAR_UNIT_UNFIT)
                .extracting(Finding::pointer)
                .containsExactly("/design/axes/0/drive/gearUnit");
    }

    @Test
    void gearUnitThatIsNotInTheCatalogueIsAFault() {
        refused(table(NAMED), FaultCode.DANGLING_REFERENCE, RandomShop.gear("h", 20, 200, 1000, 1));
    }

    @Test
    void gearUnitCannotBeNamedAndChosen() {
        refused(table(DriveWish.like(CHOOSE).gearUnit("g").made()), FaultCode.INCONSISTENT, gear("g", null));
    }

    @Test
    void torqueAtTheMotorShaftDoesNotTellWhatANamedGearUnitBears() {
        TorqueCourse course = new TorqueCourse(
                List.of(
                        new TorquePoint(new Time(0), new AngularSpeed(0), new Torque(1)),
                        new TorquePoint(new Time(1), new AngularSpeed(0), new Torque(1))),
                TorquePlace.MOTOR_SHAFT,
                null);
        refused(
                Fixtures.axis("t", Fixtures.table(10, 0, 1), null, NAMED, course),
                FaultCode.INCONSISTENT,
                gear("g", null));
    }

    private static void refused(Axis axis, FaultCode code, GearUnit gear) {
        assertThatThrownBy(() -> size(axis, StopCategory.CATEGORY_1, 0.2, gear))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        invalid -> assertThat(invalid.faults())
                                .anyMatch(fault -> fault.code() == code
                                        && fault.pointer().equals("/design/axes/0/drive/gearUnit")));
    }

    private static LimitUse use(AxisDuty duty, DutyLimit limit) {
        return duty.limits().stream()
                .filter(use -> use.limit() == limit)
                .findFirst()
                .orElseThrow();
    }
}
