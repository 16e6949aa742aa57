package io.axiswright.engine.design;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.Copies;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Effort;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Payload;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.quantity.Voltage;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class DesignCheckTest {

    private static final Position ORIGIN = new Position(new Length(0), new Length(0), new Length(0));
    private static final RotaryTable TABLE = new RotaryTable(new Inertia(1), new Torque(0), 1, null);
    private static final Hoist HOIST = new Hoist(new Length(0.2), new Inertia(0.01), new Mass(50), null, 1, 0.9, null);
    private static final Belt BELT =
            new Belt(new Length(0.08), new Inertia(0.001), new Mass(20), new Angle(0), 0.95, null, null);
    private static final RackAndPinion RACK =
            new RackAndPinion(new Length(0.05), new Inertia(0.001), new Mass(20), new Angle(0), 0.95, null, null);
    private static final Screw SCREW =
            new Screw(new Length(0.01), new Length(0.02), new Length(1), new Mass(20), new Angle(0), 0.9, null, null);

    @Test
    void findsNothingInAConsistentDesign() {
        var linear = axis("a", "zone", SCREW, move(new Length(1), new Mass(1), new Force(1)));
        var rotary = axis("b", null, TABLE, move(new Angle(1), new Inertia(1), new Torque(1)));
        assertThat(faults(design(List.of(linear, rotary), network("panel", "p1"), "panel", "zone")))
                .isEmpty();
    }

    @Test
    void findsIdsUsedTwice() {
        var axis = axis("same", null, SCREW, new Dwell(new Time(1), null, null, false));
        var network = new Network(
                new Host(ORIGIN, List.of(port("p"), port("p"))),
                List.of(place("panel"), place("frame"), place("panel")),
                new RouteRule(RouteMetric.STRAIGHT, 1, new Length(0)),
                null,
                null,
                null,
                null);
        assertThat(faults(design(List.of(axis, axis), network, null, "zone", "zone")))
                .containsExactly(
                        Map.entry("/axes/1/id", FaultCode.DUPLICATE_ID),
                        Map.entry("/stopZones/1/id", FaultCode.DUPLICATE_ID),
                        Map.entry("/network/host/ports/1/id", FaultCode.DUPLICATE_ID),
                        Map.entry("/network/places/2/id", FaultCode.DUPLICATE_ID));
    }

    @Test
    void findsReferencesThatLeadNowhere() {
        var axis = axis("a", "nowhere", SCREW, move(new Length(1), null, null));
        assertThat(faults(design(List.of(axis), network("panel", "p"), "elsewhere", "zone")))
                .containsExactly(
                        Map.entry("/axes/0/stopZone", FaultCode.DANGLING_REFERENCE),
                        Map.entry("/controlPower/place", FaultCode.DANGLING_REFERENCE));
    }

    @Test
    void findsAControlSupplyWithoutANetworkToStandIn() {
        var axis = axis("a", null, SCREW, move(new Length(1), null, null));
        assertThat(faults(design(List.of(axis), null, "panel")))
                .containsExactly(Map.entry("/network", FaultCode.MISSING));
    }

    @TestFactory
    Stream<DynamicTest> findsMeasuresOfTheOtherKindOfMotion() {
        var linear = move(new Length(1), new Mass(1), new Force(1));
        var rotary = move(new Angle(1), new Inertia(1), new Torque(1));
        return Stream.of(SCREW, BELT, RACK, HOIST, TABLE)
                .map(mechanism -> DynamicTest.dynamicTest(mechanism.getClass().getSimpleName(), () -> {
                    boolean turns = mechanism == TABLE;
                    assertThat(faults(axis("a", null, mechanism, turns ? rotary : linear)))
                            .isEmpty();
                    assertThat(faults(axis("a", null, mechanism, turns ? linear : rotary)))
                            .containsExactly(
                                    Map.entry("/axes/0/cycle/segments/0/distance", FaultCode.WRONG_UNIT),
                                    Map.entry("/axes/0/cycle/segments/0/payload", FaultCode.WRONG_UNIT),
                                    Map.entry("/axes/0/cycle/segments/0/processEffort", FaultCode.WRONG_UNIT));
                }));
    }

    @Test
    void findsMeasuresOfTheOtherKindInADwell() {
        var dwell = new Dwell(new Time(1), new Inertia(1), new Torque(1), false);
        assertThat(faults(axis("a", null, HOIST, dwell)))
                .containsExactly(
                        Map.entry("/axes/0/cycle/segments/0/payload", FaultCode.WRONG_UNIT),
                        Map.entry("/axes/0/cycle/segments/0/processEffort", FaultCode.WRONG_UNIT));
    }

    @Test
    void findsABrakeThatHoldsButIsNotThere() {
        var held = new Dwell(new Time(1), null, null, true);
        assertThat(faults(axis("a", null, SCREW, move(0.3, 0.3), held)))
                .containsExactly(Map.entry("/axes/0/cycle/segments/1/brakeHolds", FaultCode.INCONSISTENT));
        assertThat(faults(axis("a", null, SCREW, true, null, held))).isEmpty();
    }

    @Test
    void findsFeetWithoutAHeight() {
        var move = move(0.3, 0.3);
        var key = new ClampFastening(1, new Force(9000), 0.12);
        var unstated = new ShaftMounting(MountingKind.FOOT, null, key, 2);
        var stated = new ShaftMounting(MountingKind.FOOT, new Length(0.09), key, 2);
        var face = new ShaftMounting(MountingKind.FACE, null, key, 2);
        assertThat(faults(axis("a", null, SCREW, false, unstated, move)))
                .containsExactly(Map.entry("/axes/0/mounting/shaftHeight", FaultCode.MISSING));
        assertThat(faults(axis("a", null, SCREW, false, stated, move))).isEmpty();
        assertThat(faults(axis("a", null, SCREW, false, face, move))).isEmpty();
    }

    @Test
    void pointsFromTheDocumentTheDesignCameIn() {
        var axis = axis("a", "nowhere", TABLE, move(new Length(1), null, null));
        assertThat(DesignCheck.faults(design(List.of(axis), null, null), "/design"))
                .extracting("pointer")
                .containsExactly("/design/axes/0/stopZone", "/design/axes/0/cycle/segments/0/distance");
    }

    private static List<Map.Entry<String, FaultCode>> faults(Axis axis) {
        return faults(design(List.of(axis), null, null));
    }

    private static List<Map.Entry<String, FaultCode>> faults(Design design) {
        return DesignCheck.faults(design, "").stream()
                .map(fault -> Map.entry(fault.pointer(), fault.code()))
                .toList();
    }

    private static Design design(
            List<Axis> axes, @Nullable Network network, @Nullable String supplyPlace, String... zones) {
        return new Design(
                "test",
                new Site(new Temperature(308.15), new Temperature(318.15), new Length(0)),
                new Mains(
                        SupplySystem.THREE_PHASE_FOUR_WIRE,
                        new Voltage(400),
                        0.1,
                        0.1,
                        new Frequency(50),
                        new Current(8000)),
                axes,
                Arrays.stream(zones)
                        .map(id -> new StopZone(id, StopCategory.CATEGORY_1, new Time(0.1), new Time(0.5), null))
                        .toList(),
                network,
                supplyPlace == null ? null : new ControlPower(supplyPlace, 0.2, false),
                null);
    }

    @Test
    void findsFieldDevicesThatHangOnNothingOrShareAnIdAndSuppliesNowhere() {
        var axis = axis("a", null, SCREW, new Dwell(new Time(1), null, null, false));
        Design d = design(List.of(axis), network("panel", "p1"), "panel", "zone");
        var sensor = new FieldDevice(
                "sensor", "a", LoadLaw.CONSTANT_CURRENT, new Current(0.1), new Voltage(18), false, null);
        var lost =
                new FieldDevice("sensor", "nowhere", LoadLaw.RESISTIVE, new Current(0.1), new Voltage(18), true, null);
        var power = new ControlPower("panel", 0.2, false, List.of(sensor, lost), null, null, null);
        var elsewhere = Copies.with(power, "furtherPlaces", List.of("panel", "attic"));
        assertThat(faults(Copies.with(d, "controlPower", elsewhere)))
                .containsExactlyInAnyOrder(
                        Map.entry("/controlPower/furtherPlaces/0", FaultCode.DUPLICATE_ID),
                        Map.entry("/controlPower/furtherPlaces/1", FaultCode.DANGLING_REFERENCE),
                        Map.entry("/controlPower/fieldDevices/1/id", FaultCode.DUPLICATE_ID),
                        Map.entry("/controlPower/fieldDevices/1/axis", FaultCode.DANGLING_REFERENCE));
    }

    @Test
    void findsFixedPlacesAndKeptGatewaysThatContradictThemselves() {
        var axis = axis("a", null, SCREW, new Dwell(new Time(1), null, null, false));
        var network = new Network(
                new Host(ORIGIN, List.of(port("p"))),
                List.of(place("panel")),
                new RouteRule(RouteMetric.STRAIGHT, 1, new Length(0)),
                new KeptLayout(
                        List.of(
                                new KeptGateway("sold out", "gone", "p", 1, List.of("a", "gone")),
                                new KeptGateway("sold out", "gone", "p", 1, List.of("a"))),
                        null),
                List.of(new FixedPlace("a", "panel"), new FixedPlace("a", "panel"), new FixedPlace("b", "nowhere")),
                null,
                null);
        assertThat(faults(design(List.of(axis), network, null, "zone")))
                .containsExactly(
                        Map.entry("/network/fixed/1/axis", FaultCode.INCONSISTENT),
                        Map.entry("/network/fixed/2/axis", FaultCode.DANGLING_REFERENCE),
                        Map.entry("/network/fixed/2/place", FaultCode.DANGLING_REFERENCE),
                        Map.entry("/network/keep/gateways/1/depth", FaultCode.INCONSISTENT),
                        Map.entry("/network/keep/gateways/1/axes/0", FaultCode.INCONSISTENT));
    }

    @Test
    void findsReservedAxesThatHangNowhere() {
        var axis = axis("a", null, SCREW, new Dwell(new Time(1), null, null, false));
        var named = reserved("a", ORIGIN, null, "nowhere", null);
        var lost = reserved("b", null, ORIGIN, null, "gone");
        var network = Copies.with(network("panel", "p"), "reserved", List.of(named, lost));
        assertThat(faults(design(List.of(axis), network, null, "zone")))
                .containsExactly(
                        Map.entry("/network/reserved/0/id", FaultCode.DUPLICATE_ID),
                        Map.entry("/network/reserved/0/place", FaultCode.DANGLING_REFERENCE),
                        Map.entry("/network/reserved/1/stopZone", FaultCode.DANGLING_REFERENCE),
                        Map.entry("/network/reserved/1", FaultCode.MISSING),
                        Map.entry("/network/reserved/1/farCorner", FaultCode.INCONSISTENT));
    }

    @Test
    void findsSeparationsOfAxesThatAreNotThere() {
        var axis = axis("a", null, SCREW, new Dwell(new Time(1), null, null, false));
        var network = Copies.with(
                Copies.with(network("panel", "p"), "reserved", List.of(reserved("b", ORIGIN, null, null, null))),
                "separations",
                List.of(new Separation("s", List.of("a", "b", "a"), null), new Separation("s", List.of("c"), null)));
        assertThat(faults(design(List.of(axis), network, null, "zone")))
                .containsExactly(
                        Map.entry("/network/separations/0/axes/2", FaultCode.INCONSISTENT),
                        Map.entry("/network/separations/1/id", FaultCode.DUPLICATE_ID),
                        Map.entry("/network/separations/1/axes/0", FaultCode.DANGLING_REFERENCE));
    }

    @Test
    void findsCableWaysThatLeadNowhere() {
        var axis = axis("a", null, SCREW, new Dwell(new Time(1), null, null, false));
        var far = new Position(new Length(5), new Length(0), new Length(0));
        List<WayNode> nodes = List.of(new WayNode("n", ORIGIN), new WayNode("m", far));
        var torn = new CableWays(nodes, List.of(), null);
        var wrong = new CableWays(
                List.of(new WayNode("n", ORIGIN), new WayNode("m", far), new WayNode("n", far)),
                List.of(new WayEdge("n", "m", new Length(4)), new WayEdge("n", "gone", null)),
                List.of(
                        new WayAttachment(null, null, "n"),
                        new WayAttachment(null, "panel", "m"),
                        new WayAttachment("nobody", null, "gone"),
                        new WayAttachment("a", "panel", "n")));

        assertThat(faults(design(List.of(axis), Copies.with(network("panel", "p"), "ways", torn), null, "zone")))
                .containsExactly(Map.entry("/network/ways/nodes/1", FaultCode.INCONSISTENT));
        // host and panel stand in one position
        assertThat(faults(design(List.of(axis), Copies.with(network("panel", "p"), "ways", wrong), null, "zone")))
                .containsExactly(
                        Map.entry("/network/ways/nodes/2/id", FaultCode.DUPLICATE_ID),
                        Map.entry("/network/ways/edges/0/length", FaultCode.INCONSISTENT),
                        Map.entry("/network/ways/edges/1/to", FaultCode.DANGLING_REFERENCE),
                        Map.entry("/network/ways/attachments/1/node", FaultCode.INCONSISTENT),
                        Map.entry("/network/ways/attachments/2/node", FaultCode.DANGLING_REFERENCE),
                        Map.entry("/network/ways/attachments/2/axis", FaultCode.DANGLING_REFERENCE),
                        Map.entry("/network/ways/attachments/3/place", FaultCode.INCONSISTENT));
    }

    private static ReservedAxis reserved(
            String id,
            @Nullable Position position,
            @Nullable Position corner,
            @Nullable String place,
            @Nullable String zone) {
        return new ReservedAxis(id, null, position, corner, place, null, null, zone, new Frequency(100), null);
    }

    private static Network network(String place, String port) {
        return new Network(
                new Host(ORIGIN, List.of(port(port))),
                List.of(place(place)),
                new RouteRule(RouteMetric.STRAIGHT, 1, new Length(0)),
                null,
                null,
                null,
                null);
    }

    private static HostPort port(String id) {
        return new HostPort(id, new Frequency(1000));
    }

    private static Place place(String id) {
        return new Place(id, ORIGIN, 4);
    }

    private static Move move(Displacement distance, @Nullable Payload payload, @Nullable Effort effort) {
        return new Move(distance, new Time(1), new Triangular(), payload, effort);
    }

    private static Move move(double acceleration, double deceleration) {
        return new Move(new Length(1), new Time(1), new Trapezoidal(acceleration, deceleration), null, null);
    }

    private static Axis axis(String id, @Nullable String zone, Mechanism mechanism, Segment... segments) {
        return new Axis(
                id,
                null,
                mechanism,
                List.of(),
                null,
                new Cycle(List.of(segments)),
                ORIGIN,
                zone,
                null,
                new Frequency(250),
                DriveWish.any(),
                null);
    }

    private static Axis axis(
            String id,
            @Nullable String zone,
            Mechanism mechanism,
            boolean brake,
            @Nullable ShaftMounting mounting,
            Segment... segments) {
        return new Axis(
                id,
                null,
                mechanism,
                List.of(),
                null,
                new Cycle(List.of(segments)),
                ORIGIN,
                zone,
                null,
                new Frequency(250),
                new DriveWish().braked(brake).made(),
                mounting);
    }
}
