package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Exclusion;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Ratio;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Finds items on one machine that the catalogue says must not stand together. */
final class Exclusions {

    private Exclusions() {}

    /** A violation for each exclusion both of whose items are on the machine, in the order of the catalogue. */
    static List<Finding> findings(BillRequest request, List<BillLine> lines) {
        List<Exclusion> exclusions = request.catalogue().exclusionList();
        if (exclusions.isEmpty()) {
            return List.of();
        }
        Map<String, BigDecimal> onMachine = new HashMap<>();
        lines.stream()
                .filter(line -> stands(line.kind()))
                .forEach(line -> onMachine.merge(line.item(), line.quantity(), BigDecimal::add));
        List<Finding> findings = new ArrayList<>();
        for (int k = 0; k < exclusions.size(); k++) {
            Exclusion exclusion = exclusions.get(k);
            @Nullable BigDecimal one = onMachine.get(exclusion.item());
            @Nullable BigDecimal other = onMachine.get(exclusion.other());
            if (one != null && other != null) {
                findings.add(FindingCode.BILL_ITEMS_EXCLUDED.at(
                        exclusion.item() + " beside " + exclusion.other(),
                        request.catalogueSource().item("exclusions", k),
                        "the catalogue's exclusion: " + exclusion.reason(),
                        new Ratio(one.doubleValue()),
                        new Ratio(other.doubleValue())));
            }
        }
        return findings;
    }

    /** Whether what is on such a line is on the machine, whoever pays for it. */
    private static boolean stands(LineKind kind) {
        return switch (kind) {
            case REQUIRED, CONDITIONAL, CUSTOMER_SUPPLIED, NO_CHARGE -> true;
            case OPTIONAL, SPARE -> false;
        };
    }
}
