package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.*;
import io.axiswright.engine.design.*;
import io.axiswright.engine.design.DriveWish;
import io.axiswright.engine.quantity.*;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** A small invented machine and catalogue for tests: every kind of item once or twice, axes as many as asked for. */
public final class TestCell {

    private TestCell() {}

    /** A study of that many belt axes on a line, two metres apart, in one stop zone. */
    public static StudyRequest request(int axes) {
        return new StudyRequest(CodeBasis.IEC_60204_1, catalogue(), design(axes));
    }

    /** The machine. */
    public static Design design(int axes) {
        return new Design(
                "test cell",
                new Site(celsius(35), celsius(45), new Length(200)),
                new Mains(
                        SupplySystem.THREE_PHASE_FOUR_WIRE,
                        new Voltage(400),
                        0.1,
                        0.1,
                        new Frequency(50),
                        new Current(5000)),
                IntStream.range(0, axes).mapToObj(TestCell::axis).toList(),
                List.of(new StopZone("zone", StopCategory.CATEGORY_1, new Time(0.03), new Time(0.4), null)),
                network(axes),
                new ControlPower("panel-0", 0.2, true),
                new Installation(
                        position(0),
                        new Length(10),
                        InstallationMethod.B2,
                        Insulation.PVC_70,
                        ConductorMaterial.COPPER,
                        celsius(40),
                        3,
                        celsius(75),
                        0.05,
                        DeviceKind.BREAKER));
    }

    /** A belt axis: 40 kg, 0.6 m in 0.8 s, then a dwell. */
    public static Axis axis(int index) {
        return new Axis(
                "axis-" + index,
                null,
                new Belt(
                        new Length(0.08),
                        new Inertia(0.0012),
                        new Mass(40),
                        new Angle(0),
                        0.95,
                        null,
                        new Friction(0.05, null, null)),
                List.of(new Gear(10, 0.95, null, new Inertia(0.4e-4))),
                null,
                new Cycle(List.of(
                        new Move(new Length(0.6), new Time(0.8), new Trapezoidal(0.3, 0.3), null, null),
                        new Dwell(new Time(0.6), null, null, false),
                        new Move(new Length(-0.6), new Time(0.8), new Trapezoidal(0.3, 0.3), null, null),
                        new Dwell(new Time(0.6), null, null, false))),
                position(2.0 * index),
                "zone",
                null,
                new Frequency(250),
                DriveWish.any(),
                new ShaftMounting(MountingKind.FACE, null, new ClampFastening(1, new Force(9000), 0.12), 2));
    }

    private static Network network(int axes) {
        int panels = Math.max(1, (axes + 7) / 8);
        return new Network(
                new Host(
                        position(0),
                        IntStream.range(0, Math.max(1, (panels + 3) / 4))
                                .mapToObj(k -> new HostPort("port-" + k, new Frequency(50000)))
                                .toList()),
                IntStream.range(0, panels)
                        .mapToObj(k -> new Place("panel-" + k, position(16.0 * k + 7), 1))
                        .toList(),
                new RouteRule(RouteMetric.RECTILINEAR, 1.1, new Length(0.3)),
                null,
                null,
                null,
                null);
    }

    /** The catalogue. */
    public static Catalogue catalogue() {
        return new Catalogue(
                "test",
                "EUR",
                "invented",
                List.of(unit("unit-small", 400, 1.3, 4, 0.3e-4, 0.21), unit("unit-large", 700, 5, 15, 1.9e-4, 0.65)),
                List.of(new HoldingBrake(
                        "brake",
                        "brake",
                        euro(100),
                        List.of(),
                        "frame",
                        new Torque(6),
                        new Inertia(0.1e-4),
                        new Power(12),
                        new Power(12),
                        new Voltage(21.6),
                        new Time(0.05),
                        new Time(0.03),
                        null,
                        null)),
                List.of(new GatewayType(
                        "gateway",
                        "gateway",
                        euro(300),
                        List.of(new Need("rail", 1, NeedKind.REQUIRED, null, "fixes it")),
                        8,
                        4,
                        8,
                        StopScope.GATEWAY,
                        new Power(8),
                        new Voltage(20.4),
                        new Current(30))),
                List.of(controlSupply("supply-10", 110, 10), controlSupply("supply-40", 300, 40)),
                cables(),
                bulk(),
                devices(),
                List.of(new BrakingUnit(
                        "braking",
                        "braking unit",
                        euro(200),
                        List.of(new Need("guard", 1, NeedKind.REQUIRED, null, "keeps hands off")),
                        new Voltage(760),
                        new Voltage(740),
                        new Resistance(100),
                        0.1,
                        new Current(10),
                        new Power(200),
                        new Energy(6000),
                        new HeatCapacity(55),
                        new ThermalResistance(0.9),
                        celsius(250),
                        null,
                        null)),
                List.of(),
                List.of(),
                List.of(new FasteningPart(
                        "clamp",
                        "clamp hub",
                        euro(30),
                        List.of(),
                        FasteningKind.CLAMP,
                        new Length(0.01),
                        new Length(0.03))),
                List.of(
                        new Accessory("rail", "rail kit", euro(5), List.of()),
                        new Accessory("guard", "guard", euro(20), List.of())));
    }

    private static DriveUnit unit(
            String id, double price, double torque, double peak, double inertia, double motorConstant) {
        return new DriveUnit(
                id,
                "drive unit",
                euro(price),
                List.of(),
                "frame",
                Feed.THREE_PHASE,
                new Voltage(400),
                new Current(2),
                new Current(20),
                6,
                new Current(10000),
                new Current(0.002),
                new Inertia(inertia),
                new MotorConstant(motorConstant),
                List.of(
                        new CurvePoint(new AngularSpeed(0), new Torque(torque)),
                        new CurvePoint(new AngularSpeed(500), new Torque(torque * 0.6))),
                List.of(
                        new CurvePoint(new AngularSpeed(0), new Torque(peak)),
                        new CurvePoint(new AngularSpeed(500), new Torque(peak * 0.6))),
                celsius(40),
                new TemperatureRise(100),
                new Time(500),
                new Power(10),
                new Capacitance(400e-6),
                new Voltage(820),
                new Power(9),
                new Voltage(20.4),
                true,
                new Length(0.019),
                new Length(0.04),
                30);
    }

    private static ControlSupply controlSupply(String id, double price, double current) {
        return new ControlSupply(
                id,
                "24 V supply",
                euro(price),
                List.of(),
                Feed.ONE_PHASE,
                new Voltage(230),
                new Voltage(24.5),
                0.01,
                new Current(current),
                0.92,
                0.9,
                celsius(55),
                0.025,
                new Current(16),
                new Time(0.025));
    }

    private static List<CableAssembly> cables() {
        return java.util.stream.Stream.of(CableUse.values())
                .flatMap(use -> IntStream.of(1, 3, 6, 12, 20, 40)
                        .mapToObj(length -> new CableAssembly(
                                use.name().toLowerCase(java.util.Locale.ROOT) + "-" + length,
                                "cable",
                                euro(20 + 5 * length),
                                List.of(),
                                use,
                                new Length(length),
                                conductor(use),
                                null,
                                new Length(0.01))))
                .toList();
    }

    private static @Nullable ConductorSize conductor(CableUse use) {
        return switch (use) {
            case SPUR -> ConductorSize.metric("1.5");
            case CONTROL_SUPPLY -> ConductorSize.metric("10");
            case HOST, TRUNK, BUS_LINK, BRAKING_RESISTOR, STOP_SIGNAL -> null;
        };
    }

    private static List<BulkCable> bulk() {
        return java.util.stream.Stream.of("1.5", "2.5", "4", "6", "10", "16", "25", "35", "50", "70", "95", "120")
                .flatMap(size -> IntStream.of(3, 4, 5)
                        .mapToObj(cores -> new BulkCable(
                                "power-" + cores + "x" + size,
                                "power cable",
                                euro(Double.parseDouble(size) * cores * 0.2),
                                List.of(),
                                ConductorSize.metric(size),
                                cores,
                                Insulation.PVC_70,
                                new Length(0.012),
                                true)))
                .toList();
    }

    private static List<ProtectiveDevice> devices() {
        return IntStream.of(2, 3)
                .boxed()
                .flatMap(poles -> IntStream.of(6, 10, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125)
                        .mapToObj(rating -> new ProtectiveDevice(
                                "breaker-" + poles + "p-" + rating,
                                "breaker",
                                euro(20 + rating),
                                List.of(),
                                DeviceKind.BREAKER,
                                CodeBasis.IEC_60204_1,
                                poles,
                                new Current(rating),
                                new Current(10000),
                                new Voltage(440))))
                .toList();
    }

    private static Position position(double x) {
        return new Position(new Length(x), new Length(0), new Length(1));
    }

    private static Temperature celsius(double value) {
        return new Temperature(value + 273.15);
    }

    private static Money euro(double value) {
        return new Money(BigDecimal.valueOf(value).setScale(2, java.math.RoundingMode.HALF_UP), "EUR");
    }
}
