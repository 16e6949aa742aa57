package io.axiswright.engine.mounting;

import io.axiswright.engine.catalogue.CurvePoint;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.FasteningKind;
import io.axiswright.engine.catalogue.FasteningPart;
import io.axiswright.engine.catalogue.FootKit;
import io.axiswright.engine.design.Fastening;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.MountingKind;
import io.axiswright.engine.design.ShaftMounting;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Capacitance;
import io.axiswright.engine.quantity.Current;
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

/** Invented items for the tests of this package. */
final class MountingParts {

    static final double INCH = 0.0254;
    static final double POUND_FORCE_INCH = 0.1129848290276167;
    static final double PSI = 6894.757293168361;

    private MountingParts() {}

    static DriveUnit drive(double shaftDiameter, double shaftLength) {
        var curve = List.of(
                new CurvePoint(new AngularSpeed(0), new Torque(3)),
                new CurvePoint(new AngularSpeed(300), new Torque(2)));
        return new DriveUnit(
                "drive",
                "drive",
                null,
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
                new Temperature(313.15),
                new TemperatureRise(100),
                new Time(1200),
                new Power(20),
                new Capacitance(2e-4),
                new Voltage(800),
                new Power(10),
                new Voltage(18),
                false,
                new Length(shaftDiameter),
                new Length(shaftLength),
                10);
    }

    static MountedAxis axis(
            Fastening fastening, double diameter, double length, double peak, double safety, boolean reversing) {
        return axis(MountingKind.FACE, null, fastening, diameter, length, peak, safety, reversing);
    }

    static MountedAxis axis(
            MountingKind kind,
            @Nullable Length height,
            Fastening fastening,
            double diameter,
            double length,
            double peak,
            double safety,
            boolean reversing) {
        return new MountedAxis(
                "x",
                2,
                new ShaftMounting(kind, height, fastening, safety),
                drive(diameter, length),
                new Torque(peak),
                null,
                null,
                reversing);
    }

    static FootKit kit(String id, String frame, double height, double price) {
        return new FootKit(
                id, "feet", new Money(BigDecimal.valueOf(price), "EUR"), List.of(), frame, new Length(height));
    }

    static FasteningPart part(String id, FasteningKind kind, double above, double upTo, double price) {
        return new FasteningPart(
                id,
                "part",
                new Money(BigDecimal.valueOf(price), "EUR"),
                List.of(),
                kind,
                new Length(above),
                new Length(upTo));
    }

    static MountingResult check(MountedAxis axis, FootKit... kits) {
        return new MountingCheck()
                .check(new MountingRequest(
                        List.of(axis),
                        List.of(kits),
                        List.of(
                                part("key", FasteningKind.KEY, 0, 1, 2),
                                part("clamp", FasteningKind.CLAMP, 0, 1, 2),
                                part("screw", FasteningKind.SET_SCREW, 0, 1, 2),
                                part("bushing", FasteningKind.BUSHING, 0, 1, 2),
                                part("bond", FasteningKind.BONDED, 0, 1, 2))));
    }
}
