package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.design.SpareRule;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Proves the spare parts from the finished lines: every item that has a rule has its spares, and nothing else is spare. */
final class SpareAudit {

    private final List<String> gaps = new ArrayList<>();
    private int wanted;
    private int met;

    SpareAudit(BillRequest request, List<BillLine> lines) {
        Map<String, BigDecimal> onMachine = new HashMap<>();
        Map<String, BigDecimal> spare = new HashMap<>();
        for (var line : lines) {
            switch (line.kind()) {
                case REQUIRED, CONDITIONAL -> onMachine.merge(line.item(), needed(line), BigDecimal::add);
                case SPARE -> spare.merge(line.item(), needed(line), BigDecimal::add);
                case OPTIONAL, CUSTOMER_SUPPLIED, NO_CHARGE -> {}
            }
        }
        request.catalogue()
                .items()
                .filter(item -> onMachine.containsKey(item.id()))
                .forEach(item -> {
                    for (SpareRule rule : request.spares()) {
                        if (rule.kind() == Shelf.of(item).kind()) {
                            compare(
                                    item,
                                    rule.spares(onMachine.getOrDefault(item.id(), BigDecimal.ZERO)),
                                    spare.remove(item.id()));
                        }
                    }
                });
        spare.keySet().stream().sorted().forEach(id -> gaps.add("no rule asks for spares of " + id));
    }

    /** What is needed of it; whole reels of a cable may be more. */
    private static BigDecimal needed(BillLine line) {
        return line.unit() == SaleUnit.PIECE ? line.quantity() : line.demanded();
    }

    private void compare(Item item, BigDecimal asked, @Nullable BigDecimal there) {
        wanted++;
        if (there != null && there.compareTo(asked) == 0) {
            met++;
        } else {
            gaps.add("there are " + (there == null ? "no" : there.toPlainString()) + " spares of " + item.id()
                    + " where " + asked.toPlainString() + " are asked for");
        }
    }

    /** Items that must have spares. */
    int wanted() {
        return wanted;
    }

    /** How many of them have as many as their rule asks for. */
    int met() {
        return met;
    }

    List<String> gaps() {
        return gaps;
    }
}
