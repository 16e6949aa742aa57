package io.axiswright.engine.topology;

import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.topology.LayoutSolver.Answer;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * What would let a layout exist: each set of limits that may be, is widened by as little as does, of single axes, places and stop
 * zones no more than have to be, and planned to see what the layout costs then.
 */
final class Relaxations {

    private final TopologyRequest request;
    private final Routes routes;
    private final MoneyScale money;
    private final NamedLimits limits;
    private final WidenedModel widened;
    private final ExistenceCheck check;
    private final LayoutSolver planner;

    Relaxations(
            TopologyRequest request,
            Routes routes,
            MoneyScale money,
            NamedLimits limits,
            WidenedModel widened,
            ExistenceCheck check,
            LayoutSolver planner) {
        this.request = request;
        this.routes = routes;
        this.money = money;
        this.limits = limits;
        this.widened = widened;
        this.check = check;
        this.planner = planner;
    }

    /** One for each of the smallest of these sets of kinds of limits, and for one more place; the cheapest first. */
    List<Relaxation> of(List<Set<LimitKind>> corrections) {
        var relaxations = new ArrayList<Relaxation>();
        int fewest = corrections.stream().mapToInt(Set::size).min().orElse(0);
        corrections.stream()
                .filter(kinds -> kinds.size() == fewest)
                .distinct()
                .forEach(kinds -> add(relaxations, kinds));
        OneMorePlace.of(request, planner).ifPresent(relaxations::add);
        relaxations.sort(Comparator.comparing((Relaxation one) -> one.cost().amount()));
        return relaxations;
    }

    private void add(List<Relaxation> relaxations, Set<LimitKind> kinds) {
        Map<LimitKind, Long> steps = new EnumMap<>(LimitKind.class);
        kinds.forEach(kind -> steps.put(kind, widened.most(kind)));
        for (LimitKind kind : kinds) {
            steps.put(kind, least(steps, kind));
        }
        BitSet all = limits.of(kinds);
        BitSet given = MinimalSubset.of(all, some -> exists(steps, without(all, some)));
        LayoutModel model = widened.model(steps, without(all, given));
        Answer answer = planner.solve(model, null);
        Layout layout = answer.layout();
        if (layout != null) {
            var widenings = new ArrayList<Widening>();
            given.stream().forEach(k -> widenings.add(widening(limits.all().get(k), steps, layout)));
            widenings.sort(Comparator.comparing(Widening::limit));
            relaxations.add(Priced.of(money, model, layout, answer.bound(), widenings));
        }
    }

    private static BitSet without(BitSet all, BitSet some) {
        BitSet rest = (BitSet) all.clone();
        rest.andNot(some);
        return rest;
    }

    private long least(Map<LimitKind, Long> steps, LimitKind kind) {
        long low = 1;
        long high = Objects.requireNonNull(steps.get(kind));
        var trial = new EnumMap<>(steps);
        while (low < high) {
            long middle = (low + high) / 2;
            trial.put(kind, middle);
            if (exists(trial, new BitSet())) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return high;
    }

    private boolean exists(Map<LimitKind, Long> steps, BitSet held) {
        return check.of(widened.model(steps, held)) == Existence.EXISTS;
    }

    private Widening widening(NamedLimit limit, Map<LimitKind, Long> steps, Layout layout) {
        ClashingLimit told = limit.told();
        double more = Objects.requireNonNull(steps.get(limit.kind()));
        Quantity available = told.available();
        double now = available == null ? 0 : available.si();
        Quantity needed = switch (limit.kind()) {
            case HOST_PORTS, CHAIN_DEPTH, DRIVE_PORTS, BRAKE_OUTPUTS -> new Ratio(now + more);
            case SPARE_PORTS -> new Ratio(now - more);
            case PLACE_ROOM -> new Ratio(Math.max(layout.gatewaysAt(limit.member()), now));
            case COMMAND_RATE -> widened.rate((long) more);
            case SPUR_LENGTH -> routes.spur(limit.member(), placeOf(layout, limit.member()));
            case TRUNK_LENGTH, HOST_LENGTH -> new Length(widened.metres(limit.kind(), (long) more));
            case STOP_ZONE, FIXED_PLACE, SEPARATION, RESERVED_PORTS, PLACES -> null;
        };
        return new Widening(limit.kind(), told.subject(), told.pointer(), available, needed);
    }

    private int placeOf(Layout layout, int axis) {
        return Objects.requireNonNull(layout.nodeOfAxis(request.axes().size())[axis]).place;
    }

    /** One finding for each relaxation of a single kind of limit. */
    static List<Finding> findings(TopologyRequest request, List<Relaxation> relaxations) {
        var findings = new ArrayList<Finding>();
        for (Relaxation relaxation : relaxations) {
            Widening first = relaxation.widenings().getFirst();
            if (first.limit() != LimitKind.RESERVED_PORTS
                    && relaxation.widenings().stream().allMatch(one -> one.limit() == first.limit())) {
                findings.add(finding(request, relaxation.widenings(), first));
            }
        }
        findings.addAll(growth(relaxations));
        return findings;
    }

    /** Says so where it is only the axes to come that cannot be connected. */
    static List<Finding> growth(List<Relaxation> relaxations) {
        return relaxations.stream()
                .map(Relaxation::widenings)
                .filter(widenings -> widenings.stream().allMatch(one -> one.limit() == LimitKind.RESERVED_PORTS))
                .map(List::getFirst)
                .map(one -> FindingCode.TOPOLOGY_GROWTH_CLASHES.at(
                        "the network", one.pointer(), Clauses.SEARCH, one.available(), null))
                .toList();
    }

    private static Finding finding(TopologyRequest request, List<Widening> widenings, Widening first) {
        Quantity widest = widenings.stream()
                .map(Widening::needed)
                .filter(Objects::nonNull)
                .max(Comparator.comparingDouble(Quantity::si))
                .orElse(new Ratio(counted(request, widenings, first.limit())));
        return FindingCode.TOPOLOGY_LIMITS_CLASH.at(
                inWords(first), first.pointer(), Clauses.SEARCH, widest, stated(request, first));
    }

    /** Of a limit without a quantity of its own, what there would be. */
    private static long counted(TopologyRequest request, List<Widening> widenings, LimitKind limit) {
        return switch (limit) {
            case STOP_ZONE -> widenings.size() + 1;
            case SEPARATION -> neverTogether(request) - widenings.size();
            default -> request.network().places().size();
        };
    }

    private static Quantity stated(TopologyRequest request, Widening first) {
        if (first.limit() == LimitKind.SEPARATION) {
            return new Ratio(neverTogether(request));
        }
        return first.available() == null ? new Ratio(1) : first.available();
    }

    private static long neverTogether(TopologyRequest request) {
        return request.network().separationList().stream()
                .filter(separation -> separation.price() == null)
                .count();
    }

    private static String inWords(Widening first) {
        return switch (first.limit()) {
            case HOST_PORTS -> "host ports";
            case PLACE_ROOM -> "gateways in one place";
            case CHAIN_DEPTH -> "gateways in one trunk";
            case DRIVE_PORTS -> "drive ports";
            case BRAKE_OUTPUTS -> "brake outputs";
            case STOP_ZONE -> "stop zones on one stop input";
            case SPUR_LENGTH -> "metres of spur cable";
            case TRUNK_LENGTH -> "metres of trunk cable";
            case HOST_LENGTH -> "metres of host cable";
            case COMMAND_RATE -> "commands per second of a host port";
            case SPARE_PORTS -> "spare drive ports";
            case FIXED_PLACE -> "places for axis " + first.subject();
            case SEPARATION -> "separations of axes";
            case RESERVED_PORTS -> "drive ports kept for axes to come";
            case PLACES -> "places for gateways";
        };
    }
}
