package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.DemandBasis;
import io.axiswright.engine.catalogue.DemandRule;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.catalogue.Shelf;
import io.axiswright.engine.condition.Facts;
import io.axiswright.engine.condition.Reach;
import io.axiswright.engine.design.ItemKind;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Ratio;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The demand rules of a catalogue over the parts of one design. */
final class DemandRules {

    /**
     * What a rule brings for every unit of an item it counts.
     *
     * @param rule the rule
     * @param item what it brings
     * @param perUnit how much
     */
    record Share(DemandRule rule, Item item, BigDecimal perUnit) {}

    private final List<DemandRule> rules;
    private final List<Asker> askers;
    private final Function<String, Item> items;
    private final Facts machine;
    private final Map<String, Facts> factsByAsker = new HashMap<>();
    private final Map<String, List<DemandRule>> countingItem = new HashMap<>();
    private final Map<ItemKind, List<DemandRule>> countingKind = new EnumMap<>(ItemKind.class);
    private final Map<String, Set<String>> unmet = new LinkedHashMap<>();

    /** The rules of a request's catalogue, whose items are found by their ids. */
    DemandRules(BillRequest request, Function<String, Item> items) {
        this.rules = request.catalogue().demandRuleList();
        this.askers = rules.isEmpty() ? List.of() : request.askers();
        this.items = items;
        this.machine = askers.stream()
                .filter(asker -> asker.reach() == Reach.MACHINE)
                .map(Asker::facts)
                .findFirst()
                .orElse(Facts.NONE);
        askers.forEach(asker -> factsByAsker.put(asker.name(), asker.facts()));
        for (DemandRule rule : rules) {
            if (rule.countedItem() != null) {
                countingItem
                        .computeIfAbsent(rule.countedItem(), _ -> new ArrayList<>())
                        .add(rule);
            } else if (rule.countedKind() != null) {
                countingKind
                        .computeIfAbsent(rule.countedKind(), _ -> new ArrayList<>())
                        .add(rule);
            }
        }
    }

    /** What the rules ask for that count parts of the design, rule by rule. */
    List<Demand> demands() {
        List<Demand> demands = new ArrayList<>();
        for (DemandRule rule : rules) {
            for (Asker asker : askers) {
                if (asker.reach() == reach(rule.per()) && rule.holds(asker.facts())) {
                    item(rule, asker.facts(), asker.name())
                            .ifPresent(item -> demands.add(new Demand(
                                    item.id(),
                                    BigDecimal.valueOf(rule.quantity()),
                                    rule.kind(),
                                    asker.name(),
                                    rule.reason(),
                                    asker.pointer(),
                                    asker.conditions(),
                                    rule.id())));
                }
            }
        }
        return demands;
    }

    private static @Nullable Reach reach(DemandBasis basis) {
        return switch (basis) {
            case MACHINE -> Reach.MACHINE;
            case AXIS -> Reach.AXIS;
            case CIRCUIT -> Reach.CIRCUIT;
            case ITEM, LENGTH -> null;
        };
    }

    /** What the rules bring that count an item, where it goes back to that demand: in the order of the rules, those of its kind last. */
    List<Share> shares(Item counted, Demand demand) {
        if (countingItem.isEmpty() && countingKind.isEmpty()) {
            return List.of();
        }
        Facts facts = factsByAsker.getOrDefault(demand.asker(), machine);
        return Stream.concat(
                        countingItem.getOrDefault(counted.id(), List.of()).stream(),
                        countingKind.getOrDefault(Shelf.of(counted).kind(), List.of()).stream())
                .filter(rule -> rule.holds(facts))
                .flatMap(rule ->
                        item(rule, facts, demand.asker())
                                .map(item -> new Share(rule, item, perUnit(rule, counted)))
                                .stream())
                .toList();
    }

    private static BigDecimal perUnit(DemandRule rule, Item counted) {
        BigDecimal quantity = BigDecimal.valueOf(rule.quantity());
        return rule.per() == DemandBasis.LENGTH ? quantity.multiply(metres(counted)) : quantity;
    }

    /** Metres in one unit of a cable. */
    private static BigDecimal metres(Item cable) {
        return switch (cable) {
            case BulkCable _ -> BigDecimal.ONE;
            case CableAssembly assembly -> Reels.metres(assembly.length());
            default -> throw new IllegalArgumentException(cable.id() + " has no length");
        };
    }

    private Optional<Item> item(DemandRule rule, Facts facts, String asker) {
        Optional<Item> item = rule.item(facts, items);
        if (item.isEmpty()) {
            unmet.computeIfAbsent(rule.id(), _ -> new LinkedHashSet<>()).add(asker);
        }
        return item;
    }

    /** A finding for each rule none of whose alternates was admissible for somebody it holds for, in the order of the rules. */
    List<Finding> findings(CatalogueSource source) {
        List<Finding> findings = new ArrayList<>();
        for (int k = 0; k < rules.size(); k++) {
            Set<String> inVain = unmet.getOrDefault(rules.get(k).id(), Set.of());
            if (!inVain.isEmpty()) {
                findings.add(FindingCode.BILL_RULE_UNMET.at(
                        rules.get(k).id(),
                        source.item("demandRules", k),
                        "the catalogue's rule: " + rules.get(k).reason(),
                        new Ratio(inVain.size()),
                        null));
            }
        }
        return findings;
    }
}
