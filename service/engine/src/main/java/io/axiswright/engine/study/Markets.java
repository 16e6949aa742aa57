package io.axiswright.engine.study;

import io.axiswright.engine.bill.BillLine;
import io.axiswright.engine.finding.Finding;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Puts the studies of one machine in two markets beside each other. */
final class Markets {

    private record Remark(String code, String subject) {
        static Remark of(Finding finding) {
            return new Remark(finding.code().code(), finding.subject());
        }
    }

    private Markets() {}

    /** The study here, with the one of the other market and what differs from it. */
    static StudyResult beside(StudyResult here, StudyResult there) {
        return here.beside(new MarketComparison(
                there,
                MarketCircuits.differences(here, there),
                items(here, there),
                only(here.findings(), there.findings()),
                only(there.findings(), here.findings())));
    }

    private static List<Finding> only(List<Finding> findings, List<Finding> others) {
        Set<Remark> known = others.stream().map(Remark::of).collect(Collectors.toSet());
        return findings.stream()
                .filter(finding -> !known.contains(Remark.of(finding)))
                .toList();
    }

    private static List<ItemDifference> items(StudyResult here, StudyResult there) {
        Map<String, BillLine> first = lines(here);
        Map<String, BillLine> second = lines(there);
        List<ItemDifference> differences = new ArrayList<>();
        first.forEach((id, line) -> {
            BillLine other = second.get(id);
            BigDecimal quantity = other == null ? BigDecimal.ZERO : other.quantity();
            if (quantity.compareTo(line.quantity()) != 0) {
                differences.add(new ItemDifference(line.item(), line.quantity(), quantity, line.unit()));
            }
        });
        second.forEach((id, line) -> {
            if (!first.containsKey(id)) {
                differences.add(new ItemDifference(line.item(), BigDecimal.ZERO, line.quantity(), line.unit()));
            }
        });
        return List.copyOf(differences);
    }

    private static Map<String, BillLine> lines(StudyResult study) {
        Map<String, BillLine> lines = new LinkedHashMap<>();
        study.billOfMaterials().required().lines().forEach(line -> lines.put(line.id(), line));
        return lines;
    }
}
