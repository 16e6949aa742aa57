package io.axiswright.engine.supply;

import static io.axiswright.engine.supply.Plant.breaker;
import static io.axiswright.engine.supply.Plant.breakers;
import static io.axiswright.engine.supply.Plant.drive;
import static io.axiswright.engine.supply.Plant.load;
import static io.axiswright.engine.supply.Plant.mains;
import static io.axiswright.engine.supply.Plant.request;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.finding.Severity;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The AC supply against published worked examples and by hand. */
class SupplySizingTest {

    private static final CodeBasis NA = CodeBasis.NFPA_79;
    private static final CodeBasis IEC = CodeBasis.IEC_60204_1;
    private static final double EXACT = 1e-9;

    private static SupplyResult size(SupplyRequest request) {
        return new SupplySizing().size(request);
    }

    private static List<FindingCode> codes(SupplyResult result) {
        return result.findings().stream().map(Finding::code).toList();
    }

    private static Finding finding(SupplyResult result, FindingCode code) {
        return result.findings().stream()
                .filter(f -> f.code() == code)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Feeder of 20 hp and 10 hp at 460 V: 27 x 1.25 + 14 = 47.75 A (printed 48); largest branch device 70 A, feeder device
     * 70 + 14 = 84, next size down 80 A. Trade journal, code question, read at
     * https://ecmweb.com/national-electrical-code/qa/article/20901222/stumped-by-the-code-code-rule-for-sizing-short-circuit-and-ground-fault-protection-for-a-motor-feeder
     */
    @Test
    void feederOfTwoMotorLoads() {
        var result = size(request(
                NA,
                mains(SupplySystem.THREE_PHASE_THREE_WIRE, 480),
                List.of(drive("20hp", Feed.THREE_PHASE, 460, 27, 70), drive("10hp", Feed.THREE_PHASE, 460, 14, 35)),
                breakers(NA, 35, 70, 80, 90)));

        assertThat(result.circuits())
                .extracting(BranchCircuit::id)
                .containsExactly("C1", "C2"); // 47.75 A > 35 A: apart
        assertThat(result.feeder().designCurrent().si()).isCloseTo(47.75, within(EXACT));
        assertThat(Objects.requireNonNull(result.feeder().deviceCeiling()).si()).isEqualTo(80);
        assertThat(Objects.requireNonNull(result.feeder().deviceRating()).si())
                .isEqualTo(70); // the smallest stocked above
        assertThat(result.feeder().conductors()).isEqualTo(4);
    }

    /**
     * The same feeder of drives whose instructions allow 200 A: 430.62(A) counts what 430.52 permits, so the ceiling stays 80 A.
     */
    @Test
    void feederCeilingDoesNotGrowWithTheDrivesInstructions() {
        var result = size(request(
                NA,
                mains(SupplySystem.THREE_PHASE_THREE_WIRE, 480),
                List.of(
                        load("20hp", LoadUse.DRIVE, Feed.THREE_PHASE, 460, 27, 27, 200, 1, 1e5, 0, null),
                        load("10hp", LoadUse.DRIVE, Feed.THREE_PHASE, 460, 14, 14, 200, 1, 1e5, 0, null)),
                breakers(NA, 35, 70, 80, 90)));

        assertThat(Objects.requireNonNull(result.feeder().deviceCeiling()).si()).isEqualTo(80);
    }

    /**
     * 430.24 item 4 (up.codes/s/several-motors-or-a-motor-s-and-other-load-s): what runs without pause counts 125 % beside the
     * largest motor: 1.25 x 27 + 1.25 x 10 = 46.25 A; 430.63: 70 + 12.5 = 82.5, down to 80 A.
     */
    @Test
    void feederOfADriveAndALoadWithoutPause() {
        var result = size(request(
                NA,
                mains(SupplySystem.THREE_PHASE_THREE_WIRE, 480),
                List.of(
                        drive("20hp", Feed.THREE_PHASE, 460, 27, 70),
                        load("s", LoadUse.CONTROL_SUPPLY, Feed.THREE_PHASE, 480, 10, 10, 15, 1, 1e5, 0, null)),
                breakers(NA, 15, 35, 70, 80, 90)));

        assertThat(result.feeder().designCurrent().si()).isCloseTo(46.25, within(EXACT));
        assertThat(Objects.requireNonNull(result.feeder().deviceCeiling()).si()).isEqualTo(80);
    }

    /**
     * Branch-circuit design currents, 125 % of a motor or drive (430.22, 430.122(A)): 22 -> 27.5, read at
     * https://forums.mikeholt.com/threads/motor-branch-circuit.15136; 16.7 -> 20.875 at
     * https://forums.mikeholt.com/threads/breaker-and-wire-sizes.7308; 16 -> 20 at
     * https://forums.mikeholt.com/threads/motor-branch-circuit-minimum-ampacity.95099/
     */
    @ParameterizedTest
    @CsvSource({"230,22,60,27.5", "208,16.7,45,20.875", "460,16,40,20"})
    void branchCircuitOfOneMotorLoad(double volts, double amperes, double deviceLimit, double design) {
        var result = size(request(
                NA,
                mains(SupplySystem.THREE_PHASE_THREE_WIRE, volts),
                List.of(drive("m", Feed.THREE_PHASE, volts, amperes, deviceLimit)),
                breakers(NA, deviceLimit)));

        assertThat(result.circuits().getFirst().designCurrent().si()).isCloseTo(design, within(EXACT));
        assertThat(Objects.requireNonNull(result.circuits().getFirst().deviceRating())
                        .si())
                .isEqualTo(deviceLimit);
    }

    /**
     * Loads without pause (210.20(A)): 40 A -> 50 A, device 50 A, read at
     * https://sparkytoolbox.net/blog/how-to-determine-wire-size-breaker-size-derating.html; 95 A -> 118.75 A (printed 119),
     * device 125 A, at https://academy.jensenhughes.com/jha4/core/crawler_content.php?cid=47&page=43.00
     */
    @ParameterizedTest
    @CsvSource({"40,50,50", "95,118.75,125"})
    void branchCircuitOfALoadWithoutPause(double amperes, double design, double standardRating) {
        var result = size(request(
                NA,
                mains(SupplySystem.ONE_PHASE_TWO_WIRE, 120),
                List.of(load("s", LoadUse.CONTROL_SUPPLY, Feed.ONE_PHASE, 120, amperes, amperes, 200, 1, 1e5, 0, null)),
                List.of()));

        assertThat(result.circuits().getFirst().designCurrent().si()).isCloseTo(design, within(EXACT));
        assertThat(Objects.requireNonNull(result.circuits().getFirst().deviceRating())
                        .si())
                .isEqualTo(standardRating);
        assertThat(codes(result)).contains(FindingCode.SUPPLY_DEVICE_MISSING);
    }

    /**
     * 45 kVA, 480 V to 208 V: 54.13 A primary, 124.91 A secondary (printed 54.1 and 125.00, from a rounded divisor), read at
     * https://www.electrical-contractor.net/forums/ubbthreads.php/posts/201726.html
     */
    @Test
    void transformerForLoadsOfAnotherVoltage() {
        var result = size(request(
                NA,
                mains(SupplySystem.THREE_PHASE_THREE_WIRE, 480),
                List.of(drive("a", Feed.THREE_PHASE, 208, 100, 150), drive("b", Feed.THREE_PHASE, 208, 24.91, 50)),
                breakers(NA, 150)));

        assertThat(result.unfed()).isEmpty();
        assertThat(result.circuits())
                .filteredOn(c -> "T1".equals(c.transformer()))
                .flatExtracting(BranchCircuit::loads)
                .containsExactlyInAnyOrder("a", "b");
        var transformer = result.transformers().getFirst();
        assertThat(transformer.power().si()).isCloseTo(45_000, within(2.0)); // 124.91 is rounded to 0.01 A
        assertThat(transformer.primaryCurrent().si()).isCloseTo(54.13, within(0.005));
        assertThat(finding(result, FindingCode.SUPPLY_VOLTAGE_MISFIT).text()).contains("208 V", "480 V");
    }

    /** One cause, one violation: 37 loads for 230 V, three of them for 240 V, on a supply without neutral. */
    @Test
    void loadsOfOneWrongVoltageAreOneViolation() {
        var loads = IntStream.range(0, 37)
                .mapToObj(k -> drive("d%02d".formatted(k), Feed.ONE_PHASE, k % 15 == 0 ? 240 : 230, 2, 16))
                .toList();
        var result =
                size(request(NA, mains(SupplySystem.THREE_PHASE_THREE_WIRE, 480), loads, breakers(NA, 15, 50, 100)));

        assertThat(result.findings())
                .filteredOn(f -> f.severity() == Severity.VIOLATION)
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.code()).isEqualTo(FindingCode.SUPPLY_VOLTAGE_MISFIT);
                    assertThat(f.text()).contains("230 V", "480 V", "d00", "d36");
                    assertThat(f.remedy()).contains("transformer");
                });
        assertThat(result.unfed()).isEmpty();
        assertThat(result.transformers()).singleElement().satisfies(need -> {
            assertThat(need.loads()).hasSize(37);
            assertThat(need.secondary().si()).isEqualTo(230); // 34 loads against 3
        });
    }

    /** By hand: U, U/2 and U/sqrt(3) of the four systems against the rated voltage, within 10 %. */
    @ParameterizedTest
    @CsvSource({
        "THREE_PHASE_FOUR_WIRE, 400, ONE_PHASE,   230, LINE_TO_NEUTRAL, 230.940",
        "THREE_PHASE_FOUR_WIRE, 400, ONE_PHASE,   400, LINE_TO_LINE,    400",
        "THREE_PHASE_FOUR_WIRE, 208, ONE_PHASE,   230, LINE_TO_LINE,    208",
        "THREE_PHASE_FOUR_WIRE, 208, ONE_PHASE,   120, LINE_TO_NEUTRAL, 120.089",
        "THREE_PHASE_FOUR_WIRE, 480, THREE_PHASE, 460, THREE_PHASE,     480",
        "THREE_PHASE_THREE_WIRE,230, ONE_PHASE,   230, LINE_TO_LINE,    230",
        "ONE_PHASE_THREE_WIRE,  240, ONE_PHASE,   120, LINE_TO_NEUTRAL, 120",
        "ONE_PHASE_THREE_WIRE,  240, ONE_PHASE,   230, LINE_TO_LINE,    240",
        "ONE_PHASE_TWO_WIRE,    230, ONE_PHASE,   230, LINE_TO_NEUTRAL, 230",
        "ONE_PHASE_TWO_WIRE,    253, ONE_PHASE,   230, LINE_TO_NEUTRAL, 253",
        "THREE_PHASE_THREE_WIRE,440, THREE_PHASE, 400, THREE_PHASE,     440"
    })
    void findsTheConnection(
            SupplySystem system, double volts, Feed feed, double rated, Connection connection, double across) {
        var result = size(request(IEC, mains(system, volts), List.of(drive("d", feed, rated, 5, 32)), List.of()));

        assertThat(result.circuits().getFirst().connection()).isEqualTo(connection);
        assertThat(result.circuits().getFirst().voltage().si()).isCloseTo(across, within(5e-4));
        assertThat(result.circuits().getFirst().lines()).hasSize(connection.lines());
    }

    @ParameterizedTest
    @CsvSource({
        "THREE_PHASE_THREE_WIRE, 400, ONE_PHASE,   230, SUPPLY_VOLTAGE_MISFIT",
        "THREE_PHASE_FOUR_WIRE,  480, THREE_PHASE, 400, SUPPLY_VOLTAGE_MISFIT",
        "THREE_PHASE_FOUR_WIRE,  441, THREE_PHASE, 400, SUPPLY_VOLTAGE_MISFIT",
        "ONE_PHASE_TWO_WIRE,     230, THREE_PHASE, 400, SUPPLY_PHASES_MISSING",
        "ONE_PHASE_THREE_WIRE,   240, THREE_PHASE, 230, SUPPLY_PHASES_MISSING",
        "THREE_PHASE_FOUR_WIRE,  400, DC_BUS,      560, SUPPLY_DC_FED_LOAD"
    })
    void saysWhatItCannotFeed(SupplySystem system, double volts, Feed feed, double rated, FindingCode code) {
        var result = size(request(IEC, mains(system, volts), List.of(drive("d", feed, rated, 5, 32)), List.of()));

        // what a transformer could feed has a circuit behind one
        assertThat(result.unfed()).isEqualTo(code == FindingCode.SUPPLY_VOLTAGE_MISFIT ? List.of() : List.of("d"));
        assertThat(finding(result, code).pointer()).isEqualTo("/design/axes/d");
    }

    /** By hand: three 6 A drives of zone A, at most two to a circuit, one of zone B, one without. */
    @Test
    void groupsWithinZonesAndLimits() {
        var result = size(request(
                IEC,
                mains(SupplySystem.THREE_PHASE_FOUR_WIRE, 400),
                List.of(
                        load("a1", LoadUse.DRIVE, Feed.THREE_PHASE, 400, 6, 4, 16, 2, 1e4, 0.002, "A"),
                        load("a2", LoadUse.DRIVE, Feed.THREE_PHASE, 400, 6, 4, 16, 2, 1e4, 0.002, "A"),
                        load("a3", LoadUse.DRIVE, Feed.THREE_PHASE, 400, 6, 4, 16, 2, 1e4, 0.002, "A"),
                        load("b1", LoadUse.DRIVE, Feed.THREE_PHASE, 400, 6, 4, 16, 2, 1e4, 0.002, "B"),
                        load("n1", LoadUse.DRIVE, Feed.THREE_PHASE, 400, 6, 4, 16, 2, 1e4, 0.002, null),
                        load("psu", LoadUse.CONTROL_SUPPLY, Feed.ONE_PHASE, 230, 2, 2, 16, 1, 1e4, 0.001, null)),
                breakers(IEC, 6, 10, 16, 32)));

        assertThat(result.circuits())
                .extracting(BranchCircuit::loads)
                .containsExactly(List.of("a1", "a2"), List.of("a3"), List.of("b1"), List.of("n1"), List.of("psu"));
        var first = result.circuits().getFirst();
        assertThat(first.designCurrent().si()).isEqualTo(12);
        assertThat(first.device()).isEqualTo("breaker-3p-16.0-10000.0");
        assertThat(first.conductors()).isEqualTo(4);
        assertThat(result.circuits().getLast().poles()).isEqualTo(2); // line and neutral under IEC
        assertThat(result.feeder().conductors()).isEqualTo(5); // three lines, neutral, protective conductor
        assertThat(result.feeder().designCurrent().si()).isEqualTo(22); // L1: 5 x 4 A + 2 A of cycle-thermal current
        assertThat(result.feeder().current().si()).isEqualTo(32);
        assertThat(result.feeder().deviceCeiling()).isNull();
        assertThat(result.balance().lines()).extracting(l -> l.current().si()).containsExactly(32.0, 30.0, 30.0);
    }

    @Test
    void feederIsNeverBelowItsLargestLoad() {
        var result = size(request(
                IEC,
                mains(SupplySystem.THREE_PHASE_THREE_WIRE, 400),
                List.of(
                        load("a", LoadUse.DRIVE, Feed.THREE_PHASE, 400, 20, 3, 32, 1, 1e4, 0, null),
                        load("b", LoadUse.DRIVE, Feed.THREE_PHASE, 400, 5, 2, 32, 1, 1e4, 0, null)),
                breakers(IEC, 6, 20, 25)));

        assertThat(result.feeder().designCurrent().si()).isEqualTo(20);
    }

    /** A higher fault current never gives a device of a lower rating, nor one that interrupts less. */
    @Test
    void moreFaultCurrentIsNeverALowerRating() {
        var stock = List.of(
                breaker(IEC, 3, 10, 6000, 5),
                breaker(IEC, 3, 10, 15000, 40),
                breaker(IEC, 3, 13, 10000, 8),
                breaker(IEC, 3, 16, 50000, 90),
                breaker(IEC, 3, 16, 25000, 30));
        double rating = 0;
        double interrupting = 0;
        for (double fault : new double[] {1000, 6000, 6001, 12000, 15001, 25001, 50000}) {
            var result = size(request(
                    IEC,
                    mains(SupplySystem.THREE_PHASE_THREE_WIRE, 400, fault),
                    List.of(load("d", LoadUse.DRIVE, Feed.THREE_PHASE, 400, 7, 7, 16, 1, 1e5, 0, null)),
                    stock));
            String id = result.circuits().getFirst().device();
            var device =
                    stock.stream().filter(d -> d.id().equals(id)).findFirst().orElseThrow();
            assertThat(device.rating().si()).as("%s A", fault).isGreaterThanOrEqualTo(rating);
            assertThat(device.interruptingRating().si())
                    .as("%s A", fault)
                    .isGreaterThanOrEqualTo(Math.max(fault, interrupting));
            rating = device.rating().si();
            interrupting = device.interruptingRating().si();
        }
        assertThat(rating).isEqualTo(16);
    }

    @Test
    void takesTheCheapestOfTheNextRating() {
        var dear = breaker(IEC, 3, 10, 15000, 40);
        var cheap = breaker(IEC, 3, 10, 10000, 30);
        var result = size(request(
                IEC,
                mains(SupplySystem.THREE_PHASE_THREE_WIRE, 400),
                List.of(drive("d", Feed.THREE_PHASE, 400, 7, 16)),
                List.of(breaker(IEC, 3, 16, 10000, 5), dear, cheap, breaker(IEC, 3, 6, 10000, 5))));

        assertThat(result.circuits().getFirst().device()).isEqualTo(cheap.id());
    }

    @Test
    void saysWhenDevicesDoNotBearTheFaultCurrent() {
        var result = size(request(
                IEC,
                mains(SupplySystem.THREE_PHASE_THREE_WIRE, 400, 25_000),
                List.of(drive("d", Feed.THREE_PHASE, 400, 7, 16)),
                breakers(IEC, 10)));

        assertThat(result.findings())
                .filteredOn(f -> f.code() == FindingCode.SUPPLY_FAULT_RATING_LOW)
                .extracting(Finding::pointer)
                .containsExactly("/design/axes/d", "/design/mains");
        assertThat(result.circuits().getFirst().device()).isNull();
        assertThat(Objects.requireNonNull(result.circuits().getFirst().deviceRating())
                        .si())
                .isEqualTo(10);
    }

    @Test
    void saysWhenNoRatingIsBothLargeAndSmallEnough() {
        var result = size(request(
                NA,
                mains(SupplySystem.THREE_PHASE_THREE_WIRE, 480),
                List.of(drive("d", Feed.THREE_PHASE, 480, 13, 15)), // 16.25 A behind 15 A at most
                breakers(NA, 15, 20)));

        var finding = finding(result, FindingCode.SUPPLY_DEVICE_WINDOW_EMPTY);
        assertThat(finding.text()).contains("circuit C1", "16.25 A", "15 A");
        assertThat(result.circuits().getFirst().deviceRating()).isNull();
    }

    @Test
    void saysWhatTheCatalogueLacks() {
        var result = size(request(
                IEC,
                mains(SupplySystem.THREE_PHASE_FOUR_WIRE, 400),
                List.of(drive("d", Feed.ONE_PHASE, 230, 7, 16)),
                List.of(breaker(NA, 2, 10, 10000, 1), breaker(IEC, 1, 10, 10000, 1))));

        var finding = finding(result, FindingCode.SUPPLY_DEVICE_MISSING);
        assertThat(finding.text()).contains("2-pole circuit-breaker for 231 V for circuit C1", "8 A", "16 A");
        assertThat(Objects.requireNonNull(result.circuits().getFirst().deviceRating())
                        .si())
                .isEqualTo(8);
    }

    /** 10 mA in the protective conductor: IEC 60204-1 8.2.6 (from memory); 30 % of 30 mA: IEC 60364-5-53 (from memory). */
    @ParameterizedTest
    @CsvSource({
        "4,0.0022,false,false",
        "4,0.0024,false,true",
        "4,0.003,true,true",
        "5,0.002,false,true",
        "3,0.003,false,false"
    })
    void leakageSumsUp(int drives, double each, boolean high, boolean trips) {
        var loads = IntStream.range(0, drives)
                .mapToObj(k -> load("d" + k, LoadUse.DRIVE, Feed.THREE_PHASE, 400, 2, 1, 16, 4, 1e4, each, null))
                .toList();
        var result = size(request(IEC, mains(SupplySystem.THREE_PHASE_THREE_WIRE, 400), loads, breakers(IEC, 10)));

        assertThat(result.feeder().leakageCurrent().si()).isCloseTo(drives * each, within(EXACT));
        assertThat(codes(result).contains(FindingCode.SUPPLY_LEAKAGE_HIGH)).isEqualTo(high);
        assertThat(codes(result).contains(FindingCode.SUPPLY_RESIDUAL_DEVICE_TRIPS))
                .isEqualTo(trips);
    }

    @Test
    void alwaysWarnsOfTheMains() {
        var result = size(request(
                IEC,
                mains(SupplySystem.THREE_PHASE_THREE_WIRE, 400),
                List.of(drive("d", Feed.THREE_PHASE, 400, 7, 16)),
                breakers(IEC, 10)));

        assertThat(codes(result))
                .containsExactlyInAnyOrder(
                        FindingCode.SUPPLY_MAINS_DANGER,
                        FindingCode.SUPPLY_DISCONNECT_NEEDED,
                        FindingCode.SUPPLY_RESIDUAL_DEVICE_TYPE);
        assertThat(finding(result, FindingCode.SUPPLY_MAINS_DANGER).remedy())
                .contains("qualified person", "local code");
        assertThat(finding(result, FindingCode.SUPPLY_MAINS_DANGER).text()).contains("400 V", "50 V");
        assertThat(result.derivations()).extracting(d -> d.subject()).startsWith("C1", "feeder");
    }

    @Test
    void reportsAllFaultsAtOnce() {
        assertThatThrownBy(() -> size(request(
                        IEC,
                        mains(SupplySystem.THREE_PHASE_THREE_WIRE, 400),
                        List.of(
                                drive("d", Feed.THREE_PHASE, 400, 7, 16),
                                drive("d", Feed.THREE_PHASE, 400, 0, 16),
                                drive("e", Feed.THREE_PHASE, 0, 1, 16)),
                        List.of())))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        invalid -> assertThat(invalid.faults())
                                .extracting(Fault::code)
                                .containsExactly(
                                        FaultCode.DUPLICATE_ID, FaultCode.OUT_OF_RANGE, FaultCode.OUT_OF_RANGE));
    }
}
