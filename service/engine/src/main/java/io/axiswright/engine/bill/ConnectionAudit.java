package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.quantity.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Puts the ends of the cables into the ports and sees what is left over on either side, and on the bill. */
final class ConnectionAudit {

    /** Metres that one length of cable may be bought longer than it is laid: whole centimetres. */
    private static final double LENGTH_STEP = 0.01;

    /** Metres: what sums of lengths differ by beyond is rounding. */
    private static final double ROUNDING = 1e-6;

    private final Connections connections;
    private final List<String> gaps = new ArrayList<>();

    private ConnectionAudit(Connections connections) {
        this.connections = connections;
    }

    /** Checks the cables on the lines of all sections. */
    static ConnectionCheck of(Connections connections, Catalogue catalogue, List<BillLine> lines) {
        return new ConnectionAudit(connections)
                .check(bought(catalogue.cableAssemblies(), lines), bought(catalogue.bulkCables(), lines));
    }

    /** Of these cables what the design asks for, by item; what comes along with other items joins what those say. */
    private static Map<String, BigDecimal> bought(List<? extends Item> cables, List<BillLine> lines) {
        Set<String> ids = new HashSet<>();
        cables.forEach(cable -> ids.add(cable.id()));
        Map<String, BigDecimal> bought = new HashMap<>();
        for (BillLine line : lines) {
            if (line.kind() == LineKind.REQUIRED && ids.contains(line.item())) {
                for (LineDemand demand : line.demands()) {
                    if (demand.via() == null && demand.rule() == null) {
                        bought.merge(line.item(), demand.quantity(), BigDecimal::add);
                    }
                }
            }
        }
        return bought;
    }

    private ConnectionCheck check(Map<String, BigDecimal> cables, Map<String, BigDecimal> metres) {
        Map<String, Integer> ends = new HashMap<>();
        Map<String, Integer> laid = new HashMap<>();
        Map<String, List<Length>> lengths = new HashMap<>();
        for (CableLink link : connections.links()) {
            ends.merge(link.from(), 1, Integer::sum);
            ends.merge(link.to(), 1, Integer::sum);
            if (link.item() != null && link.length() == null) {
                laid.merge(link.item(), 1, Integer::sum);
            } else if (link.item() != null && link.length() != null) {
                lengths.computeIfAbsent(link.item(), _ -> new ArrayList<>()).add(link.length());
            }
        }
        int ports = 0;
        int used = 0;
        int spare = 0;
        int matched = 0;
        for (PortBank bank : connections.banks()) {
            int taken = ends.getOrDefault(bank.owner(), 0);
            ends.remove(bank.owner());
            ports += bank.ports();
            used += Math.min(taken, bank.ports());
            spare += bank.spare();
            matched += Math.min(taken, bank.ports());
            if (taken + bank.spare() != bank.ports()) {
                gaps.add(bank.owner() + ": " + taken + " used and " + bank.spare() + " spare of " + bank.ports());
            }
        }
        for (String terminal : new TreeSet<>(ends.keySet())) {
            if (connections.terminals().contains(terminal)) {
                matched += ends.getOrDefault(terminal, 0);
            } else {
                gaps.add("a cable ends at " + terminal + ", which is not there");
            }
        }
        compare(cables, laid);
        compareLengths(metres, lengths);
        return new ConnectionCheck(
                ports,
                used,
                spare,
                cables.values().stream().mapToInt(BigDecimal::intValue).sum(),
                lengths.values().stream().mapToInt(List::size).sum(),
                2 * connections.links().size(),
                matched,
                connections.links(),
                List.copyOf(gaps));
    }

    private void compare(Map<String, BigDecimal> bought, Map<String, Integer> laid) {
        for (String item : either(bought.keySet(), laid.keySet())) {
            int there = bought.getOrDefault(item, BigDecimal.ZERO).intValue();
            int joined = laid.getOrDefault(item, 0);
            if (there != joined) {
                gaps.add("the bill has " + there + " of cable " + item + ", which joins " + joined + " times");
            }
        }
    }

    /** Each length is bought as long as it is laid, or to the next centimetre. */
    private void compareLengths(Map<String, BigDecimal> bought, Map<String, List<Length>> laid) {
        for (String item : either(bought.keySet(), laid.keySet())) {
            double there = bought.getOrDefault(item, BigDecimal.ZERO).doubleValue();
            List<Length> pieces = laid.getOrDefault(item, List.of());
            double joined = pieces.stream().mapToDouble(Length::si).sum();
            if (there < joined - ROUNDING || there > joined + LENGTH_STEP * pieces.size() + ROUNDING) {
                gaps.add("the bill has " + there + " m of cable " + item + ", of which " + joined + " m are laid");
            }
        }
    }

    private static Set<String> either(Set<String> one, Set<String> other) {
        Set<String> either = new TreeSet<>(one);
        either.addAll(other);
        return either;
    }
}
