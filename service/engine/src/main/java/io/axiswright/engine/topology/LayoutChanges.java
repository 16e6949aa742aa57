package io.axiswright.engine.topology;

import io.axiswright.engine.design.KeptGateway;
import io.axiswright.engine.design.KeptLayout;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Holds a layout against the kept one. Gateways have no name that lasts: those of one place count as the same that have most
 * axes in common.
 */
final class LayoutChanges {

    private record Pair(PlacedGateway now, KeptGateway kept, long common) {}

    private final List<PlacedGateway> gateways;
    private final List<KeptGateway> kept;
    private final Map<PlacedGateway, KeptGateway> same = new LinkedHashMap<>();
    private final List<LayoutChange> changes = new ArrayList<>();

    private LayoutChanges(List<PlacedGateway> gateways, List<KeptGateway> kept) {
        this.gateways = gateways;
        this.kept = kept;
        match();
    }

    /** Every difference, gateways first; none without a kept layout. */
    static List<LayoutChange> of(TopologyRequest request, List<PlacedGateway> gateways) {
        KeptLayout keep = request.network().keep();
        if (keep == null) {
            return List.of();
        }
        var changes = new LayoutChanges(gateways, keep.gateways());
        changes.gateways();
        changes.axes();
        return changes.changes;
    }

    /** How many axes hang in another place than before. */
    static long moves(List<LayoutChange> changes) {
        return changes.stream()
                .filter(change -> change.kind() == LayoutChangeKind.AXIS_MOVED)
                .count();
    }

    private void match() {
        Set<KeptGateway> taken = new HashSet<>();
        gateways.stream()
                .flatMap(now -> kept.stream()
                        .filter(old -> old.place().equals(now.place()))
                        .map(old -> new Pair(now, old, common(now, old))))
                .sorted(Comparator.comparingLong(Pair::common)
                        .reversed()
                        .thenComparing(pair ->
                                !pair.now().gatewayType().equals(pair.kept().gatewayType())))
                .forEach(pair -> {
                    if (!same.containsKey(pair.now()) && taken.add(pair.kept())) {
                        same.put(pair.now(), pair.kept());
                    }
                });
    }

    private static long common(PlacedGateway now, KeptGateway old) {
        return now.spurs().stream()
                .filter(spur -> old.axes().contains(spur.axis()))
                .count();
    }

    private void gateways() {
        for (PlacedGateway now : gateways) {
            KeptGateway old = same.get(now);
            if (old == null) {
                add(
                        LayoutChangeKind.GATEWAY_ADDED,
                        now.id(),
                        null,
                        now.place(),
                        "A gateway of type " + now.gatewayType() + " is added in " + now.place() + ".");
                continue;
            }
            if (!old.gatewayType().equals(now.gatewayType())) {
                add(
                        LayoutChangeKind.GATEWAY_RETYPED,
                        now.id(),
                        old.gatewayType(),
                        now.gatewayType(),
                        "The gateway in " + now.place() + " is now of type " + now.gatewayType() + ", not "
                                + old.gatewayType() + ".");
            }
            String way = way(old);
            String newWay = way(now);
            if (!way.equals(newWay)) {
                add(
                        LayoutChangeKind.GATEWAY_RELINKED,
                        now.id(),
                        way,
                        newWay,
                        "The gateway in " + now.place() + " is now linked to " + newWay + ", not to " + way + ".");
            }
        }
        for (KeptGateway old : kept) {
            if (!same.containsValue(old)) {
                add(
                        LayoutChangeKind.GATEWAY_REMOVED,
                        old.place(),
                        old.place(),
                        null,
                        "The gateway of type " + old.gatewayType() + " in " + old.place() + " goes.");
            }
        }
    }

    /** What a gateway is linked to: a host port, or the place of the gateway before it in its trunk. */
    private String way(KeptGateway old) {
        return before(kept, old)
                .map(KeptGateway::place)
                .map(LayoutChanges::after)
                .orElse(old.hostPort());
    }

    private static Optional<KeptGateway> before(List<KeptGateway> all, KeptGateway one) {
        return all.stream()
                .filter(other -> other.hostPort().equals(one.hostPort()) && other.depth() < one.depth())
                .max(Comparator.comparingInt(KeptGateway::depth));
    }

    private String way(PlacedGateway now) {
        return gateways.stream()
                .filter(other -> other.id().equals(now.upstream()))
                .findFirst()
                .map(PlacedGateway::place)
                .map(LayoutChanges::after)
                .orElse(now.hostPort());
    }

    private static String after(String place) {
        return "the gateway in " + place;
    }

    private void axes() {
        Map<String, KeptGateway> before = new LinkedHashMap<>();
        kept.forEach(old -> old.axes().forEach(axis -> before.put(axis, old)));
        for (PlacedGateway now : gateways) {
            for (SpurLink spur : now.spurs()) {
                axis(spur.axis(), before.remove(spur.axis()), now);
            }
        }
        before.forEach((axis, old) -> add(
                LayoutChangeKind.AXIS_REMOVED,
                axis,
                old.place(),
                null,
                "Axis " + axis + ", which hung in " + old.place() + ", is no longer in the design."));
    }

    private void axis(String axis, @Nullable KeptGateway old, PlacedGateway now) {
        if (old == null) {
            String text = "Axis " + axis + " is new and hangs on " + now.id() + " in " + now.place() + ".";
            add(LayoutChangeKind.AXIS_ADDED, axis, null, now.place(), text);
        } else if (!old.place().equals(now.place())) {
            String text =
                    "Axis " + axis + " moves from " + old.place() + " to " + now.id() + " in " + now.place() + ".";
            add(LayoutChangeKind.AXIS_MOVED, axis, old.place(), now.place(), text);
        } else if (!old.equals(same.get(now))) {
            String text = "Axis " + axis + " is plugged into another gateway of the same place.";
            add(LayoutChangeKind.AXIS_REPLUGGED, axis, old.place(), now.place(), text);
        }
    }

    private void add(LayoutChangeKind kind, String subject, @Nullable String from, @Nullable String to, String text) {
        changes.add(new LayoutChange(kind, subject, from, to, text));
    }
}
