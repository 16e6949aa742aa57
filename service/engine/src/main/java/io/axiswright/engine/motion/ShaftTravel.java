package io.axiswright.engine.motion;

import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.Conveyor;
import io.axiswright.engine.design.Crank;
import io.axiswright.engine.design.Custom;
import io.axiswright.engine.design.DirectDrive;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.RackAndPinion;
import io.axiswright.engine.design.RotaryTable;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.Winder;
import io.axiswright.engine.numeric.Polynomial;

/** Where the load comes to when the mechanism's shaft turns: the position that its cycle states. */
public final class ShaftTravel {

    private ShaftTravel() {}

    /**
     * The position of the load, m or rad.
     *
     * @param mechanism the mechanism
     * @param from position of the load at angle 0, m or rad
     * @param angle how far its shaft has turned, rad
     */
    public static Polynomial of(Mechanism mechanism, double from, Polynomial angle) {
        return switch (mechanism) {
            case Screw screw -> even(from, angle, screw.lead().si() / (2 * Math.PI));
            case Belt belt -> even(from, angle, belt.pulleyDiameter().si() / 2);
            case RackAndPinion rack -> even(from, angle, rack.pitchDiameter().si() / 2);
            case Conveyor conveyor -> even(from, angle, conveyor.drumDiameter().si() / 2);
            case Hoist hoist -> even(from, angle, hoist.drumDiameter().si() / 2 / hoist.reeving());
            case RotaryTable _, DirectDrive _, Crank _, Custom _ -> even(from, angle, 1);
            case Winder winder ->
                switch (winder.motion()) {
                    case SHAFT -> even(from, angle, 1);
                    case LINE -> wound(winder, from, angle);
                };
        };
    }

    private static Polynomial even(double from, Polynomial angle, double perRadian) {
        return angle.times(perRadian).plus(from);
    }

    /** The radius grows by thickness/(2·pi) per radian, so a length of R·angle + thickness·angle²/(4·pi) is wound. */
    private static Polynomial wound(Winder winder, double from, Polynomial angle) {
        double core = winder.coreDiameter().si() / 2;
        double start = winder.startDiameter().si() / 2;
        double thickness = winder.thickness().si();
        double radius = Math.sqrt(Math.max(core * core, start * start + thickness * from / Math.PI));
        return angle.times(radius)
                .plus(angle.times(angle).times(thickness / (4 * Math.PI)))
                .plus(from);
    }
}
