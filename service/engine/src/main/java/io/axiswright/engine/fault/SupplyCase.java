package io.axiswright.engine.fault;

import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.supply.Connection;
import org.jspecify.annotations.Nullable;

/**
 * The supply in one of the two cases, highest and lowest fault currents, as an equivalent voltage source (IEC 60909-0).
 *
 * @param lineToNeutral voltage of a line to neutral with the voltage factor, in V
 * @param lineToLine voltage between lines with the voltage factor, in V; 0 where there is one line
 * @param impedance impedance of one line up to the terminals, in ohm
 * @param earthLoop impedance of the earth-fault loop up to the terminals, in ohm; NaN where not known
 * @param resistanceRatio its resistance over its reactance; absent where it is added by magnitude, which is the most
 *     impedance any angle gives
 */
record SupplyCase(
        double lineToNeutral,
        double lineToLine,
        double impedance,
        double earthLoop,
        @Nullable Double resistanceRatio) {

    /** The currents of faults at the end of a path, of every kind a circuit so connected can have. */
    FaultCurrents at(Path path, Connection connection) {
        double line = total(impedance, path.line());
        boolean three = connection == Connection.THREE_PHASE;
        boolean two = three || connection == Connection.LINE_TO_LINE;
        return new FaultCurrents(
                three ? new Current(lineToNeutral / line) : null,
                two ? new Current(lineToLine / (2 * line)) : null,
                path.neutral() == null
                        ? null
                        : new Current(
                                lineToNeutral / total(impedance, path.line().plus(path.neutral()))),
                toEarth(path));
    }

    private @Nullable Current toEarth(Path path) {
        double loop = loop(path);
        return Double.isNaN(loop) ? null : new Current(lineToNeutral / loop);
    }

    /** The earth-fault loop at the end of a path (Z_s), in ohm; NaN where not known. */
    double loop(Path path) {
        return path.protective() == null
                ? Double.NaN
                : total(earthLoop, path.line().plus(path.protective()));
    }

    /** One line from the source to the end of a path. */
    Impedance line(Path path) {
        double ratio = resistanceRatio == null ? 0 : resistanceRatio;
        return Impedance.ofRatio(impedance, ratio).plus(path.line());
    }

    /** One line from the source to the end of a conductor, in ohm. */
    double total(Impedance conductors) {
        return total(impedance, conductors);
    }

    private double total(double supply, Impedance conductors) {
        return resistanceRatio == null
                ? supply + conductors.magnitude()
                : Impedance.ofRatio(supply, resistanceRatio).plus(conductors).magnitude();
    }
}
