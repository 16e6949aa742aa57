package io.axiswright.engine.mounting;

import static io.axiswright.engine.mounting.MountingParts.INCH;
import static io.axiswright.engine.mounting.MountingParts.axis;
import static io.axiswright.engine.mounting.MountingParts.check;
import static io.axiswright.engine.mounting.MountingParts.kit;
import static io.axiswright.engine.mounting.MountingParts.part;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.FasteningKind;
import io.axiswright.engine.catalogue.FasteningPart;
import io.axiswright.engine.catalogue.FootKit;
import io.axiswright.engine.design.BondedFastening;
import io.axiswright.engine.design.ClampFastening;
import io.axiswright.engine.design.Fastening;
import io.axiswright.engine.design.KeyFastening;
import io.axiswright.engine.design.MountingKind;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Pressure;
import io.axiswright.engine.quantity.Torque;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class MountingCheckTest {

    private static final Fastening CLAMP = new ClampFastening(2, new Force(8000), 0.12);
    private static final Fastening KEY = new KeyFastening(new Length(0.02), new Pressure(300e6));

    private static Finding only(MountingResult result, FindingCode code) {
        assertThat(result.findings()).extracting(Finding::code).contains(code);
        Finding finding = result.findings().stream()
                .filter(f -> f.code() == code)
                .findFirst()
                .orElseThrow();
        assertThat(finding.pointer()).isEqualTo("/design/axes/2/mounting");
        return finding;
    }

    private static MountingResult feet(double height, FootKit... kits) {
        return check(axis(MountingKind.FOOT, new Length(height), CLAMP, 0.019, 0.04, 5, 2, true), kits);
    }

    @Test
    void clampThatHoldsOnFeetThatFitHasNothingToRemark() {
        var result = feet(0.08, kit("feet", "80", 0.08, 20));
        assertThat(result.findings()).isEmpty();
        assertThat(result.axes().getFirst().verdict()).isEqualTo(FasteningVerdict.HOLDS);
        assertThat(result.axes().getFirst().footKit()).isEqualTo("feet");
        assertThat(result.axes().getFirst().packing()).isNull();
        assertThat(result.axes().getFirst().fasteningPart()).isEqualTo("clamp");
    }

    @Test
    void lowFeetNeedPackingOfTheDifference() {
        var result = feet(0.1, kit("low", "80", 0.08, 5), kit("near", "80", 0.09, 20), kit("high", "80", 0.112, 1));
        assertThat(result.axes().getFirst().footKit()).isEqualTo("near");
        var packing = only(result, FindingCode.MOUNTING_FOOT_PACKING).value();
        assertThat(packing)
                .isInstanceOfSatisfying(Length.class, l -> assertThat(l.si()).isCloseTo(0.01, within(1e-12)));
    }

    @Test
    void feetThatAreTooHighCannotBeLowered() {
        var finding = only(feet(0.071, kit("feet", "80", 0.08, 20)), FindingCode.MOUNTING_SEAT_HIGH);
        assertThat(finding.value()).isEqualTo(new Length(0.08));
        assertThat(finding.limit()).isEqualTo(new Length(0.071));
    }

    @Test
    void feetOfAnotherFrameSizeDoNotFit() {
        only(feet(0.08, kit("feet", "100", 0.08, 20)), FindingCode.MOUNTING_FOOT_KIT_NONE);
    }

    @Test
    void feetWithoutAHeightHaveNoMeaning() {
        assertThatThrownBy(() -> check(axis(MountingKind.FOOT, null, CLAMP, 0.019, 0.04, 5, 2, true)))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        e -> assertThat(e.faults().getFirst().pointer())
                                .isEqualTo("/design/axes/2/mounting/shaftHeight"));
    }

    @Test
    void faceIsNotedOnceForEachTypeOfDriveUnit() {
        MountedAxis third = axis(CLAMP, 0.019, 0.04, 5, 2, true);
        only(check(third), FindingCode.MOUNTING_FACE_FIT);
        MountedAxis fourth = Copies.with(Copies.with(third, "axis", "fourth"), "axisIndex", 3);
        MountedAxis other = Copies.with(
                Copies.with(fourth, "axisIndex", 4), "driveUnit", Copies.with(third.driveUnit(), "id", "other"));
        var result =
                new MountingCheck().check(new MountingRequest(List.of(third, fourth, other), List.of(), List.of()));
        assertThat(result.findings().stream().filter(f -> f.code() == FindingCode.MOUNTING_FACE_FIT))
                .extracting(Finding::subject, Finding::pointer)
                .containsExactly(
                        tuple(third.driveUnit().id(), "/design/axes/2/mounting"),
                        tuple("other", "/design/axes/4/mounting"));
    }

    @Test
    void weakFasteningSlipsInEitherDirection() {
        var finding = only(check(axis(CLAMP, 0.019, 0.04, -30, 2, true)), FindingCode.MOUNTING_FASTENING_SLIPS);
        assertThat(finding.value()).isEqualTo(new Torque(60));
        // 0.12 · 2 · 8000 N · 19 mm
        assertThat(finding.limit())
                .isInstanceOfSatisfying(Torque.class, t -> assertThat(t.si()).isCloseTo(36.48, within(1e-9)));
    }

    /** The clamp holds 36.48 N·m: 5 N·m of the cycle with 2 to spare, not a stop of 20 N·m or a brake of 25 N·m. */
    @Test
    void theHardestOfCycleStopAndBrakeCounts() {
        MountedAxis cycle = axis(CLAMP, 0.019, 0.04, -5, 2, true);
        MountedAxis stopped = Copies.with(cycle, "stopTorque", new Torque(-20));
        MountedAxis braked = Copies.with(stopped, "brakeTorque", new Torque(25));
        MountedAxis light = Copies.with(Copies.with(cycle, "stopTorque", new Torque(4)), "brakeTorque", new Torque(3));
        assertThat(List.of(cycle, light, stopped, braked))
                .extracting(axis -> check(axis).axes().getFirst())
                .extracting(AxisMounting::requiredBy, AxisMounting::required, AxisMounting::verdict)
                .containsExactly(
                        tuple(FasteningLoad.CYCLE, new Torque(10), FasteningVerdict.HOLDS),
                        tuple(FasteningLoad.CYCLE, new Torque(10), FasteningVerdict.HOLDS),
                        tuple(FasteningLoad.STOP, new Torque(40), FasteningVerdict.TOO_WEAK),
                        tuple(FasteningLoad.HOLDING_BRAKE, new Torque(50), FasteningVerdict.TOO_WEAK));
        assertThat(only(check(braked), FindingCode.MOUNTING_FASTENING_SLIPS).value())
                .isEqualTo(new Torque(50));
    }

    @Test
    void keyIsRefusedOnlyWhereTorqueReverses() {
        only(check(axis(KEY, 0.019, 0.04, 5, 2, true)), FindingCode.MOUNTING_KEY_REVERSAL);
        assertThat(check(axis(KEY, 0.019, 0.04, 5, 2, false)).axes().getFirst().verdict())
                .isEqualTo(FasteningVerdict.HOLDS);
    }

    @Test
    void thinShaftHasNoKey() {
        var result = check(axis(KEY, 0.005, 0.04, 0.1, 2, false));
        only(result, FindingCode.MOUNTING_KEY_SIZE_NONE);
        assertThat(result.axes().getFirst().verdict()).isEqualTo(FasteningVerdict.UNKNOWN);
        assertThat(result.axes().getFirst().capacity()).isNull();
    }

    @Test
    void longKeyIsNoted() {
        Fastening longKey = new KeyFastening(new Length(0.035), new Pressure(300e6));
        var finding = only(check(axis(longKey, 0.019, 0.04, 5, 2, false)), FindingCode.MOUNTING_KEY_LENGTH);
        assertThat(finding.limit())
                .isInstanceOfSatisfying(Length.class, l -> assertThat(l.si()).isCloseTo(0.0285, within(1e-12)));
    }

    @Test
    void fasteningLongerThanTheShaft() {
        only(check(axis(KEY, 0.019, 0.015, 5, 2, false)), FindingCode.MOUNTING_SHAFT_SHORT);
    }

    @Test
    void clampThatHoldsOnlyWithoutScatter() {
        only(check(axis(CLAMP, 0.019, 0.04, 15, 2, true)), FindingCode.MOUNTING_CLAMP_SCATTER);
    }

    @Test
    void bondThatForgetsReversal() {
        Fastening bond = new BondedFastening(new Length(0.03), new Pressure(20e6), 0.8);
        only(check(axis(bond, 0.025, 0.05, 20, 2, true)), FindingCode.MOUNTING_BOND_REVERSAL);
        assertThat(check(axis(bond, 0.025, 0.05, 20, 2, false)).findings())
                .extracting(Finding::code)
                .doesNotContain(FindingCode.MOUNTING_BOND_REVERSAL);
    }

    @Test
    void cheapestPartOfTheKindForTheShaftIsPicked() {
        var request = new MountingRequest(
                List.of(axis(KEY, 0.019, 0.04, 5, 2, false)),
                List.of(),
                List.of(
                        part("clamp", FasteningKind.CLAMP, 0.01, 0.03, 1),
                        part("below", FasteningKind.KEY, 0.01, 0.0185, 1),
                        part("above", FasteningKind.KEY, 0.019, 0.03, 1),
                        part("dear", FasteningKind.KEY, 0.017, 0.022, 9),
                        part("right", FasteningKind.KEY, 0.017, 0.019, 3)));
        assertThat(new MountingCheck().check(request).axes().getFirst().fasteningPart())
                .isEqualTo("right");
    }

    /** A shaft of 7/8 in has a keyway of 3/16 in (ASME B17.1), whatever metric key is sold for shafts over 22 up to 30 mm. */
    @Test
    void aKeyMustBeAsWideAsTheKeyway() {
        FasteningPart metric =
                Copies.with(part("8 mm", FasteningKind.KEY, 0.022, 0.03, 1), "keyWidth", new Length(8e-3));
        FasteningPart inch = Copies.with(
                part("3/16 in", FasteningKind.KEY, 0.0143, 0.0223, 9), "keyWidth", new Length(3 * INCH / 16));
        assertThat(keyOf(7 * INCH / 8, metric, inch)).isEqualTo("3/16 in");
        assertThat(keyOf(7 * INCH / 8, metric)).isNull();
        assertThat(keyOf(0.024, metric, inch)).isEqualTo("8 mm");
    }

    private static @Nullable String keyOf(double diameter, FasteningPart... parts) {
        var request = new MountingRequest(List.of(axis(KEY, diameter, 0.04, 5, 2, false)), List.of(), List.of(parts));
        return new MountingCheck().check(request).axes().getFirst().fasteningPart();
    }

    /** 2 1/2 in = 63.5 mm and 5 in = 127 mm: keys of 5/8 and 1 1/4 in (ASME B17.1), not of 18 and 32 mm. */
    @Test
    void inchShaftsThatAreHalfMillimetresTooTakeInchKeys() {
        assertThat(keyWidth(0.0635)).isCloseTo(0.625 * INCH, within(1e-12));
        assertThat(keyWidth(0.127)).isCloseTo(1.25 * INCH, within(1e-12));
        assertThat(keyWidth(0.065)).isCloseTo(0.018, within(1e-12));
    }

    private static double keyWidth(double diameter) {
        return Objects.requireNonNull(check(axis(KEY, diameter, 0.2, 5, 2, false))
                        .axes()
                        .getFirst()
                        .keyWidth())
                .si();
    }

    @Test
    void missingPartIsTold() {
        var request = new MountingRequest(List.of(axis(KEY, 0.019, 0.04, 5, 2, false)), List.of(), List.of());
        only(new MountingCheck().check(request), FindingCode.MOUNTING_PART_NONE);
    }

    /** Scaling torque leaves the capacity alone and scales what is required. */
    @Test
    void capacityDoesNotDependOnTheTorqueAsked() {
        var small = check(axis(CLAMP, 0.019, 0.04, 5, 2, true)).axes().getFirst();
        var large = check(axis(CLAMP, 0.019, 0.04, 50, 2, true)).axes().getFirst();
        assertThat(large.capacity()).isEqualTo(small.capacity());
        assertThat(large.required().si()).isCloseTo(10 * small.required().si(), within(1e-9));
    }
}
