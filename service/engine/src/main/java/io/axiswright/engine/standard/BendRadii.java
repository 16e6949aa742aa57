package io.axiswright.engine.standard;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import java.util.Map;
import java.util.Optional;

/** Smallest bend radii of power cables, as multiples of their outer diameters. */
public final class BendRadii {

    private static final double MILLIMETRE = 1e-3;

    /** How a cable is used. */
    public enum Use {
        /** A cable for fixed installation. */
        FIXED,
        /** A flexible cable laid fixed. */
        FLEXIBLE,
        /** A cable guided in service, as in a drag chain. */
        MOVING
    }

    private static final Map<CodeBasis, Map<Use, StepTable<Ratio>>> TABLES =
            Factors.byKind(TableFile.rows("bend-radii"), Use.class, "outer_diameter_up_to", "multiple");

    private BendRadii() {}

    /** The smallest radius at the inner edge, as a multiple of the outer diameter. */
    public static Sourced<Ratio> multiple(CodeBasis basis, Use use, Length outerDiameter) {
        return Optional.ofNullable(TABLES.get(basis))
                .map(uses -> uses.get(use))
                .flatMap(table -> table.at(outerDiameter.si() / MILLIMETRE))
                .orElseThrow();
    }
}
