package io.axiswright.engine.braking;

import static io.axiswright.engine.braking.BrakingFixtures.ZONE;
import static io.axiswright.engine.braking.BrakingFixtures.axis;
import static io.axiswright.engine.braking.BrakingFixtures.brakingUnit;
import static io.axiswright.engine.braking.BrakingFixtures.course;
import static io.axiswright.engine.braking.BrakingFixtures.request;
import static io.axiswright.engine.braking.BrakingFixtures.shuttle;
import static io.axiswright.engine.braking.BrakingFixtures.stretch;
import static io.axiswright.engine.braking.BrakingFixtures.study;
import static io.axiswright.engine.braking.BrakingFixtures.unit;
import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.BrakingUnit;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How the braking unit chosen stands to its limits, and what would change that. */
class UnitReportTest {

    private static BrakingAxis heavy() {
        return axis(0, null, ZONE.id(), unit(1.5, 20, 1e-3, 820), shuttle(0.02, 250, 0.2, 0.5, 0.6), 0.02, 0.2);
    }

    private static BrakingUnit parallel(BrakingUnit u, int most) {
        return new BrakingUnit(
                u.id(),
                u.description(),
                u.price(),
                u.needs(),
                u.chopperOn(),
                u.chopperOff(),
                u.resistance(),
                u.resistanceTolerance(),
                u.chopperCurrent(),
                u.continuousPower(),
                u.pulseEnergy(),
                u.heatCapacity(),
                u.thermalResistance(),
                u.resistorLimit(),
                most,
                new Length(10));
    }

    private static List<FindingCode> codes(BrakingResult result) {
        return result.findings().stream().map(Finding::code).toList();
    }

    @Test
    void theReportByHand() {
        BrakingResult result = study(List.of(heavy()), brakingUnit("b", 1, 40));
        GroupBraking group = result.groups().getFirst();
        ChosenUnit chosen = requireNonNull(group.chosen());
        assertThat(chosen.count()).isEqualTo(1);
        // both ends are nominal: 780 V/(200 A·0.9); 780²/(5952.2 W·1.1); 780 V/36 Ω; 780²/36 Ω
        assertThat(chosen.smallestResistance().si()).isCloseTo(780 / 180.0, withPercentage(1e-9));
        assertThat(requireNonNull(chosen.largestResistance()).si())
                .isCloseTo(780 * 780 / (5952.2222 * 1.1), withPercentage(1e-5));
        assertThat(chosen.chopperCurrent().si()).isCloseTo(780 / 36.0, withPercentage(1e-9));
        assertThat(chosen.peakPower().si()).isCloseTo(780 * 780 / 36.0, withPercentage(1e-9));
        // 566.86 J a stop from the switch-on voltage (WorstStopTest), 12 stops an hour
        assertThat(chosen.pulseEnergy().si()).isCloseTo(566.86, within(0.01));
        double mean = group.cases().getFirst().meanResistorPower().si();
        assertThat(chosen.meanPower().si()).isCloseTo(mean + 566.863 * 12 / 3600, within(1e-3));
        // (500 − 40) K/(0.9 K/W) = 511 W, below the rating of 5 kW
        assertThat(chosen.allowedMeanPower().si()).isCloseTo(511.11, within(0.01));
        assertThat(chosen.cableCurrent().si())
                .isCloseTo(Math.sqrt(chosen.meanPower().si() / 36), withPercentage(1e-9));
        // a cycle returns 566.86 J too; of 1.5 s each, 1.1 s in which 20 W stand by and more, the bus falls to the
        // rectifier's
        // voltage: the resistor gets it all but the ½·1 mF·(780² − 746.7²) V² = 25.4 J (or down to 765 V, 13.8 J) left
        // then
        double[] means = {(566.863 - 25.43) / 1.5, (566.863 - 13.83) / 1.5};
        assertThat(mean).isBetween(means[0], means[1]);
        // one mean power: (511.11 − mean)·3600/566.863 stops an hour, some 900 to 960. The temperature: the cycle's
        // ripple on its
        // mean, ΔT = E/(m·c) = 1.11 K, leaves 0.9 K/W·(511.11 − mean) − 1.11 K for steps of 566.863/500 K every 3600/n
        // s:
        // n = 3600/(450·−ln(1 − step/room)), half a step less than the mean allows
        double byPower = (511.111 - mean) * 3600 / 566.863;
        assertThat(byPower).isBetween(900.0, 970.0);
        double energy = mean * 1.5;
        double ripple = energy / 500 / -Math.expm1(-1.5 / 450);
        double byHeat = 3600 / (-450 * Math.log1p(-(566.863 / 500) / (460 - ripple)));
        assertThat(requireNonNull(chosen.toleratedStopsPerHour()))
                .isCloseTo(Math.min(byPower, byHeat), withPercentage(0.5));
        // dead, the bus keeps all 566.86 J of the cycle, and does so again in a stop from where it trips in truth:
        // √(820² +
        // 2·566.86/1 mF); in the cycle alone √(746.7² + 2·566.86/1 mF)
        assertThat(chosen.failurePeakVoltage().si()).isCloseTo(Math.sqrt(820 * 820 + 2 * 566.863 / 1e-3), within(0.01));
        assertThat(chosen.tripsOnFailure()).isTrue();
        assertThat(codes(result))
                .contains(FindingCode.BRAKING_UNIT_FAILURE)
                .doesNotContain(FindingCode.BRAKING_UNITS_PARALLEL, FindingCode.BRAKING_RESISTOR_CABLE);
    }

    /**
     * Two of 220 Ω (242 at the upper end) are taken because one's mean power is too high; on 10 mF one of them
     * alone still keeps the bus under its trip: it takes 780²/242 = 2514 W of a peak of 5952 W, so it rises above 780 V by no
     * more than the (5952.2 − 2514)²/(2·31 250) = 189.1 J that come over that: √(780² + 2·189.1/10 mF) = 803.9 V.
     */
    @Test
    void oneOfTwoDeadNeedNotTrip() {
        BrakingAxis axis =
                axis(0, null, ZONE.id(), unit(1.5, 20, 1e-2, 820), shuttle(0.02, 250, 0.2, 0.5, 0.6), 0.02, 0.2);
        BrakingUnit small = brakingUnit("small", 10, 780, 765, 220, 0.1, 10, 250, 50_000, 500);
        BrakingResult result = study(List.of(axis), parallel(small, 4));
        ChosenUnit chosen = requireNonNull(result.groups().getFirst().chosen());
        assertThat(chosen.count()).isEqualTo(2);
        assertThat(result.groups().getFirst().rejected())
                .singleElement()
                .satisfies(one -> assertThat(one.broken()).isEqualTo(BrakingLimit.CONTINUOUS_POWER));
        assertThat(chosen.failurePeakVoltage().si()).isBetween(790.0, Math.sqrt(780 * 780 + 2 * 189.2 / 1e-2));
        assertThat(chosen.tripsOnFailure()).isFalse();
        assertThat(codes(result)).doesNotContain(FindingCode.BRAKING_UNIT_FAILURE);
    }

    @Test
    void severalInParallelWhereOneIsTooWeak() {
        BrakingUnit weak = brakingUnit("weak", 10, 780, 765, 220, 0.1, 10, 5000, 50_000, 500);
        assertThat(study(List.of(heavy()), weak).groups().getFirst().verdict()).isEqualTo(BrakingVerdict.NONE_FITS);
        BrakingResult result = study(List.of(heavy()), parallel(weak, 8));
        GroupBraking group = result.groups().getFirst();
        assertThat(group.verdict()).isEqualTo(BrakingVerdict.NEEDS_BRAKING_UNIT);
        ChosenUnit chosen = requireNonNull(group.chosen());
        assertThat(chosen.count()).isGreaterThan(1);
        assertThat(group.rejected()).hasSize(chosen.count() - 1);
        assertThat(codes(result)).contains(FindingCode.BRAKING_UNITS_PARALLEL, FindingCode.BRAKING_RESISTOR_CABLE);
        // the fewest: one less trips
        assertThat(chosen.tripsOnFailure()).isTrue();
        // what several take together is what one with their resistance takes
        double together = group.cases().get(1).resistorEnergy().si();
        assertThat(chosen.pulseEnergy().si() * chosen.count()).isCloseTo(together, withPercentage(1e-6));
    }

    /** 10 N·m at 100 rad/s less 25 W copper and 15 W standby: 960 W for as long as it runs down. */
    @Test
    void aLoadThatRunsDownLongerThanItsResistorStands() {
        BrakingAxis hoist =
                axis(0, null, unit(2, 15, 1e-3, 820), course(stretch(2, 100, 0, -10), stretch(4, -50, 0, -11)));
        BrakingResult result = study(List.of(hoist), brakingUnit("b", 1, 780, 765, 40, 0.1, 200, 900, 50_000, 500));
        assertThat(result.groups().getFirst().cases())
                .filteredOn(c -> c.kind() == CaseKind.LOWERING)
                .singleElement()
                .satisfies(c -> assertThat(c.resistorEnergy().si()).isCloseTo(1920, within(1e-6)));
        assertThat(codes(result)).contains(FindingCode.BRAKING_LOWERING_LONG);
    }

    /**
     * A load of 10 N·m lowered at 100 rad/s for 15 s: 960 W (25 W copper, 15 W standby) are 14 400 J in one go, of which the bus
     * keeps at most ½·1 mF·(780² − 746.7²) V² = 25.4 J. No stop zone: the cycle alone breaks the pulse energy.
     */
    @Test
    void aDescentOfTheCycleIsOnePulse() {
        BrakingAxis hoist = axis(
                0,
                null,
                unit(2, 15, 1e-3, 820),
                course(stretch(15, 100, 0, -10), stretch(5, 0, 0, 0), stretch(15, -100, 0, -11), stretch(5, 0, 0, 0)));
        GroupBraking group = study(
                        List.of(hoist),
                        brakingUnit("small", 1, 780, 765, 40, 0.1, 200, 5000, 1000, 500),
                        brakingUnit("large", 2, 780, 765, 40, 0.1, 200, 5000, 20_000, 500))
                .groups()
                .getFirst();
        assertThat(group.brakingUnit()).isEqualTo("large");
        assertThat(group.rejected()).singleElement().satisfies(small -> {
            assertThat(small.broken()).isEqualTo(BrakingLimit.PULSE_ENERGY);
            assertThat(small.value().si()).isBetween(14_400 - 25.4, 14_400.0);
            assertThat(small.limit().si()).isEqualTo(1000);
        });
        assertThat(requireNonNull(group.chosen()).pulseEnergy().si()).isBetween(14_400 - 25.4, 14_400.0);
    }

    /**
     * The shuttle without any stop zone returns 566.86 J each time it slows down (WorstStopTest), the bus keeps at most 25.4 J of
     * it from high line up. It does so once in 1.5 s: each time a pulse of its own.
     */
    @Test
    void aRampOfTheCycleIsAPulse() {
        BrakingAxis shuttle = axis(0, null, unit(1.5, 20, 1e-3, 820), shuttle(0.02, 250, 0.2, 0.5, 0.6));
        GroupBraking group = study(
                        List.of(shuttle),
                        brakingUnit("small", 1, 780, 765, 40, 0.1, 200, 5000, 500, 500),
                        brakingUnit("large", 2, 780, 765, 40, 0.1, 200, 5000, 600, 500))
                .groups()
                .getFirst();
        assertThat(group.rejected()).singleElement().satisfies(small -> {
            assertThat(small.broken()).isEqualTo(BrakingLimit.PULSE_ENERGY);
            assertThat(small.value().si()).isBetween(566.8 - 25.4, 566.9);
        });
        assertThat(group.brakingUnit()).isEqualTo("large");
    }

    /** Two runs of 400 J, 5 W of standby between them: what the resistor takes in one go is told by the pauses. */
    @Test
    void runsOfReturnThatFollowCloseAreOnePulse() {
        Bus bus = Bus.of(1e-3, 700, 820);
        var chopper = new Chopper(bus.energy(780), bus.energy(765), 2 / (40 * 1e-3), 400, 100);
        // 2000 W for 0.2 s twice, 0.1 s and 2 s apart: the resistor gets 800 J a cycle less 5 W in the pauses, give or
        // take one
        // switching of ½·1 mF·(780² − 765²) = 11.6 J; as one pulse
        assertThat(pulse(bus, chopper, 0.1, 2)).isCloseTo(800 - 5 * 2.1, within(11.6));
        // a pause longer than the run parts them
        assertThat(pulse(bus, chopper, 0.25, 2)).isBetween(400 - 5 * 2 - 11.6, 400 + 11.6);
        // the first run of the next cycle follows close on the last of this one
        assertThat(pulse(bus, chopper, 2, 0.1)).isCloseTo(800 - 5 * 2.1, within(11.6));
    }

    private static double pulse(Bus bus, Chopper chopper, double between, double after) {
        PowerCourse course = BrakingFixtures.powers(
                new double[] {0.2, between, 0.2, after},
                new double[] {2000},
                new double[] {-5},
                new double[] {2000},
                new double[] {-5});
        return CommonPeriod.load(List.of(course)).on(bus, chopper).outcome().pulse();
    }

    /**
     * Unrelated periods: 400 J of one axis in its longest run of 0.4 s and, of another that comes round every 0.3·√2 s, at most
     * one run of 50 J in that time: no more than 400 + 50 J make one pulse.
     */
    @Test
    void pulsesOfUnrelatedCyclesAddUp() {
        PowerCourse slow = BrakingFixtures.powers(new double[] {0.4, 2}, new double[] {1000}, new double[] {-300});
        PowerCourse quick =
                BrakingFixtures.powers(new double[] {0.1, 0.3 * Math.sqrt(2)}, new double[] {500}, new double[] {-300});
        Bus bus = Bus.of(1e-3, 740, 820);
        var chopper = new Chopper(bus.energy(780), bus.energy(765), 2 / (40 * 1e-3), 400, 100);
        CaseOutcome outcome =
                CommonPeriod.load(List.of(slow, quick)).on(bus, chopper).outcome();
        assertThat(outcome.pulse()).isCloseTo(450, within(1e-9));
    }

    /** Stops an hour from a loss budget, the same formula as starts an hour: see CHECKS. */
    @Test
    void stopsFromALossBudget() {
        double speed = 2 * Math.PI * 1000 / 60;
        double perHour = ResistorHeat.tolerated(0.5 * speed * speed, 2193.64, 1e-9, 1);
        // printed 24 per minute
        assertThat(perHour / 60).isCloseTo(24.004, within(0.01));
        double fast = 2 * Math.PI * 1500 / 60;
        assertThat(ResistorHeat.tolerated(0.5 * fast * fast, 2193.64, 1e-9, 1) / 60)
                .isCloseTo(10.669, within(0.01));
    }

    @Test
    void highLineDecidesAndTheHighestLineIsTheLimit() {
        BrakingAxis light =
                axis(0, null, ZONE.id(), unit(1.5, 20, 1e-3, 820), shuttle(0.001, 150, 0.1, 0.3, 0.5), 0.001, 0.1);
        GroupBraking group = study(List.of(light)).groups().getFirst();
        assertThat(group.lines())
                .extracting(LineOutcome::line)
                .containsExactly(SupplyLine.HIGH, SupplyLine.NOMINAL, SupplyLine.LOW);
        for (int k = 1; k < 3; k++) {
            assertThat(group.lines().get(k).cyclePeakVoltage().si())
                    .isLessThan(group.lines().get(k - 1).cyclePeakVoltage().si());
        }
        // the energy on top of the rectifier's is the same at every line: ½C(V_peak² − V_floor²)
        double top = energy(group.lines().get(0));
        assertThat(energy(group.lines().get(1))).isCloseTo(top, withPercentage(1e-6));
        double limit = Math.sqrt(820 * 820 - 2 * Math.max(top, stopEnergy(group)) / 1e-3) / Math.sqrt(2);
        assertThat(group.highestBusLineVoltage().si()).isCloseTo(limit, withPercentage(1e-4));
        // the bus would stand more than the drive unit, rated 480 V, does
        assertThat(limit).isGreaterThan(528);
        assertThat(group.highestLineVoltage().si()).isCloseTo(528, within(1e-9));
        assertThat(group.settlingCycles()).isEqualTo(1);
        assertThat(requireNonNull(group.settlingResidual()).si()).isLessThan(1e-9);
    }

    private static double energy(LineOutcome line) {
        return 0.5e-3
                * (Math.pow(line.cyclePeakVoltage().si(), 2)
                        - Math.pow(line.floorVoltage().si(), 2));
    }

    private static double stopEnergy(GroupBraking group) {
        LineOutcome high = group.lines().getFirst();
        double stop = requireNonNull(high.stopPeakVoltage()).si();
        return 0.5e-3 * (stop * stop - Math.pow(high.floorVoltage().si(), 2));
    }

    /** ½·0.01·150² = 112.5 J of a cycle absorbed by motoring axes, but a stop of 0.1 s is too much; a slower one is not. */
    @Test
    void aLongerDecelerationMayNeedNoUnit() {
        BrakingAxis axis =
                axis(0, null, ZONE.id(), unit(1.5, 60, 1e-3, 820), course(stretch(2, 120, 0, 0.3)), 0.012, 0.1);
        GroupBraking group =
                study(List.of(axis), brakingUnit("b", 1, 40)).groups().getFirst();
        assertThat(group.verdict()).isEqualTo(BrakingVerdict.NEEDS_BRAKING_UNIT);
        assertThat(group.reliefs()).hasSize(1);
        double time =
                requireNonNull(group.reliefs().getFirst().decelerationTime()).si();
        assertThat(time).isGreaterThan(0.1);
        BrakingAxis slower = axis(
                0, null, ZONE.id(), unit(1.5, 60, 1e-3, 820), course(stretch(2, 120, 0, 0.3)), 0.012, time * 1.001);
        assertThat(study(List.of(slower)).groups().getFirst().verdict()).isNotEqualTo(BrakingVerdict.NONE_FITS);
        BrakingAxis faster =
                axis(0, null, ZONE.id(), unit(1.5, 60, 1e-3, 820), course(stretch(2, 120, 0, 0.3)), 0.012, time * 0.99);
        assertThat(study(List.of(faster)).groups().getFirst().verdict()).isEqualTo(BrakingVerdict.NONE_FITS);
    }

    /**
     * A level axis at 250 rad/s with 0.008 kg·m², K_m = 1.5, 200 W standing by, that stops from full speed: by the closed form
     * (T·w − (T/K_m)² − P)²·t/(2·T·w), T = J·w/t, it returns less than the ½·C·(820² − 746.7²) V² = 57.4 J of 1 mF in stops of
     * less than some time, and of more than another. Both by bisection of that form.
     */
    @Test
    void aHardAndALongStopNeedNoUnit() {
        double room = 0.5e-3 * (820 * 820 - 2 * 528 * 528);
        double hardest = where(room, 0.004, 0.02);
        double longest = where(room, 1.9, 0.4);
        BrakingAxis axis =
                axis(0, null, ZONE.id(), unit(1.5, 200, 1e-3, 820), course(stretch(2, 250, 0, 0.3)), 0.008, 0.1);
        BrakingRequest request = BrakingFixtures.request(List.of(axis)).withUnaidedStops();
        GroupBraking group = new BrakingStudy().study(request).groups().getFirst();
        List<UnaidedStop> stops = requireNonNull(group.unaidedStops());
        assertThat(stops).hasSize(1);
        List<UnaidedStop.Range> ranges = stops.getFirst().ranges();
        assertThat(ranges).hasSize(2);
        assertThat(ranges.get(0).shortest()).isNull();
        assertThat(requireNonNull(ranges.get(0).longest()).si()).isCloseTo(hardest, withPercentage(0.2));
        assertThat(requireNonNull(ranges.get(1).shortest()).si()).isCloseTo(longest, withPercentage(0.2));
        assertThat(ranges.get(1).longest()).isNull();
        assertThat(study(List.of(axis)).groups().getFirst().unaidedStops()).isNull();
    }

    /** Between a time at which less comes back than the room and one at which more does. */
    private static double where(double room, double less, double more) {
        double below = less;
        double above = more;
        for (int step = 0; step < 60; step++) {
            double time = (below + above) / 2;
            double torque = 0.008 * 250 / time;
            double first = torque * 250 - torque * torque / 2.25 - 200;
            double returned = first <= 0 ? 0 : first * first * time / (2 * torque * 250);
            if (returned < room) {
                below = time;
            } else {
                above = time;
            }
        }
        return below;
    }

    /** A stop that the bus absorbs as asked may be shorter still: no shortest within what is tried, or one that is told. */
    @Test
    void anAbsorbedStopIsToldHowMuchShorterItMayBe() {
        // 0.004 kg·m² at 250 rad/s: 125 J; ½·2 mF·(820² − 746.7²) V² = 114.8 J. Copper and standby keep 0.06 s under
        // that
        BrakingAxis axis =
                axis(0, null, ZONE.id(), unit(1.5, 20, 2e-3, 820), course(stretch(2, 250, 0, 0.3)), 0.004, 3);
        GroupBraking group = new BrakingStudy()
                .study(BrakingFixtures.request(List.of(axis)).withUnaidedStops())
                .groups()
                .getFirst();
        assertThat(group.verdict()).isNotEqualTo(BrakingVerdict.NONE_FITS);
        List<UnaidedStop.Range> ranges =
                requireNonNull(group.unaidedStops()).getFirst().ranges();
        UnaidedStop.Range asked = ranges.getLast();
        assertThat(asked.longest()).isNull();
        double shortest = requireNonNull(asked.shortest()).si();
        double torque = 0.004 * 250 / shortest;
        double first = torque * 250 - torque * torque / 2.25 - 20;
        assertThat(first * first * shortest / (2 * torque * 250))
                .isCloseTo(0.5 * 2e-3 * (820 * 820 - 2 * 528 * 528), withPercentage(0.2));
    }

    /** A unit fed from a DC bus says nothing about the line; then the bus alone decides. */
    @Test
    void unitsOnADcBusDoNotLimitTheLine() {
        DriveUnit fed = unit(Feed.DC_BUS, 650, 1.5, 20, 1e-3, 820);
        GroupBraking group = study(List.of(axis(0, null, fed, shuttle(0.001, 150, 0.1, 0.3, 0.5))))
                .groups()
                .getFirst();
        assertThat(group.highestLineVoltage()).isEqualTo(group.highestBusLineVoltage());
    }

    /** Nobody lowered the resistor's data for thin air; at 1000 m nobody needs to. */
    @Test
    void aResistorHighUpIsACaution() {
        List<BrakingAxis> axes = List.of(axis(0, null, unit(1.5, 20, 1e-3, 820), shuttle(0.01, 150, 0.1, 0.3, 0.5)));
        BrakingRequest request = request(axes, brakingUnit("b", 1, 40));
        for (double metres : new double[] {1000, 1001}) {
            List<Finding> findings = new BrakingStudy()
                    .study(Copies.with(request, "altitude", new Length(metres)))
                    .findings();
            assertThat(findings)
                    .filteredOn(finding -> finding.code() == FindingCode.BRAKING_RESISTOR_ALTITUDE)
                    .hasSize(metres > 1000 ? 1 : 0)
                    .allSatisfy(finding -> assertThat(finding.limit()).isEqualTo(new Length(1000)));
            assertThat(findings).extracting(Finding::code).contains(FindingCode.BRAKING_RESISTOR_HOT);
        }
    }

    /** The course drawn of an alignment is that of its peak. */
    @Test
    void theWorstAlignmentIsDrawn() {
        var unit = unit(1.5, 20, 5e-3, 900);
        List<BrakingAxis> axes = List.of(
                axis(0, "bus", unit, shuttle(0.01, 150, 0.2, 0.5, 1.1)),
                axis(1, "bus", unit, shuttle(0.01, 150, 0.15, 0.5, 0.7 * Math.sqrt(2))));
        assertThat(requireNonNull(study(axes).groups().getFirst().alignment()).course())
                .isNull();
        Alignment alignment = requireNonNull(new BrakingStudy()
                .study(Copies.with(request(axes), "timeCourses", new TimeCourses(null)))
                .groups()
                .getFirst()
                .alignment());
        List<BusCourse.Point> points = requireNonNull(alignment.course()).points();
        assertThat(points.getFirst().voltage().si()).isCloseTo(528 * Math.sqrt(2), within(1e-9));
        assertThat(points.stream()
                        .mapToDouble(point -> point.voltage().si())
                        .max()
                        .orElseThrow())
                .isCloseTo(alignment.peakVoltage().si(), within(1e-6));
        // one turn of the longer cycle before the phases stated, one after: 2·(0.2 + 0.5 + 0.2 + 1.1) s
        assertThat(points.getLast().instant().si()).isCloseTo(4, within(1e-9));
    }

    /** Unrelated periods: what the search finds, an exact simulation, lies under the bound and near it. */
    @Test
    void theWorstAlignmentFoundLiesUnderTheBound() {
        var unit = unit(1.5, 20, 5e-3, 900);
        BrakingResult result = study(List.of(
                axis(0, "bus", ZONE.id(), unit, shuttle(0.01, 150, 0.2, 0.5, 1.1), 0.01, 0.2),
                axis(1, "bus", unit, shuttle(0.01, 150, 0.15, 0.5, 0.7 * Math.sqrt(2)))));
        GroupBraking group = result.groups().getFirst();
        assertThat(group.cycleBasis()).isEqualTo(CycleBasis.BOUND);
        Alignment alignment = requireNonNull(group.alignment());
        assertThat(alignment.phases()).hasSize(2);
        assertThat(alignment.gap().si()).isBetween(0.0, 0.5);
        BrakingCase stop = group.cases().get(1);
        assertThat(stop.criterion()).isNull();
        StopAlignment stopping = requireNonNull(stop.alignment());
        assertThat(stopping.phases()).extracting(StopAlignment.AxisPhase::axis).containsExactly("axis0", "axis1");
        assertThat(stopping.gap().si()).isBetween(0.0, 0.5);
        assertThat(stopping.peakVoltage().si() + stopping.gap().si())
                .isCloseTo(stop.peakVoltage().si(), within(1e-9));
        assertThat(group.cases().getFirst().alignment()).isNull();
    }
}
