package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.SupplySystem;
import java.util.List;

/**
 * The voltage the rectifiers keep a bus at: the peak of the line, √2·V. Of several rectifiers on one bus the highest counts;
 * drive units fed from a DC bus have none, so they count only where no other unit is on the bus, and then something else
 * keeps them at their rated voltage and follows the line's tolerance.
 */
final class RectifiedVoltage {

    /** A device stands this much over its rated voltage (± 10 %, IEC 60038). */
    private static final double HIGHEST = 1.1;

    private RectifiedVoltage() {}

    /** Rectified voltage of a bus at nominal line, V. */
    static double nominal(List<BrakingAxis> axes, Mains mains) {
        return axes.stream()
                .filter(axis -> axis.driveUnit().feed() != Feed.DC_BUS)
                .mapToDouble(axis -> Math.sqrt(2) * lineVoltage(axis, mains))
                .max()
                .orElseGet(() -> axes.stream()
                        .mapToDouble(axis -> axis.driveUnit().ratedVoltage().si())
                        .max()
                        .orElse(0));
    }

    /** The highest line voltage that the rating of every unit fed from the mains allows, V; infinite without one. */
    static double highestLine(List<BrakingAxis> axes, Mains mains) {
        return axes.stream()
                .filter(axis -> axis.driveUnit().feed() != Feed.DC_BUS)
                .mapToDouble(axis -> mains.voltage().si()
                        * HIGHEST
                        * axis.driveUnit().ratedVoltage().si()
                        / lineVoltage(axis, mains))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** One-phase units may stand between line and neutral or between lines: whichever is nearer to their rated voltage. */
    private static double lineVoltage(BrakingAxis axis, Mains mains) {
        DriveUnit unit = axis.driveUnit();
        if (axis.throughTransformer()) {
            return unit.ratedVoltage().si();
        }
        double line = mains.voltage().si();
        if (unit.feed() == Feed.THREE_PHASE) {
            return line;
        }
        double neutral = lineToNeutral(mains.system(), line);
        double rated = unit.ratedVoltage().si();
        return Math.abs(Math.log(neutral / rated)) < Math.abs(Math.log(line / rated)) ? neutral : line;
    }

    private static double lineToNeutral(SupplySystem system, double line) {
        return switch (system) {
            case ONE_PHASE_TWO_WIRE, THREE_PHASE_THREE_WIRE -> line;
            case ONE_PHASE_THREE_WIRE -> line / 2;
            case THREE_PHASE_FOUR_WIRE -> line / Math.sqrt(3);
        };
    }
}
