package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.ControlSupply;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * Divides the chains among control supplies at least cost, supplies and cables together. As a supply holds its output
 * voltage whatever hangs on it, chains on one supply do not act on each other and each is planned alone. Every division is
 * tried up to {@value #MOST_EXACT} chains, and beyond that every division into runs of neighbouring chains. Equal costs:
 * the first in the order of the chains and of the catalogue, larger groups first.
 */
final class SupplyPicker {

    private static final int MOST_EXACT = 10;

    private final ControlPowerRequest request;
    private final List<ChainNetwork> networks;
    private final List<ControlSupply> supplies;
    private final FeedPoints feeds;
    private final Map<List<Object>, List<ChainPlan>> plans = new HashMap<>();
    /** By identity: {@link #plans} keeps one of each, and hashing all there is to a plan is slow. */
    private final Map<ChainPlan, FarTerminal> farTerminals = new IdentityHashMap<>();

    private final Map<Long, SupplyGroup> groups = new HashMap<>();
    private final Map<Long, Division> divisions = new HashMap<>();

    /** Supplies that the mains can feed are tried; there must be one. At most 64 chains. */
    SupplyPicker(
            ControlPowerRequest request, List<ChainNetwork> networks, List<ControlSupply> supplies, FeedPoints feeds) {
        this.request = request;
        this.networks = networks;
        this.supplies = supplies;
        this.feeds = feeds;
    }

    private record Division(SupplyCost cost, List<SupplyGroup> groups) {}

    List<SupplyGroup> pick() {
        return best(networks.size() == Long.SIZE ? -1L : (1L << networks.size()) - 1)
                .groups();
    }

    private Division best(long chains) {
        if (chains == 0) {
            return new Division(SupplyCost.NOTHING, List.of());
        }
        Division known = divisions.get(chains);
        if (known != null) {
            return known;
        }
        Division best = null;
        for (long candidate : candidates(chains).toArray()) {
            SupplyGroup group = group(candidate);
            Division rest = best(chains & ~candidate);
            SupplyCost cost = group.cost().plus(rest.cost());
            if (best == null || cost.compareTo(best.cost()) < 0) {
                List<SupplyGroup> all = new ArrayList<>(List.of(group));
                all.addAll(rest.groups());
                best = new Division(cost, all);
            }
        }
        if (best == null) {
            throw new IllegalStateException("there is always the group of the first chain alone");
        }
        divisions.put(chains, best);
        return best;
    }

    /** Groups with the first of the given chains, larger ones first; one of several chains only if its supply suffices. */
    private LongStream candidates(long chains) {
        long first = Long.lowestOneBit(chains);
        LongStream all = networks.size() <= MOST_EXACT
                ? LongStream.iterate(chains, s -> s > 0, s -> (s - 1) & chains).filter(s -> (s & first) != 0)
                : LongStream.iterate(chains, s -> s != 0, s -> s & ~Long.highestOneBit(s));
        return all.filter(s -> s == first || group(s).cost().overloaded() == 0);
    }

    private SupplyGroup group(long chains) {
        SupplyGroup known = groups.get(chains);
        if (known != null) {
            return known;
        }
        SupplyGroup best = null;
        for (ControlSupply supply : supplies) {
            List<ChainPlan> plans = IntStream.range(0, networks.size())
                    .filter(k -> (chains >> k & 1) != 0)
                    .mapToObj(k -> plan(k, supply))
                    .flatMap(List::stream)
                    .toList();
            boolean matches = request.throughTransformer() || MainsMatch.hasVoltage(request.mains(), supply);
            // one alone is never redundant, so it is tried only where there is no choice
            int fewest = request.spec().isRedundant() ? Math.min(2, supply.mostParallel()) : 1;
            for (int count = fewest; count <= supply.mostParallel(); count++) {
                SupplyGroup group = SupplyGroup.of(supply, count, matches, plans, request, this::farTerminal);
                if (best == null || isBetter(group, best)) {
                    best = group;
                }
            }
        }
        if (best == null) {
            throw new IllegalStateException("no supplies");
        }
        groups.put(chains, best);
        return best;
    }

    /** The same for every supply that is tried. */
    private FarTerminal farTerminal(ChainPlan plan) {
        return farTerminals.computeIfAbsent(plan, known -> FarTerminal.of(known, request.site(), request.codeBasis()));
    }

    /** Cheaper; of overloaded supplies, the one that gives more. */
    private static boolean isBetter(SupplyGroup group, SupplyGroup best) {
        if (group.cost().overloaded() == 1 && best.cost().overloaded() == 1) {
            return group.spare() != best.spare()
                    ? group.spare() > best.spare()
                    : group.availableCurrent() > best.availableCurrent();
        }
        return group.cost().compareTo(best.cost()) < 0;
    }

    private List<ChainPlan> plan(int network, ControlSupply supply) {
        SourceVoltages source = SourceVoltages.of(supply);
        double available = supply.ratedCurrent().si() * SupplyGroup.derating(supply, request.site());
        FaultSource fault = FaultSource.of(source.low(), available, supply.overload(), 1, 0);
        var farEnd = new FarEnd(request.protections(), fault);
        return plans.computeIfAbsent(
                List.of(network, source, fault), key -> feeds.plan(networks.get(network), source, farEnd));
    }
}
