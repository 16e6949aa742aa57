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
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Finds items that the catalogue says must not stand together on one machine, and options that would bring that about. */
final class Exclusions {

    private Exclusions() {}

    /**
     * For each exclusion, in the order of the catalogue: a violation where both of its items are on the machine, a note where one is an
     * option beside the other.
     */
    static List<Finding> findings(BillRequest request, List<BillLine> lines) {
        List<Exclusion> exclusions = request.catalogue().exclusionList();
        if (exclusions.isEmpty()) {
            return List.of();
        }
        Map<String, BigDecimal> onMachine = quantities(lines, Exclusions::stands);
        Map<String, BigDecimal> offered = quantities(lines, kind -> kind == LineKind.OPTIONAL);
        List<Finding> findings = new ArrayList<>();
        for (int k = 0; k < exclusions.size(); k++) {
            Exclusion exclusion = exclusions.get(k);
            String place = request.catalogueSource().item("exclusions", k);
            if (onMachine.containsKey(exclusion.item()) && onMachine.containsKey(exclusion.other())) {
                findings.add(finding(FindingCode.BILL_ITEMS_EXCLUDED, exclusion, place, onMachine, onMachine));
            } else if (offered.containsKey(exclusion.item())) {
                option(exclusion, place, offered, onMachine).ifPresent(findings::add);
            } else if (offered.containsKey(exclusion.other())) {
                var turned = new Exclusion(exclusion.other(), exclusion.item(), exclusion.reason());
                option(turned, place, offered, onMachine).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static Map<String, BigDecimal> quantities(List<BillLine> lines, Predicate<LineKind> kind) {
        Map<String, BigDecimal> quantities = new HashMap<>();
        lines.stream()
                .filter(line -> kind.test(line.kind()))
                .forEach(line -> quantities.merge(line.item(), line.quantity(), BigDecimal::add));
        return quantities;
    }

    /** That the first item, an option, cannot be taken with the other one, be it on the machine or an option itself. */
    private static Optional<Finding> option(
            Exclusion exclusion, String place, Map<String, BigDecimal> offered, Map<String, BigDecimal> onMachine) {
        return Stream.of(onMachine, offered)
                .filter(quantities -> quantities.containsKey(exclusion.other()))
                .findFirst()
                .map(other -> finding(FindingCode.BILL_OPTION_EXCLUDED, exclusion, place, offered, other));
    }

    private static Finding finding(
            FindingCode code,
            Exclusion exclusion,
            String place,
            Map<String, BigDecimal> one,
            Map<String, BigDecimal> other) {
        return code.at(
                exclusion.item() + " beside " + exclusion.other(),
                place,
                "the catalogue's exclusion: " + exclusion.reason(),
                quantity(one, exclusion.item()),
                quantity(other, exclusion.other()));
    }

    private static Ratio quantity(Map<String, BigDecimal> quantities, String item) {
        return new Ratio(quantities.getOrDefault(item, BigDecimal.ZERO).doubleValue());
    }

    /** Whether what is on such a line is on the machine, whoever pays for it. */
    private static boolean stands(LineKind kind) {
        return switch (kind) {
            case REQUIRED, CONDITIONAL, CUSTOMER_SUPPLIED, NO_CHARGE -> true;
            case OPTIONAL, SPARE -> false;
        };
    }
}
