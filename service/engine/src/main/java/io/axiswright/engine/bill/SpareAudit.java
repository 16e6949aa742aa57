package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.catalogue.Shelf;
import io.axiswright.engine.design.SpareRule;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Proves the spare parts from the finished lines: every item that has a rule has its spares, and nothing else is spare. */
final class SpareAudit {

    private final List<String> gaps = new ArrayList<>();
    private int wanted;
    private int met;

    private final List<SpareRule> rules;
    private final Map<String, BigDecimal> onMachine = new LinkedHashMap<>();
    private final Map<String, BigDecimal> spare = new HashMap<>();

    SpareAudit(BillRequest request) {
        this.rules = request.spares();
    }

    /** Takes down what a line has of its item. */
    void note(BillLine line) {
        switch (line.kind()) {
            case REQUIRED, CONDITIONAL -> {
                if (!rules.isEmpty()) {
                    onMachine.merge(line.item(), needed(line), BigDecimal::add);
                }
            }
            case SPARE -> spare.merge(line.item(), needed(line), BigDecimal::add);
            case OPTIONAL, CUSTOMER_SUPPLIED, NO_CHARGE -> {}
        }
    }

    /** Compares what has been taken down with the rules. */
    void check(Map<String, Item> items) {
        onMachine.forEach((id, needed) -> {
            Item item = Objects.requireNonNull(items.get(id));
            for (SpareRule rule : rules) {
                if (rule.kind() == Shelf.of(item).kind()) {
                    compare(item, rule.spares(needed), spare.remove(id));
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
