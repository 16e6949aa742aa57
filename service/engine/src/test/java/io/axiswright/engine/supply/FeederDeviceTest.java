package io.axiswright.engine.supply;

import static io.axiswright.engine.supply.Plant.breakers;
import static io.axiswright.engine.supply.Plant.load;
import static io.axiswright.engine.supply.Plant.mains;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Voltage;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The feeder's device beside those of the branches; the supply disconnecting device; residual-current protection. */
class FeederDeviceTest {

    private static final CodeBasis IEC = CodeBasis.IEC_60204_1;

    private static SupplyLoad drive(String zone, Feed feed, double volts, double leakage) {
        return load("d" + zone, LoadUse.DRIVE, feed, volts, 14, 5, 16, 1, 1e4, leakage, zone);
    }

    private static SupplyResult fuses(double... ratings) {
        var stock = breakers(IEC, ratings).stream().map(FeederDeviceTest::fuse).toList();
        var installation = Plant.INSTALLATION;
        return new SupplySizing()
                .size(new SupplyRequest(
                        IEC,
                        mains(SupplySystem.THREE_PHASE_THREE_WIRE, 400),
                        new Installation(
                                installation.mainsPanel(),
                                installation.feederLength(),
                                installation.method(),
                                installation.insulation(),
                                installation.material(),
                                installation.ambient(),
                                installation.groupedCircuits(),
                                installation.terminationRating(),
                                installation.voltageDropLimit(),
                                DeviceKind.FUSE),
                        List.of(drive("A", Feed.THREE_PHASE, 400, 0), drive("B", Feed.THREE_PHASE, 400, 0)),
                        stock));
    }

    private static ProtectiveDevice fuse(ProtectiveDevice d) {
        return new ProtectiveDevice(
                d.id(),
                d.description(),
                d.price(),
                d.needs(),
                DeviceKind.FUSE,
                d.codeBasis(),
                d.poles(),
                d.rating(),
                d.interruptingRating(),
                d.ratedVoltage());
    }

    private static double feederRating(SupplyResult result) {
        return Objects.requireNonNull(result.feeder().deviceRating()).si();
    }

    /**
     * Two circuits of 16 A that heat like 5 A each: 14 A would do for the feeder. Fuses gG discriminate at 1.6 to 1 (read at
     * https://lawsonfuses.com/knowledge-centre/application-guidance-lawson-fuses): 25.6 A, so 32 A where 25 A is stocked too.
     */
    @Test
    void aFeederFuseLeavesTheBranchFuseTheFault() {
        var result = fuses(16, 20, 25, 32, 40);

        assertThat(feederRating(result)).isEqualTo(32);
        assertThat(result.findings()).extracting(Finding::code).doesNotContain(FindingCode.SUPPLY_FEEDER_SELECTIVITY);
        assertThat(result.derivations())
                .filteredOn(d -> d.symbol().equals("I_n,min"))
                .singleElement()
                .satisfies(d -> assertThat(d.result().si()).isCloseTo(25.6, within(1e-9)));
    }

    /** Without such a fuse the feeder gets what there is, and is told. */
    @Test
    void aFeederFuseThatIsTooSmallForThatIsNamed() {
        var result = fuses(16, 20);

        assertThat(feederRating(result)).isEqualTo(16);
        assertThat(result.findings()).extracting(Finding::code).contains(FindingCode.SUPPLY_FEEDER_SELECTIVITY);
    }

    /** Of breakers the ratings do not tell; the feeder's is no smaller than any branch's. */
    @Test
    void feederBreakersAreNeverSmallerThanBranchBreakers() {
        var result = new SupplySizing()
                .size(Plant.request(
                        IEC,
                        mains(SupplySystem.THREE_PHASE_THREE_WIRE, 400),
                        List.of(drive("A", Feed.THREE_PHASE, 400, 0), drive("B", Feed.THREE_PHASE, 400, 0)),
                        breakers(IEC, 10, 16, 20)));

        assertThat(feederRating(result)).isEqualTo(16);
        assertThat(result.findings())
                .filteredOn(f -> f.code() == FindingCode.SUPPLY_FEEDER_SELECTIVITY)
                .extracting(Finding::text)
                .allMatch(text -> text.contains("16 A"))
                .hasSize(1);
    }

    /**
     * By hand, drives of 14 A: NFPA 79 5.3.3 asks for 1.15 (14 + 14) = 32.2 A; under IEC the sum, 28 A. Neither may stay below the
     * feeder's device: 35 A (above 1.25 14 + 14 = 31.5 A) and 16 A; with one of them on each line 20 A (1.25 14 = 17.5 A) and 16 A.
     */
    @ParameterizedTest
    @CsvSource({
        "NFPA_79,     THREE_PHASE_THREE_WIRE, THREE_PHASE, 400, 3, 35,   28",
        "IEC_60204_1, THREE_PHASE_THREE_WIRE, THREE_PHASE, 400, 3, 28,   28",
        "NFPA_79,     THREE_PHASE_FOUR_WIRE,  ONE_PHASE,   230, 3, 20,   14",
        "IEC_60204_1, THREE_PHASE_FOUR_WIRE,  ONE_PHASE,   230, 4, 16,   14"
    })
    void disconnectingDevice(
            CodeBasis basis, SupplySystem system, Feed feed, double volts, int poles, double rated, double breaks) {
        var wide = Arrays.asList(wide(drive("A", feed, volts, 0)), wide(drive("B", feed, volts, 0)));
        var disconnect = new SupplySizing()
                .size(Plant.request(basis, mains(system, 400), wide, breakers(basis, 16, 20, 25, 35)))
                .disconnect();

        assertThat(disconnect.poles()).isEqualTo(poles);
        assertThat(disconnect.ratedCurrent().si()).isCloseTo(rated, within(1e-9));
        assertThat(disconnect.breakingCurrent().si()).isCloseTo(breaks, within(1e-9));
    }

    private static SupplyLoad wide(SupplyLoad l) {
        return load(l.id(), l.use(), l.feed(), l.ratedVoltage().si(), 14, 5, 40, 1, 1e4, 0, l.zone());
    }

    /**
     * Diversity by hand: two drives draw 10 A for half of each second, 7.0711 A rms. In step they heat like 20 A for half the time,
     * 14.142 A, the sum of both; in turn like 10 A all the time. The first is what the feeder must bear, as nobody keeps them in turn.
     */
    @Test
    void diversityHoldsHoweverTheCyclesLie() {
        double rms = Math.sqrt(10 * 10 * 0.5);
        double inStep = Math.sqrt(20 * 20 * 0.5);
        var loads = List.of(
                load("a", LoadUse.DRIVE, Feed.THREE_PHASE, 400, 10, rms, 16, 1, 1e4, 0, null),
                load("b", LoadUse.DRIVE, Feed.THREE_PHASE, 400, 10, rms, 16, 1, 1e4, 0, null));
        var result = new SupplySizing()
                .size(Plant.request(
                        IEC, mains(SupplySystem.THREE_PHASE_THREE_WIRE, 400), loads, breakers(IEC, 10, 16, 20)));

        assertThat(result.feeder().designCurrent().si())
                .isCloseTo(inStep, within(1e-9))
                .isLessThan(20);
    }

    /**
     * By hand at 30 % of the rating: 9 mA leave 30 mA, 9.1 mA ask for 100 mA, 31 mA for 200 mA, 100 mA for 500 mA. A rectifier
     * between lines can pass smooth direct current: type B; a converter between line and neutral: F.
     */
    @ParameterizedTest
    @CsvSource({
        "ONE_PHASE,   230, 0.009,  F, 0.03, true,  true",
        "ONE_PHASE,   230, 0.0091, F, 0.1,  false, true",
        "ONE_PHASE,   400, 0.031,  B, 0.2,  false, true",
        "THREE_PHASE, 400, 0.09,   B, 0.3,  false, true",
        "THREE_PHASE, 400, 0.1,    B, 0.5,  false, false"
    })
    void residualCurrentDevice(
            Feed feed,
            double volts,
            double leakage,
            ResidualDeviceType type,
            double rating,
            boolean people,
            boolean fire) {
        var result = new SupplySizing()
                .size(Plant.request(
                        IEC,
                        mains(SupplySystem.THREE_PHASE_FOUR_WIRE, 400),
                        List.of(drive("A", feed, volts, leakage)),
                        breakers(IEC, 16)));

        var device = result.residualProtection();
        assertThat(device.type()).isEqualTo(type);
        assertThat(Objects.requireNonNull(device.rating()).si()).isEqualTo(rating);
        assertThat(device.protectsPeople()).isEqualTo(people);
        assertThat(device.protectsAgainstFire()).isEqualTo(fire);
        assertThat(result.findings())
                .filteredOn(f -> f.code() == FindingCode.SUPPLY_RESIDUAL_DEVICE_TYPE)
                .extracting(Finding::text)
                .allMatch(text -> text.contains("type " + type))
                .hasSize(1);
    }

    private static SupplyResult leaking(double leakage, @Nullable SystemEarthing earthing, @Nullable Double loop) {
        var mains = new Mains(
                SupplySystem.THREE_PHASE_FOUR_WIRE,
                new Voltage(400),
                0.1,
                0.1,
                new Frequency(50),
                new Current(5000),
                null,
                null,
                earthing,
                loop == null ? null : new Resistance(loop));
        var drive = drive("A", Feed.THREE_PHASE, 400, leakage);
        return new SupplySizing().size(Plant.request(IEC, mains, List.of(drive), breakers(IEC, 16)));
    }

    /** R_A · I_Δn ≤ 50 V (IEC 60364-4-41 411.5.3); printed pairs of azmanual.top/manuals/369627, page 30. */
    @ParameterizedTest
    @CsvSource({"1667, 0.03", "500, 0.1", "167, 0.3", "100, 0.5", "50, 1"})
    void inTtTheEarthElectrodeLimitsTheRating(double electrode, double rating) {
        var device = leaking(0.001, SystemEarthing.TT, electrode).residualProtection();
        assertThat(device.role()).isEqualTo(ResidualDeviceRole.FAULT_PROTECTION);
        assertThat(Objects.requireNonNull(device.highestRating()).si()).isCloseTo(rating, withinPercentage(0.5));
    }

    /** 100 mA of leakage ask for 0.1 / 0.3 = 333 mA, the next rating 500 mA: the frames stay at 50 V behind 100 Ω, not 101 Ω. */
    @Test
    void leakageAndEarthElectrodeMayLeaveNoRating() {
        assertThat(leaking(0.1, SystemEarthing.TT, 100.0).findings())
                .extracting(Finding::code)
                .doesNotContain(FindingCode.SUPPLY_RESIDUAL_RATING_HIGH);
        assertThat(leaking(0.1, SystemEarthing.TT, 101.0).findings())
                .filteredOn(f -> f.code() == FindingCode.SUPPLY_RESIDUAL_RATING_HIGH)
                .singleElement()
                .satisfies(f -> assertThat(f.pointer()).isEqualTo("/design/mains/earthFaultLoopImpedance"));
    }

    @Test
    void otherEarthingSetsNoHighestRating() {
        assertThat(leaking(0.1, null, 101.0).residualProtection().role()).isEqualTo(ResidualDeviceRole.ADDITIONAL);
        assertThat(leaking(0.1, SystemEarthing.TN, 101.0).residualProtection().highestRating())
                .isNull();
        assertThat(leaking(0.1, SystemEarthing.IT, 101.0).residualProtection().role())
                .isEqualTo(ResidualDeviceRole.FIRST_FAULT_UNSEEN);
        assertThat(leaking(0.1, SystemEarthing.TT, null).residualProtection().highestRating())
                .isNull();
    }

    /** A fan between line and neutral passes nothing but alternating current. */
    @Test
    void aLesserTypeDoesWithoutConverters() {
        var fan = load("fan", LoadUse.VENTILATION, Feed.ONE_PHASE, 230, 1, 1, 16, 1, 1e4, 0, null);
        var result = new SupplySizing()
                .size(Plant.request(
                        IEC, mains(SupplySystem.THREE_PHASE_FOUR_WIRE, 400), List.of(fan), breakers(IEC, 6)));

        assertThat(result.residualProtection().type()).isEqualTo(ResidualDeviceType.A);
        assertThat(result.findings()).extracting(Finding::code).doesNotContain(FindingCode.SUPPLY_RESIDUAL_DEVICE_TYPE);
    }
}
