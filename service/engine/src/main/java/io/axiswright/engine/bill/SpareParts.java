package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Shelf;
import io.axiswright.engine.design.ItemKind;
import io.axiswright.engine.design.SpareRule;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The spare parts that go with what the machine has, by the design's rules: each kind of item has one at most. */
final class SpareParts {

    private final List<SpareRule> rules;
    private final Map<ItemKind, Integer> byKind = new EnumMap<>(ItemKind.class);

    SpareParts(List<SpareRule> rules) {
        this.rules = rules;
        for (int k = 0; k < rules.size(); k++) {
            byKind.putIfAbsent(rules.get(k).kind(), k);
        }
    }

    /** One draft for each item of the required drafts that has a rule, in their order. */
    List<Draft> of(List<Draft> drafts) {
        Map<Draft.Lot, Draft> first = new LinkedHashMap<>();
        Map<Draft.Lot, BigDecimal> onMachine = new LinkedHashMap<>();
        drafts.stream()
                .filter(draft -> draft.kind().section() == LineKind.REQUIRED)
                .filter(draft -> byKind.containsKey(kind(draft)))
                .forEach(draft -> {
                    first.putIfAbsent(draft.lot(), draft);
                    onMachine.merge(draft.lot(), draft.quantity(), BigDecimal::add);
                });
        return first.entrySet().stream()
                .map(entry -> spare(entry.getValue(), onMachine.getOrDefault(entry.getKey(), BigDecimal.ZERO)))
                .toList();
    }

    private static ItemKind kind(Draft draft) {
        return Shelf.of(draft.item()).kind();
    }

    private Draft spare(Draft of, BigDecimal onMachine) {
        int rule = byKind.getOrDefault(kind(of), 0);
        return new Draft(
                of.item(),
                LineKind.SPARE,
                List.of(new LineDemand(
                        rule,
                        "spare parts",
                        rules.get(rule).spares(onMachine),
                        "kept for the " + onMachine.toPlainString() + " of the machine",
                        "/design/spares/" + rule,
                        BillLine.id(of.kind(), of.item().id()))));
    }
}
