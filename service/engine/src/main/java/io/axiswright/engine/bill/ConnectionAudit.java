package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.Catalogue;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Puts the ends of the cables into the ports and sees what is left over on either side, and on the bill. */
final class ConnectionAudit {

    private static final Set<CableUse> LAID_OUT =
            EnumSet.of(CableUse.HOST, CableUse.TRUNK, CableUse.SPUR, CableUse.CONTROL_SUPPLY);

    private final Connections connections;
    private final List<String> gaps = new ArrayList<>();

    private ConnectionAudit(Connections connections) {
        this.connections = connections;
    }

    /** Checks the cables on the lines of all sections. */
    static ConnectionCheck of(Connections connections, Catalogue catalogue, List<BillLine> lines) {
        return new ConnectionAudit(connections).check(bought(catalogue, lines));
    }

    /** Cables the design asks for, by item; what comes along with other items joins what those say. */
    private static Map<String, Integer> bought(Catalogue catalogue, List<BillLine> lines) {
        Set<String> cables = new HashSet<>();
        for (CableAssembly cable : catalogue.cableAssemblies()) {
            if (LAID_OUT.contains(cable.use())) {
                cables.add(cable.id());
            }
        }
        Map<String, Integer> bought = new HashMap<>();
        for (BillLine line : lines) {
            if (line.kind() == LineKind.REQUIRED && cables.contains(line.item())) {
                for (LineDemand demand : line.demands()) {
                    bought.merge(
                            line.item(),
                            demand.via() == null ? demand.quantity().intValue() : 0,
                            Integer::sum);
                }
            }
        }
        return bought;
    }

    private ConnectionCheck check(Map<String, Integer> bought) {
        Map<String, Integer> ends = new HashMap<>();
        Map<String, Integer> laid = new HashMap<>();
        for (CableLink link : connections.links()) {
            ends.merge(link.from(), 1, Integer::sum);
            ends.merge(link.to(), 1, Integer::sum);
            if (link.item() != null) {
                laid.merge(link.item(), 1, Integer::sum);
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
        compare(bought, laid);
        return new ConnectionCheck(
                ports,
                used,
                spare,
                bought.values().stream().mapToInt(Integer::intValue).sum(),
                2 * connections.links().size(),
                matched,
                List.copyOf(gaps));
    }

    private void compare(Map<String, Integer> bought, Map<String, Integer> laid) {
        Set<String> items = new TreeSet<>(bought.keySet());
        items.addAll(laid.keySet());
        for (String item : items) {
            int there = bought.getOrDefault(item, 0);
            int joined = laid.getOrDefault(item, 0);
            if (there != joined) {
                gaps.add("the bill has " + there + " of cable " + item + ", which joins " + joined + " times");
            }
        }
    }
}
