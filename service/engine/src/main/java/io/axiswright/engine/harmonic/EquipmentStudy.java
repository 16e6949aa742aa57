package io.axiswright.engine.harmonic;

import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.standard.EquipmentCurrentLimits;
import io.axiswright.engine.standard.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Holds the currents of a machine on the public low-voltage network against IEC 61000-3-12. */
final class EquipmentStudy {

    private static final int HIGHEST_ORDER = 40;
    private static final int LOWEST_WEIGHTED = 14;
    private static final double ABOVE = 16;
    private static final double UP_TO = 75;
    private static final double BALANCED = 0.05;
    private static final double LINE_CHOKE = 0.03;
    private static final double LINK_CHOKE = 0.04;
    private static final String POINTER = "/design/commonCoupling/publicLowVoltage";

    private final HarmonicRequest request;
    private final LineCurrents currents;
    private final double shortCircuit;
    private final List<Finding> findings;

    EquipmentStudy(HarmonicRequest request, LineCurrents currents, double shortCircuit, List<Finding> findings) {
        this.request = request;
        this.currents = currents;
        this.shortCircuit = shortCircuit;
        this.findings = findings;
    }

    /** Nothing where it is not asked for, or the standard does not hold. */
    @Nullable
    EquipmentEmission study() {
        if (!Boolean.TRUE.equals(request.coupling().publicLowVoltage())) {
            return null;
        }
        double reference = worst(line -> Math.hypot(
                currents.effective(line, 1) + request.others().get(line).si(), together(line, 2, false)));
        if (request.lines().size() != 3 || reference <= ABOVE || !Limits.within(reference, UP_TO)) {
            findings.add(FindingCode.HARMONIC_EQUIPMENT_NOT_JUDGED.at(
                    "the machine", POINTER, "IEC 61000-3-12, clause 1", new Current(reference), new Current(UP_TO)));
            return null;
        }
        EquipmentCurrentLimits table = table(reference);
        double ratio = shortCircuit / reference;
        List<EmissionShare> shares = new ArrayList<>();
        for (int order : new int[] {3, 5, 7, 9, 11, 13}) {
            add(shares, table, ratio, "i" + order, worst(line -> currents.effective(line, order)) / reference);
        }
        add(shares, table, ratio, "thc", worst(line -> together(line, 2, false)) / reference);
        add(shares, table, ratio, "pwhc", worst(line -> together(line, LOWEST_WEIGHTED, true)) / reference);
        double needed = 0;
        for (EmissionShare share : shares) {
            OptionalDouble one = table.ratioFor(share.quantity(), share.share());
            needed = Math.max(needed, one.orElse(Double.POSITIVE_INFINITY));
            if (one.isEmpty()) {
                findings.add(FindingCode.HARMONIC_EQUIPMENT_TOO_HIGH.at(
                        share.quantity(),
                        POINTER,
                        table.source().told(),
                        new Ratio(share.share()),
                        new Ratio(
                                table.limit(share.quantity(), Double.MAX_VALUE).orElseThrow())));
            }
        }
        boolean finite = Double.isFinite(needed);
        if (finite && shares.stream().anyMatch(s -> !Limits.within(s.share(), s.limit()))) {
            findings.add(FindingCode.HARMONIC_EQUIPMENT_RATIO_LOW.at(
                    "the machine",
                    POINTER,
                    table.source().told(),
                    new Current(needed * reference),
                    new Current(shortCircuit)));
        }
        return new EquipmentEmission(table, new Current(reference), ratio, finite ? needed : null, List.copyOf(shares));
    }

    private EquipmentCurrentLimits table(double reference) {
        if (worst(line -> currents.effective(line, 3)) >= BALANCED * reference) {
            return EquipmentCurrentLimits.ANY;
        }
        return request.rectifiers().stream()
                        .allMatch(
                                r -> r.input().line() >= LINE_CHOKE || r.input().link() >= LINK_CHOKE)
                ? EquipmentCurrentLimits.BALANCED_WITH_CHOKES
                : EquipmentCurrentLimits.BALANCED;
    }

    private static void add(
            List<EmissionShare> shares, EquipmentCurrentLimits table, double ratio, String quantity, double share) {
        table.limit(quantity, ratio).ifPresent(limit -> shares.add(new EmissionShare(quantity, share, limit)));
    }

    private double worst(IntToDoubleFunction ofLine) {
        return IntStream.range(0, request.lines().size())
                .mapToDouble(ofLine)
                .max()
                .orElseThrow();
    }

    /** Effective value of the orders from one to 40, each order weighted with itself where asked for, A. */
    private double together(int line, int from, boolean weighted) {
        double squares = 0;
        for (int h = from; h <= HIGHEST_ORDER; h++) {
            double one = currents.effective(line, h);
            squares += one * one * (weighted ? h : 1);
        }
        return Math.sqrt(squares);
    }
}
