package io.axiswright.engine.mounting;

import static io.axiswright.engine.mounting.MountingParts.INCH;
import static io.axiswright.engine.mounting.MountingParts.POUND_FORCE_INCH;
import static io.axiswright.engine.mounting.MountingParts.PSI;
import static io.axiswright.engine.mounting.MountingParts.axis;
import static io.axiswright.engine.mounting.MountingParts.check;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.FasteningKind;
import io.axiswright.engine.design.BondedFastening;
import io.axiswright.engine.design.BushingFastening;
import io.axiswright.engine.design.ClampFastening;
import io.axiswright.engine.design.Fastening;
import io.axiswright.engine.design.InterferenceFastening;
import io.axiswright.engine.design.KeyFastening;
import io.axiswright.engine.design.SetScrewFastening;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Pressure;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.standard.KeySize;
import io.axiswright.engine.standard.KeySizes;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Torque capacities against published examples; where an example asks for a length, that length must carry its torque. */
class ShaftFasteningTest {

    /**
     * 65 mm shaft, key 18 × 11, crushing 125.625 MPa, 3612.807 N·m: 160.888 mm of key (printed 160.88). Machine-design textbook
     * question 7.23, https://holooly.com/solutions-v2-1/design-a-rectangular-key-for-the-following-application-a-shaft-65-mm-diameter-transmits-power-at-maximum-shear-stress-of-67-mpa-the-shear-stress-in-the-key-should-not-exceed-75-of-the-stress-develop/
     * Half of both here, since length beyond 1.5 diameters does not count.
     */
    @Test
    void metricKeyCrushes() {
        var result = check(axis(key(0.160888 / 2, 125.625e6), 0.065, 0.2, 10, 1, false))
                .axes()
                .getFirst();
        assertThat(si(result.keyWidth())).isCloseTo(0.018, within(1e-12));
        assertThat(si(result.keyHeight())).isCloseTo(0.011, within(1e-12));
        assertThat(si(result.capacity())).isCloseTo(3612.807 / 2, within(0.01));
        assertThat(result.decidedBy()).isEqualTo(FasteningMode.BEARING);
    }

    /** The same example in shear: 50.25 MPa asks for 122.900 mm (printed 122.9). The key is taken as high so that it shears. */
    @Test
    void metricKeyShears() {
        var high = size(0.018, 0.1);
        var capacity = new ShaftKey(high, new Length(0.065), key(0.1229 / 2, 50.25e6 / 0.577)).capacity();
        assertThat(capacity.mode()).isEqualTo(FasteningMode.SHEAR);
        assertThat(capacity.torque().si()).isCloseTo(3612.807 / 2, within(0.02));
    }

    /**
     * 1/2 in shaft, 1/8 in square key, 180 lbf·in, factor 2.5: 0.56471 in at 51 000 psi crushing (printed 0.56), 0.47213 in at
     * 30 500 psi shear (printed 0.47). Wentzell ex. 15.1, p. 332; https://github.com/FOSSEE/Python-Textbook-Companions
     */
    @Test
    void inchKey() {
        var result = check(axis(key(0.3 * INCH, 51_000 * PSI), 0.5 * INCH, INCH, 180 * POUND_FORCE_INCH, 2.5, false))
                .axes()
                .getFirst();
        assertThat(si(result.keyWidth())).isCloseTo(0.125 * INCH, within(1e-12));
        assertThat(result.verdict()).isEqualTo(FasteningVerdict.TOO_WEAK);
        assertThat(si(result.alternatives().getFirst().engagedLength())).isCloseTo(0.56471 * INCH, within(1e-6));

        var high = new ShaftKey(size(0.125 * INCH, INCH), new Length(0.5 * INCH), key(INCH, 30_500 * PSI / 0.577));
        assertThat(si(high.lengthFor(new Torque(2.5 * 180 * POUND_FORCE_INCH)).orElseThrow()))
                .isCloseTo(0.47213 * INCH, within(1e-6));
    }

    /** 25 mm, 7 × 7 key, 208.348 N·m, 400 MPa, factor 2.5: 29.764 mm (printed 29.76). Sadhu Singh ex. 7.8, p. 208; same address. */
    @Test
    void squareKey() {
        var key = new ShaftKey(size(0.007, 0.007), new Length(0.025), key(0.029764, 400e6));
        assertThat(key.capacity().torque().si()).isCloseTo(2.5 * 208.348, within(0.02));
    }

    /** 1-7/16 in shaft, 3/8 in square key, 4201.7 lbf·in, 65 kpsi, factor 2.8: 1.343 in in bearing. Shigley ex. 7-6, from memory. */
    @Test
    void squareInchKeyFromMemory() {
        var result = check(
                        axis(key(INCH, 65_000 * PSI), 1.4375 * INCH, 3 * INCH, 4201.7 * POUND_FORCE_INCH, 2.8, false))
                .axes()
                .getFirst();
        assertThat(si(result.keyWidth())).isCloseTo(0.375 * INCH, within(1e-12));
        assertThat(si(result.alternatives().getFirst().engagedLength())).isCloseTo(1.343 * INCH, within(0.001 * INCH));
    }

    /**
     * Four bolts of 27.8215 mm core at 60 MPa, two on each 60 mm shaft, μ 0.25: 1718.87 N·m under uniform pressure (36 kW at
     * 200 rev/min). Jindal ex. 14-5, p. 403; same address. Two-line contact carries 2/π of it.
     */
    @Test
    void clampOfTwoLineContactCarriesTwoOverPiOfUniformPressure() {
        double preload = 60e6 * Math.PI / 4 * 0.0278215 * 0.0278215;
        var result = check(axis(clamp(2, preload, 0.25), 0.06, 0.1, 10, 1, true))
                .axes()
                .getFirst();
        assertThat(si(result.capacity()) * Math.PI / 2).isCloseTo(1718.87, within(0.1));
        assertThat(result.decidedBy()).isEqualTo(FasteningMode.SLIP);
    }

    /**
     * A cylinder that holds by shear stress, T = τ π d² L/2, as a press fit whose shear stress is μ p: 0.12 · 51.1875 MPa on
     * 50 mm × 40 mm carries 964.86 N·m (printed 965), https://aionlinecalculator.com/press-fit-calculator.html ; 0.15 · 48.75 MPa
     * carries 1148.64 N·m (printed 1149), https://machinecalc.pages.dev/press-fit-interference-calculator
     */
    @Test
    void bondedCylinder() {
        assertThat(si(bonded(51.1875e6, 0.12).capacity())).isCloseTo(964.86, within(0.01));
        assertThat(si(bonded(48.75e6, 0.15).capacity())).isCloseTo(1148.64, within(0.01));
        assertThat(bonded(48.75e6, 0.15).decidedBy()).isEqualTo(FasteningMode.BOND);
    }

    /** 25 mm × 30 mm, 20 MPa, factor 0.25: 147 N·m (derived, worked by hand). */
    @Test
    void bondedJointUnderAlternatingLoad() {
        var result = check(axis(bond(0.03, 20e6, 0.25), 0.025, 0.05, 60, 2, true))
                .axes()
                .getFirst();
        assertThat(si(result.capacity())).isCloseTo(147.3, within(0.1));
        assertThat(result.verdict()).isEqualTo(FasteningVerdict.HOLDS);
        assertThat(result.alternatives()).isEmpty();
    }

    /** Every length of key beyond 1.5 diameters carries the same. */
    @Test
    void keyLengthBeyondTheLimitDoesNotCount() {
        double limit = si(check(axis(key(0.0285, 300e6), 0.019, 1, 1, 1, false))
                .axes()
                .getFirst()
                .capacity());
        double beyond = si(check(axis(key(0.5, 300e6), 0.019, 1, 1, 1, false))
                .axes()
                .getFirst()
                .capacity());
        assertThat(beyond).isCloseTo(limit, within(1e-9));
    }

    /**
     * Press fit of 50 mm in a hub of 80 mm, 40 mm long, one material. 0.04 mm, 210 GPa, μ 0.12: 965 N·m, hoop stress 117 MPa; 0.06 mm:
     * 77 MPa, "over 1400 N·m" (1447.3); https://aionlinecalculator.com/press-fit-calculator.html . 0.04 mm, 200 GPa, μ 0.15: 48.8 MPa,
     * 1149 N·m, 111 MPa; https://machinecalc.pages.dev/press-fit-interference-calculator . By Tresca the bore bears hoop stress and
     * pressure: 116.81 + 51.19 and 111.25 + 48.75 MPa.
     */
    @Test
    void pressFits() {
        assertThat(fit(40e-6, 210e9, 0.12).capacity().torque().si()).isCloseTo(964.86, within(0.01));
        assertThat(fit(40e-6, 210e9, 0.12).hubStress().si()).isCloseTo(168.0e6, within(0.01e6));
        assertThat(fit(60e-6, 210e9, 0.12).capacity().torque().si()).isCloseTo(1447.3, within(0.05));
        assertThat(fit(40e-6, 200e9, 0.15).capacity().torque().si()).isCloseTo(1148.64, within(0.01));
        assertThat(fit(40e-6, 200e9, 0.15).hubStress().si()).isCloseTo(160.0e6, within(0.01e6));
        assertThat(fit(40e-6, 200e9, 0.15)
                        .lengthFor(new Torque(1148.64))
                        .orElseThrow()
                        .si())
                .isCloseTo(0.04, within(1e-6));
    }

    /**
     * Compound cylinder of radii 100, 125 and 150 mm, 200 GPa, radial shrinkage 0.189394 mm (printed 0.189): 30 MPa at the contact, hoop
     * stress of the outer one 166.364 MPa. Bhavikatti, Strength of Materials, ex. 8.8.16, p. 348; Python Textbook Companions, chapter 8.
     */
    @Test
    void compoundCylinderOfAHollowShaft() {
        var fit = new ShaftFit(
                new InterferenceFastening(
                        new Length(0.1),
                        new Length(2 * 0.189394e-3),
                        null,
                        new Length(0.3),
                        new Pressure(200e9),
                        null,
                        null,
                        new Length(0.2),
                        0.1),
                new Length(0.25));
        assertThat(fit.hubStress().si()).isCloseTo(166.364e6 + 30e6, within(0.01e6));
        assertThat(fit.capacity().torque().si()).isCloseTo(0.1 * 30e6 * Math.PI * 0.25 * 0.25 * 0.1 / 2, within(1.0));
    }

    /** A hub no thicker than its bore, or a shaft that is all bore, presses on nothing. */
    @Test
    void aFitWithoutAWallCarriesNothing() {
        var result = check(axis(interference(0.05, null, null), 0.05, 0.1, 10, 1, true))
                .axes()
                .getFirst();
        assertThat(si(result.capacity())).isZero();
        assertThat(result.verdict()).isEqualTo(FasteningVerdict.TOO_WEAK);
    }

    /** Set screws that hold 1000 lbf along a shaft of 1/2 in carry 1000 · 0.5 / 2 = 250 lbf·in, by hand. */
    @Test
    void setScrewsHoldAtTheSurface() {
        var result = check(axis(screws(1000), 0.5 * INCH, INCH, 50 * POUND_FORCE_INCH, 4, false))
                .axes()
                .getFirst();
        assertThat(si(result.capacity())).isCloseTo(250 * POUND_FORCE_INCH, within(1e-6));
        assertThat(result.decidedBy()).isEqualTo(FasteningMode.SLIP);
        assertThat(result.verdict()).isEqualTo(FasteningVerdict.HOLDS);
    }

    /**
     * Four screws of 5 kN on a cone of 1 in 10 (tan α 0.1), μ 0.12: tan(α + ρ) = 0.22 / 0.988, N = 20 kN / 0.22267 = 89 818.2 N, and
     * on 25 mm T = 0.12 · N · 12.5 mm = 134.727 N·m, by hand.
     */
    @Test
    void keylessBushing() {
        var result = check(axis(bushing(5000), 0.025, 0.05, 60, 2, true)).axes().getFirst();
        assertThat(si(result.capacity())).isCloseTo(134.727, within(0.001));
        assertThat(result.verdict()).isEqualTo(FasteningVerdict.HOLDS);
    }

    private static Fastening screws(double poundsForce) {
        return new SetScrewFastening(new Force(poundsForce * POUND_FORCE_INCH / INCH));
    }

    private static Fastening bushing(double preload) {
        return new BushingFastening(4, new Force(preload), new Angle(Math.atan(0.1)), 0.12);
    }

    private static ShaftFit fit(double interference, double modulus, double friction) {
        return new ShaftFit(
                new InterferenceFastening(
                        new Length(0.04),
                        new Length(interference),
                        null,
                        new Length(0.08),
                        new Pressure(modulus),
                        null,
                        null,
                        null,
                        friction),
                new Length(0.05));
    }

    private static Fastening interference(double hub, @Nullable Double largest, @Nullable Double yield) {
        return new InterferenceFastening(
                new Length(0.04),
                new Length(40e-6),
                largest == null ? null : new Length(largest),
                new Length(hub),
                new Pressure(210e9),
                yield == null ? null : new Pressure(yield),
                null,
                null,
                0.12);
    }

    /** At the largest interference, 0.06 mm, the bore bears 1.5 · 168 = 252 MPa. */
    @Test
    void aHubThatYieldsIsTold() {
        assertThat(check(axis(interference(0.08, 60e-6, 250e6), 0.05, 0.1, 10, 1, true))
                        .findings())
                .extracting(Finding::code)
                .contains(FindingCode.MOUNTING_HUB_YIELDS);
        assertThat(check(axis(interference(0.08, 60e-6, 254e6), 0.05, 0.1, 10, 1, true))
                        .findings())
                .extracting(Finding::code)
                .doesNotContain(FindingCode.MOUNTING_HUB_YIELDS, FindingCode.MOUNTING_PART_NONE);
    }

    /** Set screws creep where torque reverses; where it does not, less than four times the torque is remarked. */
    @Test
    void setScrewsAreForSteadyTorque() {
        assertThat(check(axis(screws(1000), 0.5 * INCH, INCH, 1, 4, true)).findings())
                .extracting(Finding::code)
                .contains(FindingCode.MOUNTING_SET_SCREW_REVERSAL);
        assertThat(check(axis(screws(1000), 0.5 * INCH, INCH, 1, 3.9, false)).findings())
                .extracting(Finding::code)
                .contains(FindingCode.MOUNTING_SET_SCREW_SAFETY);
        assertThat(check(axis(screws(1000), 0.5 * INCH, INCH, 1, 4, false)).findings())
                .extracting(Finding::code)
                .doesNotContain(FindingCode.MOUNTING_SET_SCREW_SAFETY, FindingCode.MOUNTING_SET_SCREW_REVERSAL);
    }

    /** A key bears reversals where friction beside it carries all of the 2 · 5 N·m. */
    @Test
    void aKeyInAClampedHubBearsReversals() {
        assertThat(keyed(10.0).verdict()).isEqualTo(FasteningVerdict.HOLDS);
        assertThat(keyed(9.9).verdict()).isEqualTo(FasteningVerdict.UNFIT_FOR_REVERSAL);
    }

    private static AxisMounting keyed(double friction) {
        var key = new KeyFastening(new Length(0.02), new Pressure(300e6), new Torque(friction));
        return check(axis(key, 0.019, 0.04, 5, 2, true)).axes().getFirst();
    }

    /** What is offered instead must hold when it is tried. */
    @Test
    void alternativesHold() {
        for (var weak : java.util.List.of(
                key(0.005, 200e6), clamp(2, 500, 0.1), bond(0.002, 20e6, 0.25), bushing(500), screws(100))) {
            var result = check(axis(weak, 0.019, 0.04, 15, 2, false)).axes().getFirst();
            assertThat(result.verdict()).isEqualTo(FasteningVerdict.TOO_WEAK);
            assertThat(result.alternatives()).isNotEmpty();
            for (var alternative : result.alternatives()) {
                double length = alternative.engagedLength() == null ? 0 : si(alternative.engagedLength()) * (1 + 1e-12);
                var tried = switch (alternative.kind()) {
                    case KEY -> key(length, 200e6);
                    case BONDED -> bond(length, 20e6, 0.25);
                    case BUSHING -> bushing(si(alternative.preload()) / 4 * (1 + 1e-12));
                    case SET_SCREW, INTERFERENCE -> throw new AssertionError(alternative.kind() + " is not offered");
                    case CLAMP ->
                        clamp(
                                1,
                                si(alternative.preload()) * (1 + 1e-12),
                                weak instanceof ClampFastening c ? c.friction() : 0.12);
                };
                assertThat(check(axis(tried, 0.019, 0.04, 15, 2, false))
                                .axes()
                                .getFirst()
                                .verdict())
                        .isEqualTo(FasteningVerdict.HOLDS);
            }
        }
    }

    private static AxisMounting bonded(double strength, double reduction) {
        return check(axis(bond(0.04, strength, reduction), 0.05, 0.1, 10, 1, false))
                .axes()
                .getFirst();
    }

    private static Fastening bond(double length, double strength, double reduction) {
        return new BondedFastening(new Length(length), new Pressure(strength), reduction);
    }

    private static Fastening clamp(int screws, double preload, double friction) {
        return new ClampFastening(screws, new Force(preload), friction);
    }

    private static KeyFastening key(double length, double yield) {
        return new KeyFastening(new Length(length), new Pressure(yield));
    }

    private static KeySize size(double width, double height) {
        var any = KeySizes.metric(new Length(0.02)).orElseThrow();
        return new KeySize(new Length(width), new Length(height), any.shaftDepth(), any.hubDepth(), any.source());
    }

    private static double si(@Nullable Quantity quantity) {
        return quantity == null ? Double.NaN : quantity.si();
    }

    @Test
    void clampAloneIsOfferedForAReversingKey() {
        var result =
                check(axis(key(0.02, 300e6), 0.019, 0.04, 5, 2, true)).axes().getFirst();
        assertThat(result.verdict()).isEqualTo(FasteningVerdict.UNFIT_FOR_REVERSAL);
        assertThat(result.alternatives()).extracting(FasteningAlternative::kind).containsExactly(FasteningKind.CLAMP);
    }
}
