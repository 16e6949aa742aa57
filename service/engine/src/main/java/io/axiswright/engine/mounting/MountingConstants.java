package io.axiswright.engine.mounting;

import io.axiswright.engine.quantity.ResourceTable;
import java.util.Map;
import java.util.Objects;

/** What this discipline takes as given, read from its table; the table says where each value comes from. */
final class MountingConstants {

    private static final Map<String, Double> TABLE = ResourceTable.constants("/mounting/constants.csv");

    /** Yield strength in shear over yield strength. */
    static final double SHEAR_SHARE = value("shearShare");
    /** Longest length of key that counts, in shaft diameters. */
    static final double KEY_LENGTH_LIMIT = value("keyLengthLimit");
    /** Highest reduction of a bonded joint that allows for alternating load. */
    static final double BOND_REVERSING_REDUCTION = value("bondReversingReduction");
    /** How far the preload of a screw may miss, as a fraction. */
    static final double PRELOAD_SCATTER = value("preloadScatter");
    /** Coefficient of friction of a clamp hub nothing is known of. */
    static final double SMOOTH_FRICTION = value("smoothFriction");

    /** Poisson's ratio of hub and shaft. */
    static final double POISSON = value("poissonRatio");
    /** Least safety of set screws under changing load. */
    static final double SET_SCREW_SAFETY = value("setScrewSafety");

    private MountingConstants() {}

    private static double value(String name) {
        return Objects.requireNonNull(TABLE.get(name), name);
    }
}
