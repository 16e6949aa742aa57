package io.axiswright.engine.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.JouleIntegral;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ProtectiveDeviceTest {

    /** A fuse that clears 60 A within a minute, 80 A within 5 s and 130 A within 0.4 s; invented. */
    private static final List<ClearingPoint> FUSE = List.of(point(60, 60), point(80, 5), point(130, 0.4));

    @Test
    void clearsByTheLastPointItsCurrentReaches() {
        var fuse = device(FUSE, null);
        assertThat(fuse.clearingTime(new Current(59))).isNull();
        assertThat(fuse.clearingTime(new Current(129))).isEqualTo(new Time(5));
        assertThat(fuse.clearingTime(new Current(130))).isEqualTo(new Time(0.4));
    }

    @Test
    void needsTheLeastCurrentThatClearsInTime() {
        var fuse = device(FUSE, null);
        assertThat(fuse.operatingCurrent(new Time(5))).isEqualTo(new Current(80));
        assertThat(fuse.operatingCurrent(new Time(1))).isEqualTo(new Current(130));
        assertThat(fuse.operatingCurrent(new Time(0.2))).isNull();
        assertThat(device(null, null).operatingCurrent(new Time(5))).isNull();
    }

    /** Just below 130 A it may take 5 s: 84 500 A²s; at 400 A, 0.4 s: 64 000; at 1000 A: 400 000. A minute is no short circuit. */
    @Test
    void letsThroughTheMostOfAllFaultsUpToTheHighest() {
        var fuse = device(FUSE, null);
        assertThat(through(fuse, 100)).isEqualTo(50_000);
        assertThat(through(fuse, 400)).isEqualTo(84_500);
        assertThat(through(fuse, 1000)).isEqualTo(400_000);
        assertThat(fuse.letThrough(new Current(70))).isNull();
        assertThat(device(null, null).letThrough(new Current(1000))).isNull();
    }

    @Test
    void whatItsMakerStatesComesFirst() {
        assertThat(through(device(FUSE, 9000.0), 1000)).isEqualTo(9000);
    }

    /** IEC 60364-4-43 434.5.2: below 0.1 s only the maker knows. */
    @Test
    void noClearingCountsShorterThanATenthOfASecond() {
        assertThat(through(device(List.of(point(160, 0.01)), null), 1000)).isEqualTo(100_000);
    }

    @Test
    void pointsThatDoNotFollowEachOtherAreFaults() {
        var muddled = device(List.of(point(80, 5), point(80, 0.4), point(90, 1)), null);
        assertThat(ItemCheck.faults(muddled, "/protectiveDevices/0"))
                .extracting(fault -> fault.pointer())
                .containsExactly("/protectiveDevices/0/clearingPoints/1", "/protectiveDevices/0/clearingPoints/2");
        assertThat(ItemCheck.faults(device(FUSE, null), "")).isEmpty();
        assertThat(ItemCheck.faults(device(null, null), "")).isEmpty();
    }

    private static double through(ProtectiveDevice device, double amperes) {
        return Objects.requireNonNull(device.letThrough(new Current(amperes))).si();
    }

    private static ClearingPoint point(double amperes, double seconds) {
        return new ClearingPoint(new Current(amperes), new Time(seconds));
    }

    /** Type C of 6 A surely holds √2 · 5 · 6 A = 42.4 A; without a band nothing is known; one that ends below its beginning is senseless. */
    @Test
    void instantaneousTripping() {
        var plain = Copies.with(device(null, null), "rating", new Current(6));
        var banded = Copies.with(plain, "instantaneousTripping", new TrippingBand(5, 10));
        var inverted = Copies.with(plain, "instantaneousTripping", new TrippingBand(10, 5));

        assertThat(plain.toleratedPeak()).isNull();
        assertThat(Objects.requireNonNull(banded.toleratedPeak()).si()).isCloseTo(42.426, within(1e-3));
        assertThat(ItemCheck.faults(banded, "/d")).isEmpty();
        assertThat(ItemCheck.faults(inverted, "/d"))
                .singleElement()
                .satisfies(fault -> assertThat(fault.pointer()).isEqualTo("/d/instantaneousTripping/upper"));
    }

    private static ProtectiveDevice device(@Nullable List<ClearingPoint> points, @Nullable Double letThrough) {
        return new ProtectiveDevice(
                "fuse",
                "fuse",
                null,
                List.of(),
                DeviceKind.FUSE,
                CodeBasis.IEC_60204_1,
                3,
                new Current(16),
                new Current(50_000),
                new Voltage(500),
                points,
                letThrough == null ? null : new JouleIntegral(letThrough),
                null,
                null,
                null,
                null);
    }
}
