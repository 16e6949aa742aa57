package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.ShaftBearing;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.BeltTension;
import io.axiswright.engine.design.DirectDrive;
import io.axiswright.engine.design.Gear;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.RackAndPinion;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.ShaftLoad;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Radial force on the motor's shaft and the life of its bearing. */
class ShaftChecksTest {

    private static final DriveUnit UNIT = Fixtures.unit("unit", 40, 100); // its shaft is 30 mm long

    private static final ShaftBearing SHAFT =
            new ShaftBearing(new Force(1000), new Force(14000), new Length(0.1), new Length(0.02));

    private static final List<FindingCode> CODES = List.of(
            FindingCode.DUTY_SHAFT_LOAD_HIGH, FindingCode.DUTY_SHAFT_BEARING_SHORT, FindingCode.DUTY_SHAFT_UNCHECKED);

    private static Belt belt(double pretension) {
        return new Belt(
                new Length(0.05),
                new Inertia(0),
                new Mass(5),
                new Angle(0),
                1,
                null,
                null,
                null,
                null,
                new BeltTension(new Force(pretension), new Force(10_000)));
    }

    private static RackAndPinion rack(double load) {
        return new RackAndPinion(new Length(0.05), new Inertia(0), new Mass(load), new Angle(0), 1, null, null);
    }

    private static ShaftLoad load(
            @Nullable Double distance, @Nullable Double mass, @Nullable Double pressureAngle, @Nullable Double hours) {
        return new ShaftLoad(
                distance == null ? null : new Length(distance),
                mass == null ? null : new Mass(mass),
                pressureAngle == null ? null : new Angle(pressureAngle),
                hours == null ? null : new Time(3600 * hours));
    }

    private static Axis axis(Mechanism mechanism, @Nullable Gear gear, @Nullable ShaftLoad load, Segment... segments) {
        Axis axis = Fixtures.axis("a", mechanism, gear, Fixtures.ANY, segments);
        return new Axis(
                axis.id(),
                axis.description(),
                axis.mechanism(),
                axis.gears(),
                axis.couplingInertia(),
                axis.cycle(),
                axis.position(),
                axis.stopZone(),
                axis.busGroup(),
                axis.commandRate(),
                axis.drive(),
                axis.mounting(),
                load);
    }

    private static Axis running(Mechanism mechanism, @Nullable ShaftLoad load) {
        return axis(mechanism, null, load, stroke(0.5), stroke(-0.5), Fixtures.dwell(1));
    }

    private static Segment stroke(double metres) {
        return Fixtures.travel(metres, 0.5, new Triangular());
    }

    private static DutyResult size(Axis axis, @Nullable ShaftBearing shaft) {
        DriveUnit unit = shaft == null ? UNIT : Fixtures.withShaft(UNIT, shaft);
        return new DutySizing().size(Fixtures.request(List.of(axis), List.of(unit)));
    }

    private static ShaftFigures shaft(DutyResult result) {
        return Objects.requireNonNull(result.axes().getFirst().shaft());
    }

    private static List<Finding> findings(Axis axis, @Nullable ShaftBearing shaft) {
        return size(axis, shaft).findings().stream()
                .filter(finding -> CODES.contains(finding.code()))
                .toList();
    }

    private static double derived(DutyResult result, String symbol) {
        return result.derivations().stream()
                .filter(derivation -> derivation.symbol().equals(symbol))
                .findFirst()
                .orElseThrow()
                .result()
                .si();
    }

    private static double si(@Nullable Quantity quantity) {
        return Objects.requireNonNull(quantity).si();
    }

    @Test
    void lifeOfPublishedExamples() {
        // C 16 kN, P 2 kN: 512 million turns, sarthaks.com/2642436
        assertThat(BearingLife.lifeTurns(16, 2)).isCloseTo(512e6, within(1.0));
        // Wentzell, Machine Design, example 20.1, p. 431: C 5050 lb, P 2400 lb at 1750 rpm, 88.73 h
        assertThat(BearingLife.lifeTurns(5050, 2400) / (1750 * 60)).isCloseTo(88.73, within(0.005));
        // Jindal, Machine Design, example 18-2, p. 508: C 5590 N, P = 0.56·1250 + 1.2·625 N, 57.3 million turns
        assertThat(BearingLife.lifeTurns(5590, 0.56 * 1250 + 1.2 * 625)).isCloseTo(57.3e6, within(0.05e6));
        // Shigley, solution 11-1: 1.898 kN·1.2, 540 million turns; 18.59 kN by Weibull's form, the plain one is 0.2 %
        // lower
        assertThat(BearingLife.lifeTurns(18.59, 1.898 * 1.2)).isCloseTo(540e6, within(0.01 * 540e6));
    }

    @Test
    void anOverhungForceLoadsTheNearBearingWithMoreThanItself() {
        assertThat(BearingLife.lever(0.1, 0.05)).isEqualTo(1.5, within(1e-15)); // moments about the far one
    }

    @Test
    void bothStrandsPullAtTheShaftWhateverTheLoad() {
        DutyResult result = size(running(belt(400), null), SHAFT);
        // 2·400 N, its line 15 mm before the shoulder, the bearing 20 mm behind: 800·(100 + 20 + 15)/100 N
        double turns = Math.pow(14000 / (800 * 1.35), 3) * 1e6;
        double turnsOfCycle = 1 / (Math.PI * 0.05);
        ShaftFigures figures = shaft(result);
        assertThat(figures.radialForce().si()).isEqualTo(800);
        assertThat(figures.distance().si()).isEqualTo(0.015);
        assertThat(si(figures.permittedForce())).isEqualTo(1000);
        assertThat(figures.meanForce().si()).isCloseTo(800, within(1e-9));
        assertThat(figures.turnsPerCycle()).isCloseTo(turnsOfCycle, within(1e-9));
        assertThat(si(figures.equivalentLoad())).isCloseTo(1080, within(1e-9));
        assertThat(si(figures.bearingLife())).isCloseTo(turns / turnsOfCycle * 2, within(1.0));
        assertThat(derived(result, "P_m,shaft")).isEqualTo(si(figures.equivalentLoad()));
        assertThat(derived(result, "L_10h,shaft")).isCloseTo(turns / turnsOfCycle * 2, within(1.0));
        assertThat(findings(running(belt(400), null), SHAFT)).isEmpty();
    }

    @Test
    void aPinionIsWeighedByTurnsOverItsToothForce() {
        // a triangle of 0.5 m in 0.5 s: 8 m/s² on 20 kg, 160 N throughout, at 20° 160/cos 20°
        Axis even = running(rack(20), null);
        double turns = Math.pow(14000 / (160 / Math.cos(Math.toRadians(20)) * 1.35), 3) * 1e6;
        assertThat(derived(size(even, SHAFT), "L_10h,shaft"))
                .isCloseTo(turns * Math.PI * 0.05 * 2, within(1e-9 * turns));
        // one stroke in half the time has four times the force over the same turns: the mean of the cubes, not over
        // time
        Axis uneven = axis(
                rack(20), null, null, Fixtures.travel(0.5, 0.25, new Triangular()), stroke(-0.5), Fixtures.dwell(1));
        double mean = Math.cbrt((Math.pow(640, 3) + Math.pow(160, 3)) / 2) / Math.cos(Math.toRadians(20));
        double fewer = Math.pow(14000 / (mean * 1.35), 3) * 1e6;
        assertThat(derived(size(uneven, SHAFT), "L_10h,shaft"))
                .isCloseTo(fewer * Math.PI * 0.05 * 1.75, within(1e-9 * fewer));
    }

    @Test
    void weightAddsToThePinionsForce() {
        ShaftLoad load = load(0.01, 3.0, 0.4, null);
        List<Finding> high = findings(running(rack(20), load), new ShaftBearing(new Force(150), null, null, null));
        assertThat(high).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.DUTY_SHAFT_LOAD_HIGH);
            assertThat(finding.pointer()).isEqualTo("/design/axes/0/drive");
            assertThat(si(finding.value())).isCloseTo(160 / Math.cos(0.4) + 3 * 9.80665, within(1e-9));
            assertThat(si(finding.limit())).isEqualTo(150);
        });
    }

    @Test
    void fartherOutThanTheMiddleTheShaftStandsLess() {
        ShaftBearing shaft = new ShaftBearing(new Force(1000), null, null, null);
        assertThat(findings(running(belt(400), load(0.018, null, null, null)), shaft))
                .isEmpty();
        assertThat(findings(running(belt(400), load(0.02, null, null, null)), shaft))
                .singleElement()
                .satisfies(finding -> assertThat(si(finding.limit())).isCloseTo(750, within(1e-9)));
    }

    @Test
    void aLifeTooShortIsSaid() {
        double hours = derived(size(running(belt(400), null), SHAFT), "L_10h,shaft") / 3600;
        assertThat(findings(running(belt(400), load(null, null, null, 0.999 * hours)), SHAFT))
                .isEmpty();
        assertThat(findings(running(belt(400), load(null, null, null, 1.001 * hours)), SHAFT))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.code()).isEqualTo(FindingCode.DUTY_SHAFT_BEARING_SHORT);
                    assertThat(finding.pointer()).isEqualTo("/design/axes/0/shaftLoad/requiredLife");
                    assertThat(si(finding.value())).isCloseTo(hours, within(1e-9 * hours));
                });
    }

    @Test
    void unknownShaftsAreSaidOnlyWhereSomethingPullsAtThem() {
        assertThat(findings(running(belt(400), null), null)).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.DUTY_SHAFT_UNCHECKED);
            assertThat(si(finding.value())).isEqualTo(800);
        });
        assertThat(shaft(size(running(belt(400), null), null)).bearingLife()).isNull();
        Axis geared = axis(belt(400), Fixtures.gear(3, 0.95), null, stroke(0.5), stroke(-0.5));
        assertThat(findings(geared, null)).isEmpty();
        assertThat(size(geared, SHAFT).axes().getFirst().shaft()).isNull();
        Mechanism direct = new DirectDrive(new Inertia(0.01), null, null, null);
        Segment turn = Fixtures.turn(1, 0.5, new Triangular());
        assertThat(findings(axis(direct, null, null, turn), null)).isEmpty();
        assertThat(findings(axis(direct, null, load(null, 2.0, null, null), turn), null))
                .singleElement()
                .satisfies(finding -> assertThat(si(finding.value())).isCloseTo(2 * 9.80665, within(1e-9)));
    }

    @Test
    void standstillTakesNoLife() {
        ShaftFigures figures = shaft(size(axis(belt(400), null, null, Fixtures.dwell(1)), SHAFT));
        assertThat(si(figures.bearingLife())).isEqualTo(3.2e12);
        assertThat(figures.radialForce().si()).isEqualTo(800);
        assertThat(figures.turnsPerCycle()).isZero();
    }
}
