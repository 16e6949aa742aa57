package io.axiswright.engine.duty;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.AltitudeRule;
import io.axiswright.engine.catalogue.CurvePoint;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.catalogue.HousingHeat;
import io.axiswright.engine.catalogue.ShaftBearing;
import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Cycle;
import io.axiswright.engine.design.DriveSelection;
import io.axiswright.engine.design.DriveWish;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Gear;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.MotionLaw;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.NutRating;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.RotaryTable;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.ScrewSupport;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Capacitance;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
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

/** Invented axes and drive units for tests. */
final class Fixtures {

    static final Site SITE = new Site(new Temperature(313.15), new Temperature(313.15), new Length(0));

    static final Mains MAINS = new Mains(
            SupplySystem.THREE_PHASE_FOUR_WIRE, new Voltage(400), 0.1, 0.1, new Frequency(50), new Current(10_000));

    static final DriveSelection ANY = DriveWish.any();

    static final StopZone ZONE = new StopZone("zone", StopCategory.CATEGORY_1, new Time(0.1), new Time(0.2), null);

    private Fixtures() {}

    static Axis axis(String id, Mechanism mechanism, @Nullable Gear gear, DriveSelection drive, Segment... segments) {
        return geared(id, mechanism, gear == null ? List.of() : List.of(gear), drive, segments);
    }

    static Axis geared(String id, Mechanism mechanism, List<Gear> gears, DriveSelection drive, Segment... segments) {
        Length zero = new Length(0);
        return new Axis(
                id,
                null,
                mechanism,
                gears,
                null,
                new Cycle(List.of(segments)),
                new Position(zero, zero, zero),
                null,
                null,
                new Frequency(250),
                drive,
                null);
    }

    static Axis inZone(Axis axis) {
        return new Axis(
                axis.id(),
                axis.description(),
                axis.mechanism(),
                axis.gears(),
                axis.couplingInertia(),
                axis.cycle(),
                axis.position(),
                ZONE.id(),
                axis.busGroup(),
                axis.commandRate(),
                axis.drive(),
                axis.mounting());
    }

    static Move travel(double metres, double seconds, MotionLaw law) {
        return new Move(new Length(metres), new Time(seconds), law, null, null);
    }

    static Move turn(double radians, double seconds, MotionLaw law) {
        return new Move(new Angle(radians), new Time(seconds), law, null, null);
    }

    static Dwell dwell(double seconds) {
        return new Dwell(new Time(seconds), null, null, false);
    }

    static Hoist hoist(double diameter, double inertia, double load, double counterweight, double efficiency) {
        return new Hoist(
                new Length(diameter),
                new Inertia(inertia),
                new Mass(load),
                new Mass(counterweight),
                1,
                efficiency,
                null);
    }

    static RotaryTable table(double inertia, double friction, double efficiency) {
        return new RotaryTable(new Inertia(inertia), new Torque(friction), efficiency, null);
    }

    static Gear gear(double ratio, double efficiency) {
        return new Gear(ratio, efficiency, null, new Inertia(0));
    }

    /** A three-phase drive unit whose figures all follow from its continuous standstill torque. */
    static DriveUnit unit(String id, double torque, @Nullable Integer price) {
        return unit(id, "F" + (int) Math.ceil(Math.log(torque + 1)), torque, 400, price);
    }

    static DriveUnit unit(String id, String frame, double torque, double topSpeed, @Nullable Integer price) {
        return unit(id, frame, torque, topSpeed, 2e-5 * Math.pow(torque, 1.3), 60, price);
    }

    static DriveUnit unit(
            String id,
            String frame,
            double torque,
            double topSpeed,
            double rotorInertia,
            double timeConstant,
            @Nullable Integer price) {
        return new DriveUnit(
                id,
                "invented drive unit",
                money(price),
                List.of(),
                frame,
                Feed.THREE_PHASE,
                new Voltage(400),
                new Current(0.6 * torque),
                new Current(16),
                1,
                new Current(10_000),
                new Current(0.003),
                new Inertia(rotorInertia),
                new MotorConstant(0.12 * torque),
                List.of(point(0, torque), point(topSpeed, 0.8 * torque)),
                List.of(point(0, 3 * torque), point(0.7 * topSpeed, 3 * torque), point(topSpeed, 0.9 * torque)),
                new Temperature(313.15),
                new TemperatureRise(100),
                new Time(timeConstant),
                new Power(12),
                new Capacitance(2e-4),
                new Voltage(800),
                new Power(8),
                new Voltage(20.4),
                true,
                new Length(0.014),
                new Length(0.03),
                10);
    }

    /** The same drive unit with another rated temperature rise. */
    static DriveUnit withRise(DriveUnit u, double rise) {
        return with(u, rise, null, null);
    }

    /** The same drive unit with another rated temperature rise, a housing and an altitude rule. */
    static DriveUnit with(
            DriveUnit u, double rise, @Nullable HousingHeat housing, @Nullable AltitudeRule electronicsAltitude) {
        return Copies.with(
                Copies.with(Copies.with(u, "ratedRise", new TemperatureRise(rise)), "housing", housing),
                "electronicsAltitude",
                electronicsAltitude);
    }

    /** The same drive unit with a shaft of which something is known. */
    static DriveUnit withShaft(DriveUnit u, ShaftBearing shaft) {
        return Copies.with(u, "shaftBearing", shaft);
    }

    static HoldingBrake brake(String id, String frame, double torque, double inertia, @Nullable Integer price) {
        return new HoldingBrake(
                id,
                "invented holding brake",
                money(price),
                List.of(),
                frame,
                new Torque(torque),
                new Inertia(inertia),
                new Power(12),
                new Power(12),
                new Voltage(21.6),
                new Time(0.05),
                new Time(0.03),
                null,
                null);
    }

    static VentilationKit kit(String id, String frame, double factor, @Nullable Integer price) {
        return new VentilationKit(
                id,
                "invented fan",
                money(price),
                List.of(),
                frame,
                factor,
                new Power(20),
                new Voltage(230),
                Feed.ONE_PHASE);
    }

    static CurvePoint point(double speed, double torque) {
        return new CurvePoint(new AngularSpeed(speed), new Torque(torque));
    }

    static DutyRequest request(List<Axis> axes, List<DriveUnit> units) {
        return new DutyRequest(SITE, MAINS, axes, List.of(ZONE), units, List.of(), List.of(), List.of());
    }

    static AxisDuty size(Axis axis, DriveUnit... units) {
        return new DutySizing()
                .size(request(List.of(axis), List.of(units)))
                .axes()
                .getFirst();
    }

    private static @Nullable Money money(@Nullable Integer price) {
        return price == null ? null : new Money(BigDecimal.valueOf(price), "EUR");
    }

    /** A ball screw of 10 mm lead and 20 mm diameter with 0.9 of efficiency and no friction beside that. */
    static Screw screw(
            double length, double load, double slope, @Nullable ScrewSupport support, @Nullable NutRating nut) {
        return new Screw(
                new Length(0.01),
                new Length(0.02),
                new Length(length),
                new Mass(load),
                new Angle(slope),
                0.9,
                null,
                null,
                null,
                null,
                null,
                support,
                nut);
    }
}
