package io.axiswright.engine.standard;

import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.quantity.ConductorSize;
import java.util.List;

/** Smallest copper conductors a machine code permits, outside enclosures. */
public final class SmallestSizes {

    private static final List<TableRow> NFPA_79 = TableFile.rows("nfpa-79-12-6");
    private static final List<TableRow> IEC = TableFile.rows("iec-60204-1-table-5");

    private SmallestSizes() {}

    /** NFPA 79 12.6. */
    public static Sourced<ConductorSize> northAmerican(CircuitUse use) {
        return NFPA_79.stream()
                .filter(r -> r.word("use", CircuitUse.class) == use)
                .map(r -> r.sourced(r.size()))
                .findFirst()
                .orElseThrow();
    }

    /** IEC 60204-1 Table 5; method B1 means single cores, the others cables of three or more cores. */
    public static Sourced<ConductorSize> iec(CircuitUse use, InstallationMethod method, ConductorClass construction) {
        String cores = switch (method) {
            case B1 -> construction == ConductorClass.CLASS_5 ? "SINGLE" : "SINGLE_STRANDED";
            case B2, C, E -> "MULTICORE";
        };
        return IEC.stream()
                .filter(r -> r.word("use", CircuitUse.class) == use
                        && r.text("cores").equals(cores))
                .map(r -> r.sourced(r.size()))
                .findFirst()
                .orElseThrow();
    }
}
