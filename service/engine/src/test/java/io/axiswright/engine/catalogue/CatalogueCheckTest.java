package io.axiswright.engine.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.Copies;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Capacitance;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.HeatCapacity;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.MotorConstant;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.TemperatureRise;
import io.axiswright.engine.quantity.ThermalResistance;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.quantity.Voltage;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class CatalogueCheckTest {

    @Test
    void findsNothingInAConsistentCatalogue() {
        assertThat(faults(item("a", need("b"), need("c")), item("b", need("c")), item("c")))
                .isEmpty();
    }

    @Test
    void findsIdsUsedTwiceAcrossKinds() {
        var parts = List.of(part("same", 0.01, 0.02));
        var catalogue = catalogue("EUR", List.of(), List.of(), parts, List.of(item("other"), item("same")));

        assertThat(at(CatalogueCheck.faults(catalogue, "/catalogue")))
                .containsExactly(Map.entry("/catalogue/accessories/1/id", FaultCode.DUPLICATE_ID));
    }

    @Test
    void findsTheWidthOfAKeyOnWhatIsNone() {
        FasteningPart key = part("key", 0.01, 0.02);
        FasteningPart wide = Copies.with(key, "keyWidth", new Length(0.005));
        FasteningPart clamp = Copies.with(Copies.with(wide, "kind", FasteningKind.CLAMP), "id", "clamp");
        var catalogue = catalogue("EUR", List.of(), List.of(), List.of(wide, clamp), List.of());
        assertThat(at(CatalogueCheck.faults(catalogue, "/catalogue")))
                .containsExactly(Map.entry("/catalogue/fasteningParts/1/keyWidth", FaultCode.INCONSISTENT));
    }

    /** A link of the network carries only so far, so how far must be stated with its coupler; a stop signal carries over any. */
    @Test
    void findsCoupledLinksWithoutTheirLimitAndCouplersThatAreNotThere() {
        var stop = new CableAssembly(
                "stop", "cable", null, List.of(), CableUse.STOP_SIGNAL, new Length(5), null, null, new Length(0.006));
        CableAssembly joined = Copies.with(stop, "coupler", "coupler");
        CableAssembly spur = Copies.with(Copies.with(joined, "id", "spur"), "use", CableUse.SPUR);
        CableAssembly limited = Copies.with(Copies.with(spur, "id", "limited"), "joinedLength", new Length(40));
        CableAssembly lost = Copies.with(Copies.with(stop, "id", "lost"), "coupler", "nothing");
        var catalogue = Copies.with(
                catalogue("EUR", List.of(), List.of(), List.of(), List.of((Accessory) item("coupler"))),
                "cableAssemblies",
                List.of(joined, spur, limited, lost));
        assertThat(at(CatalogueCheck.faults(catalogue, "")))
                .containsExactly(
                        Map.entry("/cableAssemblies/1/joinedLength", FaultCode.MISSING),
                        Map.entry("/cableAssemblies/3/coupler", FaultCode.DANGLING_REFERENCE));
    }

    @Test
    void findsOneCableTooManyToACoupler() {
        var stop = new CableAssembly(
                "stop", "cable", null, List.of(), CableUse.STOP_SIGNAL, new Length(5), null, null, new Length(0.006));
        CableAssembly joined = Copies.with(stop, "coupler", "coupler");
        List<CableAssembly> cables = IntStream.rangeClosed(0, 256)
                .mapToObj(k -> Copies.with(joined, "id", "stop-" + k))
                .toList();
        var catalogue = catalogue("EUR", List.of(), List.of(), List.of(), List.of((Accessory) item("coupler")));
        assertThat(CatalogueCheck.faults(Copies.with(catalogue, "cableAssemblies", cables.subList(0, 256)), ""))
                .isEmpty();
        assertThat(at(CatalogueCheck.faults(Copies.with(catalogue, "cableAssemblies", cables), "")))
                .containsExactly(Map.entry("/cableAssemblies/256/coupler", FaultCode.OUT_OF_RANGE));
    }

    @Test
    void findsPricesInAnotherCurrencyAndUnknownCurrencies() {
        var dollars = new Accessory("a", "part", new Money(BigDecimal.TEN, "USD"), List.of());
        assertThat(at(faults(dollars)))
                .containsExactly(Map.entry("/accessories/0/price/currency", FaultCode.INCONSISTENT));

        for (String code : List.of("EURO", "DEM", "XXX", "XAU", "XTS")) {
            var unknown = catalogue(code, List.of(), List.of(), List.of(), List.of());
            assertThat(at(CatalogueCheck.faults(unknown, "")))
                    .containsExactly(Map.entry("/currency", FaultCode.UNKNOWN_VALUE));
        }
    }

    @Test
    void findsCutAllowancesThatLeaveNothingOfAReel() {
        assertThat(ItemCheck.faults(reeled(100.0, 0.1), "/bulkCables/0")).isEmpty();
        assertThat(ItemCheck.faults(reeled(100.0, null), "/bulkCables/0")).isEmpty();
        assertThat(at(ItemCheck.faults(reeled(2.0, 2.0), "/bulkCables/0")))
                .containsExactly(Map.entry("/bulkCables/0/cutAllowance", FaultCode.INCONSISTENT));
        assertThat(at(ItemCheck.faults(reeled(null, 0.1), "/bulkCables/0")))
                .containsExactly(Map.entry("/bulkCables/0/cutAllowance", FaultCode.INCONSISTENT));
    }

    private static BulkCable reeled(@Nullable Double reel, @Nullable Double allowance) {
        return new BulkCable(
                "cable",
                "cable",
                null,
                List.of(),
                new ConductorSize("2.5 mm2"),
                4,
                Insulation.PVC_70,
                new Length(0.012),
                false,
                reel == null ? null : new Length(reel),
                allowance == null ? null : new Length(allowance),
                null);
    }

    @Test
    void findsNeedsThatLeadNowhere() {
        assertThat(at(faults(item("a", need("b"), need("nowhere")), item("b"))))
                .containsExactly(Map.entry("/accessories/0/needs/1/item", FaultCode.DANGLING_REFERENCE));
    }

    @Test
    void findsConditionsMissingAndOutOfPlace() {
        var without = new Need("b", 1, NeedKind.CONDITIONAL, null, "test");
        var with = new Need("b", 1, NeedKind.REQUIRED, DemandCondition.KEEP_ALIVE, "test");
        assertThat(at(faults(item("a", without, with), item("b"))))
                .containsExactly(
                        Map.entry("/accessories/0/needs/0/when", FaultCode.MISSING),
                        Map.entry("/accessories/0/needs/1/when", FaultCode.INCONSISTENT));
    }

    @Test
    void findsEveryNeedThatClosesACircle() {
        // a -> b -> c -> a and c -> b; d leads into the circle but is not on it; e needs itself
        var faults = faults(
                item("d", need("a")),
                item("a", need("b")),
                item("b", need("c")),
                item("c", need("a"), need("b")),
                item("e", need("e")));

        assertThat(at(faults))
                .containsExactly(
                        Map.entry("/accessories/3/needs/0/item", FaultCode.CYCLIC_NEEDS),
                        Map.entry("/accessories/3/needs/1/item", FaultCode.CYCLIC_NEEDS),
                        Map.entry("/accessories/4/needs/0/item", FaultCode.CYCLIC_NEEDS));
        assertThat(faults.getFirst().detail()).isEqualTo("a needs b needs c needs a.");
    }

    @Test
    void followsAChainAsLongAsTheLongestList() {
        Item[] chain = IntStream.range(0, 4096)
                .mapToObj(k -> k == 4095 ? item("i4095") : item("i" + k, need("i" + (k + 1))))
                .toArray(Item[]::new);

        assertThat(faults(chain)).isEmpty();
    }

    @Test
    void takesAnItemReachedTwiceForNoCircle() {
        assertThat(faults(item("a", need("b"), need("c")), item("b", need("d")), item("c", need("d")), item("d")))
                .isEmpty();
    }

    @Test
    void findsCurvesThatDoNotRise() {
        var unit = drive(List.of(point(0), point(100), point(100)), List.of(point(200), point(100)));
        var catalogue = catalogue("EUR", List.of(unit), List.of(), List.of(), List.of());

        assertThat(at(CatalogueCheck.faults(catalogue, "")))
                .containsExactly(
                        Map.entry("/driveUnits/0/continuousCurve/2/speed", FaultCode.INCONSISTENT),
                        Map.entry("/driveUnits/0/intermittentCurve/1/speed", FaultCode.INCONSISTENT));
    }

    @Test
    void findsRangesAndSwitchingPointsTheWrongWayRound() {
        var catalogue = catalogue(
                "EUR", List.of(), List.of(brakingUnit(700, 700)), List.of(part("part", 0.02, 0.02)), List.of());

        assertThat(at(CatalogueCheck.faults(catalogue, "")))
                .containsExactly(
                        Map.entry("/brakingUnits/0/chopperOff", FaultCode.INCONSISTENT),
                        Map.entry("/fasteningParts/0/shaftUpTo", FaultCode.INCONSISTENT));
    }

    private static List<Map.Entry<String, FaultCode>> at(List<Fault> faults) {
        return faults.stream()
                .map(fault -> Map.entry(fault.pointer(), fault.code()))
                .toList();
    }

    private static List<Fault> faults(Item... accessories) {
        List<Accessory> list = new ArrayList<>();
        Arrays.stream(accessories).forEach(item -> list.add((Accessory) item));
        return CatalogueCheck.faults(catalogue("EUR", List.of(), List.of(), List.of(), list), "");
    }

    private static Catalogue catalogue(
            String currency,
            List<DriveUnit> drives,
            List<BrakingUnit> brakingUnits,
            List<FasteningPart> parts,
            List<Accessory> accessories) {
        return new Catalogue(
                "test",
                currency,
                null,
                drives,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                brakingUnits,
                List.of(),
                List.of(),
                parts,
                accessories);
    }

    private static Accessory item(String id, Need... needs) {
        return new Accessory(id, "part", price(), List.of(needs));
    }

    private static @Nullable Money price() {
        return new Money(BigDecimal.ONE, "EUR");
    }

    private static Need need(String item) {
        return new Need(item, 1, NeedKind.REQUIRED, null, "test");
    }

    private static FasteningPart part(String id, double above, double upTo) {
        return new FasteningPart(id, "key", null, List.of(), FasteningKind.KEY, new Length(above), new Length(upTo));
    }

    private static CurvePoint point(double speed) {
        return new CurvePoint(new AngularSpeed(speed), new Torque(1));
    }

    private static BrakingUnit brakingUnit(double on, double off) {
        return new BrakingUnit(
                "chopper",
                "chopper",
                null,
                List.of(),
                new Voltage(on),
                new Voltage(off),
                new Resistance(50),
                0.1,
                new Current(20),
                new Power(200),
                new Energy(4000),
                new HeatCapacity(300),
                new ThermalResistance(1),
                new Temperature(600),
                null,
                null);
    }

    private static DriveUnit drive(List<CurvePoint> continuous, List<CurvePoint> intermittent) {
        return new DriveUnit(
                "drive",
                "drive",
                null,
                List.of(),
                "frame",
                Feed.ONE_PHASE,
                new Voltage(230),
                new Current(3),
                new Current(16),
                4,
                new Current(10000),
                new Current(0.001),
                new Inertia(1e-5),
                new MotorConstant(0.2),
                continuous,
                intermittent,
                new Temperature(313.15),
                new TemperatureRise(80),
                new Time(600),
                new Power(10),
                new Capacitance(5e-4),
                new Voltage(420),
                new Power(8),
                new Voltage(19),
                true,
                new Length(0.014),
                new Length(0.03),
                10);
    }
}
