package io.axiswright.engine.mounting;

import io.axiswright.engine.design.KeyFastening;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.standard.KeySize;
import io.axiswright.engine.standard.KeySizes;
import java.util.Optional;

/**
 * A parallel key on a shaft. Shear: T = 0.577 S_y · d b L/2; bearing on half the height: T = S_y · d h L/4. Length beyond
 * 1.5 shaft diameters does not count, as the twist of the shaft loads the near end.
 *
 * @param size the key
 * @param diameter shaft diameter
 * @param fastening the fastening as stated
 */
record ShaftKey(KeySize size, Length diameter, KeyFastening fastening) {

    private static final double SIXTEENTH_INCH = 0.0254 / 16;
    private static final double TOLERANCE = 1e-6;

    /**
     * The standard key of the shaft, of the inch series if its diameter is in sixteenths of an inch; none if there is none. Of those
     * diameters only 63.5, 127 and 190.5 mm are whole or half millimetres too, and none of these is a usual metric shaft.
     */
    static Optional<ShaftKey> of(Length diameter, KeyFastening fastening) {
        double sixteenths = diameter.si() / SIXTEENTH_INCH;
        boolean inch = Math.abs(sixteenths - Math.rint(sixteenths)) * SIXTEENTH_INCH < TOLERANCE;
        return (inch ? KeySizes.inch(diameter) : KeySizes.metric(diameter))
                .map(size -> new ShaftKey(size, diameter, fastening));
    }

    /** The longest length that counts. */
    Length longestLength() {
        return new Length(MountingConstants.KEY_LENGTH_LIMIT * diameter.si());
    }

    Capacity capacity() {
        double length = Math.min(fastening.engagedLength().si(), longestLength().si());
        double shear = perLength(FasteningMode.SHEAR) * length;
        double bearing = perLength(FasteningMode.BEARING) * length;
        return shear < bearing
                ? new Capacity(
                        new Torque(shear),
                        FasteningMode.SHEAR,
                        "k · S_y · d · b · L / 2",
                        Derivation.inputs(
                                "k",
                                new Ratio(MountingConstants.SHEAR_SHARE),
                                "S_y",
                                fastening.yieldStrength(),
                                "d",
                                diameter,
                                "b",
                                size.width(),
                                "L",
                                new Length(length)),
                        "τ = 2T/(d·b·L), handbook; key size by " + size.clause())
                : new Capacity(
                        new Torque(bearing),
                        FasteningMode.BEARING,
                        "S_y · d · h · L / 4",
                        Derivation.inputs(
                                "S_y",
                                fastening.yieldStrength(),
                                "d",
                                diameter,
                                "h",
                                size.height(),
                                "L",
                                new Length(length)),
                        "p = 4T/(d·h·L), handbook; key size by " + size.clause());
    }

    /** The length that carries a torque, if it counts whole. */
    Optional<Length> lengthFor(Torque torque) {
        double weakest = Math.min(perLength(FasteningMode.SHEAR), perLength(FasteningMode.BEARING));
        return Optional.of(new Length(torque.si() / weakest))
                .filter(length -> length.si() <= longestLength().si());
    }

    private double perLength(FasteningMode mode) {
        double yield = fastening.yieldStrength().si();
        double d = diameter.si();
        return mode == FasteningMode.SHEAR
                ? MountingConstants.SHEAR_SHARE * yield * d * size.width().si() / 2
                : yield * d * size.height().si() / 4;
    }
}
