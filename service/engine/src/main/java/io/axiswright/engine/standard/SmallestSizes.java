package io.axiswright.engine.standard;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.quantity.ConductorSize;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** Smallest conductors a machine code permits, outside enclosures. */
public final class SmallestSizes {

    /** A row read once; every circuit asks for one. */
    private record Row(CircuitUse use, String cores, Sourced<ConductorSize> smallest) {}

    private static final List<Row> NFPA_79 =
            TableFile.rows("nfpa-79-12-6").stream().map(r -> row(r, "")).toList();
    private static final List<Row> IEC = TableFile.rows("iec-60204-1-table-5").stream()
            .map(r -> row(r, r.text("cores")))
            .toList();

    private static final Sourced<ConductorSize> IN_PARALLEL = TableFile.rows("nec-310-10-g").stream()
            .map(r -> r.sourced(r.size()))
            .toList()
            .getFirst();

    private static final Map<CodeBasis, Sourced<ConductorSize>> ALUMINIUM =
            TableFile.rows("smallest-aluminium").stream()
                    .collect(Collectors.toMap(r -> r.word("basis", CodeBasis.class), r -> r.sourced(r.size())));

    private SmallestSizes() {}

    /** Of aluminium: NFPA 70 310.3(A), IEC 60204-1 12.2. */
    public static Sourced<ConductorSize> aluminium(CodeBasis basis) {
        return Objects.requireNonNull(ALUMINIUM.get(basis));
    }

    /** NFPA 70 310.10(G): smallest conductors in parallel. */
    public static Sourced<ConductorSize> northAmericanInParallel() {
        return IN_PARALLEL;
    }

    /** NFPA 79 12.6, copper. */
    public static Sourced<ConductorSize> northAmerican(CircuitUse use) {
        return smallest(NFPA_79, use, "");
    }

    /** IEC 60204-1 Table 5, copper; methods B1 and F mean single cores, the others cables of three or more cores. */
    public static Sourced<ConductorSize> iec(CircuitUse use, InstallationMethod method, ConductorClass construction) {
        String cores = switch (method) {
            case B1, F -> construction == ConductorClass.CLASS_5 ? "SINGLE" : "SINGLE_STRANDED";
            case B2, C, E -> "MULTICORE";
        };
        return smallest(IEC, use, cores);
    }

    private static Sourced<ConductorSize> smallest(List<Row> rows, CircuitUse use, String cores) {
        for (Row row : rows) {
            if (row.use() == use && row.cores().equals(cores)) {
                return row.smallest();
            }
        }
        throw new IllegalStateException("no smallest size for " + use + " " + cores);
    }

    private static Row row(TableRow row, String cores) {
        return new Row(row.word("use", CircuitUse.class), cores, row.sourced(row.size()));
    }
}
