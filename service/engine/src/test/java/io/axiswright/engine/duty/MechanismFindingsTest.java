package io.axiswright.engine.duty;

import static io.axiswright.engine.duty.Fixtures.ANY;
import static io.axiswright.engine.duty.Fixtures.axis;
import static io.axiswright.engine.duty.Fixtures.dwell;
import static io.axiswright.engine.duty.Fixtures.travel;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.BeltTension;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.EndFixity;
import io.axiswright.engine.design.Friction;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.NutRating;
import io.axiswright.engine.design.Polynomial345;
import io.axiswright.engine.design.RackAndPinion;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.ScrewSupport;
import io.axiswright.engine.design.ScrewThread;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.design.Trapezoidal;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.Severity;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Pressure;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a cycle does to screws and belts. */
class MechanismFindingsTest {

    private static Screw screw(double slope, @Nullable ScrewSupport support, @Nullable NutRating nut) {
        return Fixtures.screw(1, 100, slope, support, nut);
    }

    private static ScrewSupport support(EndFixity ends, double root) {
        return new ScrewSupport(ends, new Length(root), null, null, null, null);
    }

    private static DutyResult size(Mechanism mechanism, double seconds) {
        Axis axis = axis(
                "z",
                mechanism,
                null,
                ANY,
                travel(0.8, seconds, new Trapezoidal(0.2, 0.2)),
                travel(-0.8, seconds, new Trapezoidal(0.2, 0.2)),
                dwell(1));
        return new DutySizing().size(Fixtures.request(List.of(axis), List.of(Fixtures.unit("u", 20, 100))));
    }

    private static List<FindingCode> codes(Mechanism mechanism, double seconds) {
        return size(mechanism, seconds).findings().stream().map(Finding::code).toList();
    }

    @Test
    void aLongThinFastScrewWhirlsAndAHeavilyPushedOneBuckles() {
        // 1 m, root 16.5 mm: 18.856e7·16.5/1e6 = 3111 1/min · 0.8 = 2489; 0.8 m in 1 s by fifths is 1 m/s, 6000 1/min
        assertThat(codes(screw(0, support(EndFixity.FIXED_SUPPORTED, 0.0165), null), 1))
                .contains(FindingCode.DUTY_SCREW_WHIRLS)
                .doesNotContain(FindingCode.DUTY_SCREW_BUCKLES);
        assertThat(codes(screw(0, support(EndFixity.FIXED_SUPPORTED, 0.0165), null), 4))
                .doesNotContain(FindingCode.DUTY_SCREW_WHIRLS);
        // root 6 mm, fixed-free: 2.495e4·1296/1e6 = 32.3 N, and 981 N hang on it
        assertThat(codes(screw(Math.PI / 2, support(EndFixity.FIXED_FREE, 0.006), null), 10))
                .contains(FindingCode.DUTY_SCREW_BUCKLES);
        assertThat(codes(screw(Math.PI / 2, support(EndFixity.FIXED_FIXED, 0.0165), null), 10))
                .doesNotContain(FindingCode.DUTY_SCREW_BUCKLES, FindingCode.DUTY_SCREW_UNCHECKED);
    }

    /**
     * By hand: fixed at both ends, 0.6 m, root 18 mm, 0.5·0.6/0.0045 = 66.7, stout below pi·sqrt(2·206e9/300e6) = 116.4; so
     * 254.47 mm² bear 300 − (300·66.7/(2·pi))²/206000 = 250.8 MPa, half of 63.8 kN is allowed, where Euler had half of 116 kN.
     */
    @Test
    void aStoutScrewBucklesByJohnsonsParabola() {
        ScrewSupport support = new ScrewSupport(
                EndFixity.FIXED_FIXED, new Length(0.018), new Length(0.6), null, null, new Pressure(300e6));
        DutyResult result = size(screw(Math.PI / 2, support, null), 10);
        assertThat(value(result, "F_perm")).isCloseTo(31_912, within(2.0));
        assertThat(result.derivations())
                .filteredOn(derivation -> derivation.symbol().equals("F_perm"))
                .singleElement()
                .satisfies(derivation -> {
                    assertThat(derivation.clause()).contains("Johnson");
                    assertThat(derivation.inputs()).containsEntry("S_y", new Pressure(300e6));
                });
    }

    @Test
    void whatCouldNotBeCheckedIsSaid() {
        assertThat(codes(screw(0, null, null), 4))
                .contains(FindingCode.DUTY_SCREW_UNCHECKED, FindingCode.DUTY_NUT_UNCHECKED);
        assertThat(codes(belt(null), 4)).contains(FindingCode.DUTY_BELT_UNCHECKED);
    }

    /** By hand: a constant 980.665 N over 160 turns a cycle, C 10 kN: (10/0.980665)³·10⁶ turns, at 160 turns in 800 s. */
    @Test
    void lifeOfANutThatOnlyLifts() {
        Screw slow = screw(Math.PI / 2, null, new NutRating(new Force(10_000), new Time(3600 * 20_000.0)));
        Axis axis = axis(
                "z", slow, null, ANY, travel(0.8, 400, new Polynomial345()), travel(-0.8, 400, new Polynomial345()));
        DutyResult result =
                new DutySizing().size(Fixtures.request(List.of(axis), List.of(Fixtures.unit("u", 20, 100))));
        double expected = Math.pow(10_000 / 980.665, 3) * 1e6 / 160 * 800;
        assertThat(value(result, "L_10h")).isCloseTo(expected, within(1e-5 * expected));
        assertThat(result.findings()).extracting(Finding::code).doesNotContain(FindingCode.DUTY_NUT_LIFE_SHORT);
        Screw poor = screw(Math.PI / 2, null, new NutRating(new Force(1500), new Time(3600 * 20_000.0)));
        assertThat(codes(poor, 4)).contains(FindingCode.DUTY_NUT_LIFE_SHORT);
    }

    /** Sampled instant by instant: both flanks of a nut on a slope, with acceleration. */
    @Test
    void lifeOfANutAgreesWithSampling() {
        Screw screw = screw(0.02, null, new NutRating(new Force(10_000), null));
        AxisLoad load = AxisLoad.of(axis(
                "z", screw, null, ANY, travel(0.8, 1, new Polynomial345()), travel(-0.8, 1.3, new Polynomial345())));
        NutLife wear = NutLife.of(load.pieces(), 0.01 / 2 / Math.PI, 1);
        double forward = 0;
        double backward = 0;
        double turns = 0;
        int steps = 200_000;
        for (int k = 0; k < steps; k++) {
            double t = 2.3 * (k + 0.5) / steps;
            double time = t < 1 ? 1 : 1.3;
            double u = t < 1 ? t : (t - 1) / 1.3;
            double sign = t < 1 ? 1 : -1;
            double v = sign * 0.8 * 30 * u * u * (1 - u) * (1 - u) / time;
            double a = sign * 0.8 * 60 * u * (1 - u) * (1 - 2 * u) / time / time;
            double force = 100 * (a + 9.80665 * Math.sin(0.02));
            double turned = Math.abs(v) / 0.01 * 2.3 / steps;
            turns += turned;
            forward += Math.pow(Math.max(0, force), 3) * turned;
            backward += Math.pow(Math.max(0, -force), 3) * turned;
        }
        assertThat(wear.turns()).isCloseTo(turns, within(1e-6 * turns));
        assertThat(wear.forward()).isCloseTo(Math.cbrt(forward / turns), within(1e-4));
        assertThat(wear.backward()).isCloseTo(Math.cbrt(backward / turns), within(1e-4));
        double one = Math.pow(10_000 / wear.forward(), 3);
        double other = Math.pow(10_000 / wear.backward(), 3);
        double both = Math.pow(Math.pow(one, -10 / 9.0) + Math.pow(other, -10 / 9.0), -9 / 10.0);
        assertThat(wear.lifeTurns(10_000)).isCloseTo(both * 1e6, within(1e-6 * both * 1e6));
    }

    /** The screw is 1 m long: 0.8 m up and back suit, 1.2 m up and back do not, nor do 0.8 m and 0.8 m more. */
    @Test
    void aNutStaysOnItsScrew() {
        Screw screw = screw(0, null, null);
        assertThat(codes(screw, 4)).doesNotContain(FindingCode.DUTY_SCREW_SHORT, FindingCode.DUTY_CYCLE_RUNS_OUT);
        Move up = travel(1.2, 4, new Polynomial345());
        Move down = travel(-1.2, 4, new Polynomial345());
        assertThat(sized(screw, up, down))
                .filteredOn(finding -> finding.code() == FindingCode.DUTY_SCREW_SHORT)
                .singleElement()
                .satisfies(finding -> {
                    assertThat(Objects.requireNonNull(finding.value()).si()).isCloseTo(1.2, within(1e-9));
                    assertThat(finding.limit()).isEqualTo(new Length(1));
                    assertThat(finding.pointer()).isEqualTo("/design/axes/0/mechanism/length");
                });
        assertThat(sized(screw, travel(0.8, 4, new Polynomial345()), travel(0.8, 4, new Polynomial345())))
                .extracting(Finding::code)
                .contains(FindingCode.DUTY_SCREW_SHORT, FindingCode.DUTY_CYCLE_RUNS_OUT)
                .doesNotContain(FindingCode.DUTY_CYCLE_DRIFTS);
    }

    private static List<Finding> sized(Mechanism mechanism, Segment... segments) {
        Axis axis = axis("z", mechanism, null, ANY, segments);
        return new DutySizing()
                .size(Fixtures.request(List.of(axis), List.of(Fixtures.unit("u", 20, 100))))
                .findings();
    }

    /**
     * 100 kg on a slope of 2° pull with 980.665·sin 2° = 34.225 N; a coefficient of 0.3 rubs with 294.02 N, one of 0.03 with
     * 29.402 N, which does not hold it. On the pulley of 80 mm that is 1.3690 N·m against 11.761 N·m.
     */
    @Test
    void aSlopeHeldByItsOwnFrictionNeedsNoBrake() {
        assertThat(sized(sloped(0.3), travel(0.8, 4, new Polynomial345()), travel(-0.8, 4, new Polynomial345())))
                .filteredOn(finding ->
                        finding.severity() != Severity.NOTE && finding.code() != FindingCode.DUTY_INERTIA_RATIO_HIGH)
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.code()).isEqualTo(FindingCode.DUTY_FRICTION_HOLDS);
                    assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
                    assertThat(Objects.requireNonNull(finding.value()).si()).isCloseTo(1.3690, within(1e-4));
                    assertThat(Objects.requireNonNull(finding.limit()).si()).isCloseTo(11.761, within(1e-3));
                });
        assertThat(codes(sloped(0.03), 4))
                .contains(FindingCode.DUTY_BRAKE_ABSENT, FindingCode.DUTY_LOAD_MAY_FALL)
                .doesNotContain(FindingCode.DUTY_FRICTION_HOLDS);
    }

    private static Belt sloped(double coefficient) {
        Belt sloped = Copies.with(belt(null), "inclination", new Angle(Math.toRadians(2)));
        return Copies.with(sloped, "friction", new Friction(coefficient, null, null));
    }

    /** 5 kg out and 10 kg back: where the one turns into the other nothing says when. */
    @Test
    void aPayloadTakesTimeToBePickedUp() {
        Move out = Copies.with(travel(0.8, 4, new Polynomial345()), "payload", new Mass(5));
        Move back = Copies.with(travel(-0.8, 4, new Polynomial345()), "payload", new Mass(10));
        assertThat(sized(belt(null), out, back))
                .filteredOn(finding -> finding.code() == FindingCode.DUTY_PAYLOAD_SWITCHED_AT_ONCE)
                .extracting(Finding::pointer, Finding::value)
                .containsExactly(
                        tuple("/design/axes/0/cycle/segments/0/payload", new Mass(5)),
                        tuple("/design/axes/0/cycle/segments/1/payload", new Mass(5)));
        assertThat(sized(belt(null), out, dwell(1), back, dwell(1)))
                .extracting(Finding::code)
                .doesNotContain(FindingCode.DUTY_PAYLOAD_SWITCHED_AT_ONCE);
    }

    /** 5 kg out and 10 kg back, at rest too; exchanged at an empty rest, the same throughout, or one way empty it is nobody's business. */
    @Test
    void aPayloadIsPutDownSomewhere() {
        Move out = Copies.with(travel(0.8, 4, new Polynomial345()), "payload", new Mass(5));
        Move back = Copies.with(travel(-0.8, 4, new Polynomial345()), "payload", new Mass(10));
        Dwell laden = Copies.with(dwell(1), "payload", new Mass(5));
        assertThat(sized(belt(null), out, laden, back, laden))
                .filteredOn(finding -> finding.code() == FindingCode.DUTY_PAYLOAD_NEVER_PUT_DOWN)
                .extracting(Finding::pointer, Finding::value, Finding::limit)
                .containsExactly(tuple("/design/axes/0/cycle/segments", new Mass(5), new Mass(10)));
        Move alike = Copies.with(back, "payload", new Mass(5));
        Move empty = Copies.with(back, "payload", null);
        for (Segment[] cycle : List.of(
                new Segment[] {out, dwell(1), back, dwell(1)},
                new Segment[] {out, laden, alike, laden},
                new Segment[] {out, laden, empty, laden})) {
            assertThat(sized(belt(null), cycle))
                    .extracting(Finding::code)
                    .doesNotContain(FindingCode.DUTY_PAYLOAD_NEVER_PUT_DOWN);
        }
    }

    /**
     * 100 kg at 1 m/s, to rest in 0.05 s: 2000 N, four times what the cycle asks. The belt's pretension of 300 N leaves a strand
     * slack and pulls the other with 300 + 1000 N; a screw is pushed with 2000 N; a pinion's teeth press its shaft with
     * 2000/cos 20° = 2128.4 N.
     */
    @Test
    void aHardStopIsHardOnTheMechanismToo() {
        DutyResult stopped = stopped(belt(new BeltTension(new Force(300), new Force(1200))));
        assertThat(value(stopped, "F_strand")).isCloseTo(1300, within(1e-6));
        assertThat(stopped.findings())
                .extracting(Finding::code)
                .contains(FindingCode.DUTY_BELT_SLACK, FindingCode.DUTY_BELT_OVERLOADED);
        Derivation buckling = stopped(screw(0, support(EndFixity.FIXED_FIXED, 0.0165), null)).derivations().stream()
                .filter(derivation -> derivation.symbol().equals("F_perm"))
                .findFirst()
                .orElseThrow();
        assertThat(Objects.requireNonNull(buckling.inputs().get("F")).si()).isCloseTo(2000, within(1e-6));
        RackAndPinion rack =
                new RackAndPinion(new Length(0.08), new Inertia(0.001), new Mass(100), new Angle(0), 0.95, null, null);
        ShaftFigures shaft =
                Objects.requireNonNull(stopped(rack).axes().getFirst().shaft());
        assertThat(shaft.radialForce().si()).isCloseTo(2128.4, within(0.1));
    }

    private static DutyResult stopped(Mechanism mechanism) {
        Axis axis = axis(
                "z",
                mechanism,
                null,
                ANY,
                travel(0.8, 1, new Trapezoidal(0.2, 0.2)),
                travel(-0.8, 1, new Trapezoidal(0.2, 0.2)),
                dwell(1));
        StopZone hard = Copies.with(Fixtures.ZONE, "decelerationTime", new Time(0.05));
        DutyRequest plain = Fixtures.request(List.of(Fixtures.inZone(axis)), List.of(Fixtures.unit("u", 20, 100)));
        return new DutySizing().size(Copies.with(plain, "stopZones", List.of(hard)));
    }

    @Test
    void beltsGoSlackOrAreTornTooHard() {
        // 100 kg, 0.8 m in 1 s by fifths: 5 m/s², 500 N
        assertThat(codes(belt(new BeltTension(new Force(200), new Force(2000))), 1))
                .contains(FindingCode.DUTY_BELT_SLACK)
                .doesNotContain(FindingCode.DUTY_BELT_OVERLOADED);
        assertThat(codes(belt(new BeltTension(new Force(300), new Force(540))), 1))
                .contains(FindingCode.DUTY_BELT_OVERLOADED)
                .doesNotContain(FindingCode.DUTY_BELT_SLACK);
        assertThat(codes(belt(new BeltTension(null, new Force(501))), 1))
                .doesNotContain(FindingCode.DUTY_BELT_OVERLOADED, FindingCode.DUTY_BELT_SLACK);
        assertThat(value(size(belt(new BeltTension(new Force(300), new Force(540))), 1), "F_strand"))
                .isCloseTo(550, within(1e-9));
    }

    @Test
    void aSelfLockingThreadHoldsByItself() {
        Screw thread = new Screw(
                new Length(0.004),
                new Length(0.02),
                new Length(1),
                new Mass(100),
                new Angle(Math.PI / 2),
                null,
                null,
                null,
                new ScrewThread(0.15, new Length(0.018), new Angle(Math.toRadians(15)), null),
                null,
                null,
                null,
                null);
        assertThat(codes(thread, 20))
                .contains(FindingCode.DUTY_SELF_LOCKING, FindingCode.DUTY_SELF_LOCKING_HOLDS)
                .doesNotContain(
                        FindingCode.DUTY_LOAD_MAY_FALL, FindingCode.DUTY_BRAKE_ABSENT, FindingCode.DUTY_NUT_UNCHECKED);
    }

    private static Belt belt(@Nullable BeltTension tension) {
        return new Belt(
                new Length(0.08),
                new Inertia(0.001),
                new Mass(100),
                new Angle(0),
                0.95,
                null,
                null,
                null,
                null,
                tension);
    }

    private static double value(DutyResult result, String symbol) {
        return result.derivations().stream()
                .filter(derivation -> derivation.symbol().equals(symbol))
                .map(Derivation::result)
                .findFirst()
                .orElseThrow()
                .si();
    }
}
