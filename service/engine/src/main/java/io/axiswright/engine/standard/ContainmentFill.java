package io.axiswright.engine.standard;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How much of the inside of conduit and trunking cables may fill. */
public final class ContainmentFill {

    /** Up to this length a conduit is a nipple: 24 in (NFPA 70 Chapter 9 note 4; 310.15(C)(1)(b)), in m. */
    private static final double NIPPLE = 24 * 0.0254;

    /** What the limit depends on. */
    private enum Kind {
        CONDUIT,
        SHORT_CONDUIT,
        TRUNKING
    }

    private static final Map<CodeBasis, Map<Kind, StepTable<Ratio>>> TABLES =
            Factors.byKind(TableFile.rows("containment-fill"), Kind.class, "cables_up_to", "fraction");

    private ContainmentFill() {}

    /** Whether a stretch is so short that NFPA 70 makes an exception for it; not where its length is not known. */
    public static boolean isShort(@Nullable Length length) {
        return length != null && Limits.within(length.si(), NIPPLE);
    }

    /** The most of a conduit's cross-section that so many cables, one or more, may fill. */
    public static Sourced<Ratio> ofConduit(CodeBasis basis, @Nullable Length length, int cables) {
        return of(basis, isShort(length) ? Kind.SHORT_CONDUIT : Kind.CONDUIT, cables);
    }

    /** The same for trunking. */
    public static Sourced<Ratio> ofTrunking(CodeBasis basis, int cables) {
        return of(basis, Kind.TRUNKING, cables);
    }

    private static Sourced<Ratio> of(CodeBasis basis, Kind kind, int cables) {
        return Optional.ofNullable(TABLES.get(basis))
                .map(kinds -> kinds.get(kind))
                .flatMap(table -> table.at(cables))
                .orElseThrow();
    }
}
