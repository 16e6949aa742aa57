package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.GearUnit;
import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.DriveWish;
import io.axiswright.engine.design.GearChoice;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Torque;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Requests with drive units and gear units to choose among, drawn from a seed. */
final class RandomShop {

    private final RandomAxes random;

    RandomShop(long seed) {
        random = new RandomAxes(seed);
    }

    DutyRequest next(String id, int unitCount, int gearCount) {
        List<DriveUnit> units = new ArrayList<>();
        for (int k = 0; k < unitCount; k++) {
            double torque = 0.3 * Math.pow(300, random.between(0, 1));
            double inertia = 2e-5 * Math.pow(torque, 1.3);
            String frame = "F" + random.upTo(4);
            units.add(Fixtures.unit(
                    "u" + k, frame, torque, random.between(200, 900), inertia, 40, 100 + 10 * random.upTo(90)));
        }
        List<GearUnit> gears = new ArrayList<>();
        for (int k = 0; k < gearCount; k++) {
            double torque = 2 * Math.pow(1000, random.between(0, 1));
            gears.add(gear("g" + k, random.between(1.5, 12), torque, random.between(100, 1500), 20 + random.upTo(300)));
        }
        List<HoldingBrake> brakes = new ArrayList<>();
        List<VentilationKit> kits = new ArrayList<>();
        for (int frame = 0; frame < 4; frame++) {
            brakes.add(Fixtures.brake("b" + frame, "F" + frame, 2 * Math.pow(5, frame), 1e-6, 50));
            kits.add(Fixtures.kit("k" + frame, "F" + frame, 1.4, 40));
        }
        return new DutyRequest(
                Fixtures.SITE,
                Fixtures.MAINS,
                List.of(choosing(Fixtures.inZone(random.next(id)))),
                List.of(Fixtures.ZONE),
                units,
                brakes,
                kits,
                gears);
    }

    static GearUnit gear(String id, double ratio, double nominal, double speed, int price) {
        return new GearUnit(
                id,
                "invented gear unit",
                new Money(BigDecimal.valueOf(price), "EUR"),
                List.of(),
                List.of("F0", "F1", "F2"),
                ratio,
                0.95,
                null,
                new Inertia(2e-5),
                new Torque(0.02),
                new Torque(nominal),
                new Torque(2 * nominal),
                new AngularSpeed(speed),
                null);
    }

    /** The same axis, its gear to be chosen. */
    static Axis choosing(Axis axis) {
        return axis.with(DriveWish.like(axis.drive()).gear(GearChoice.CHOOSE).made());
    }
}
