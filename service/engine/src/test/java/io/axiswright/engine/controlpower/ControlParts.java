package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.BufferKind;
import io.axiswright.engine.catalogue.BufferUnit;
import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.ClearingPoint;
import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.catalogue.CurvePoint;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.catalogue.OutputProtection;
import io.axiswright.engine.catalogue.ProtectionKind;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.design.ControlPower;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.FieldDevice;
import io.axiswright.engine.design.LoadLaw;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Capacitance;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.MotorConstant;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.TemperatureRise;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.quantity.Voltage;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Invented items and sites for the tests of this package. */
final class ControlParts {

    static final Site SITE = new Site(celsius(40), celsius(40), new Length(0));
    static final Mains MAINS = new Mains(
            SupplySystem.THREE_PHASE_FOUR_WIRE, new Voltage(400), 0.1, 0.1, new Frequency(50), new Current(10_000));

    private ControlParts() {}

    static Temperature celsius(double value) {
        return new Temperature(value + 273.15);
    }

    static Money price(double amount) {
        return new Money(BigDecimal.valueOf(amount), "EUR");
    }

    static ControlPower spec(double reserve, boolean together) {
        return new ControlPower("panel", reserve, together);
    }

    static GatewayType gateway(double power, double minimum, double passThrough) {
        return new GatewayType(
                "gateway",
                "gateway",
                price(300),
                List.of(),
                8,
                8,
                8,
                StopScope.NONE,
                new Power(power),
                new Voltage(minimum),
                new Current(passThrough));
    }

    static HoldingBrake brake(double pullIn, double hold, double minimum) {
        return new HoldingBrake(
                "brake",
                "brake",
                price(80),
                List.of(),
                "80",
                new Torque(5),
                new Inertia(1e-5),
                new Power(pullIn),
                new Power(hold),
                new Voltage(minimum),
                new Time(0.05),
                new Time(0.02),
                null,
                null);
    }

    static DriveUnit drive(double logic, double minimum, boolean keepAlive) {
        var curve = List.of(
                new CurvePoint(new AngularSpeed(0), new Torque(3)),
                new CurvePoint(new AngularSpeed(300), new Torque(2)));
        return new DriveUnit(
                "drive",
                "drive",
                price(900),
                List.of(),
                "80",
                Feed.THREE_PHASE,
                new Voltage(400),
                new Current(2),
                new Current(10),
                4,
                new Current(10_000),
                new Current(0.003),
                new Inertia(1e-4),
                new MotorConstant(0.3),
                curve,
                curve,
                celsius(40),
                new TemperatureRise(100),
                new Time(1200),
                new Power(20),
                new Capacitance(2e-4),
                new Voltage(800),
                new Power(logic),
                new Voltage(minimum),
                keepAlive,
                new Length(0.019),
                new Length(0.04),
                10);
    }

    static ControlSupply supply(String id, double price, double current) {
        return supply(id, price, current, Feed.ONE_PHASE, 230, 24, 0.1);
    }

    static ControlSupply supply(
            String id, double price, double current, Feed feed, double rated, double output, double holdUp) {
        return new ControlSupply(
                id,
                "supply",
                price(price),
                List.of(),
                feed,
                new Voltage(rated),
                new Voltage(output),
                0.01,
                new Current(current),
                0.9,
                0.6,
                celsius(50),
                0.025,
                new Current(16),
                new Time(holdUp));
    }

    static CableAssembly cable(String id, double price, double length, @Nullable String size) {
        return new CableAssembly(
                id,
                "cable",
                price(price),
                List.of(),
                CableUse.CONTROL_SUPPLY,
                new Length(length),
                size == null ? null : new ConductorSize(size),
                null,
                new Length(0.008));
    }

    static CableAssembly spur(@Nullable String size) {
        return new CableAssembly(
                "spur",
                "spur",
                price(40),
                List.of(),
                CableUse.SPUR,
                new Length(5),
                size == null ? null : new ConductorSize(size),
                null,
                new Length(0.008));
    }

    static OutputProtection protection(String id, double price, ProtectionKind kind, double rating, double trip) {
        return new OutputProtection(
                id,
                "protection",
                price(price),
                List.of(),
                kind,
                new Current(rating),
                List.of(new ClearingPoint(new Current(trip), new Time(0.1))));
    }

    static BufferUnit buffer(
            String id, double price, BufferKind kind, double energy, @Nullable Voltage held, int most) {
        return new BufferUnit(
                id, "buffer", price(price), List.of(), kind, new Energy(energy), 0.8, held, new Current(20), most);
    }

    static FieldDevice device(String id, LoadLaw law, double current, boolean switched) {
        return new FieldDevice(id, "x", law, new Current(current), new Voltage(18), switched, null);
    }

    static ControlLoad load(String axis, int index, double logic, @Nullable HoldingBrake brake) {
        return new ControlLoad(axis, index, drive(logic, 18, true), brake, spur("1 mm2"), false);
    }

    static ControlNode node(
            String id, String chain, int depth, @Nullable String upstream, double metres, ControlLoad... loads) {
        return new ControlNode(id, gateway(6, 19.2, 20), chain, depth, upstream, new Length(metres), List.of(loads));
    }
}
