package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.ControlSupply;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;

/**
 * Divides the chains among control supplies, and those among the places where they may stand, at least cost, supplies and
 * cables together. As a supply holds its output
 * voltage whatever hangs on it, chains on one supply do not act on each other and each is planned alone. Every division is
 * tried up to {@value #MOST_EXACT} chains, and beyond that every division into runs of neighbouring chains. Equal costs:
 * the first in the order of the chains, of the catalogue and of the places, larger groups first.
 */
final class SupplyPicker {

    private static final int MOST_EXACT = 10;

    private final ControlPowerRequest request;
    private final int chainCount;
    private final List<TriedSupply> supplies;
    /** By identity: a plan is there once, and hashing all there is to it is slow. */
    private final Map<ChainPlan, FarTerminal> farTerminals = new IdentityHashMap<>();

    private final Map<Long, SupplyGroup> groups = new HashMap<>();
    private final Map<Long, Division> divisions = new HashMap<>();

    /**
     * A search.
     *
     * @param places with the same chains, at most 64; at least one place
     * @param supplies those the mains can feed; at least one
     */
    SupplyPicker(ControlPowerRequest request, List<SupplyPlace> places, List<ControlSupply> supplies) {
        this.request = request;
        this.chainCount = places.getFirst().networks().size();
        this.supplies = supplies.stream()
                .flatMap(supply -> places.stream().map(place -> new TriedSupply(supply, place, request)))
                .toList();
    }

    private record Division(SupplyCost cost, List<SupplyGroup> groups) {}

    List<SupplyGroup> pick() {
        return best(chainCount == Long.SIZE ? -1L : (1L << chainCount) - 1).groups();
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
        for (long candidate : candidates(chains)) {
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
    private List<Long> candidates(long chains) {
        return chainCount <= MOST_EXACT ? subsets(chains) : runs(chains);
    }

    private List<Long> subsets(long chains) {
        long first = Long.lowestOneBit(chains);
        return LongStream.iterate(chains, s -> s > 0, s -> (s - 1) & chains)
                .filter(s -> (s & first) != 0)
                .filter(s -> s == first || suffices(s))
                .boxed()
                .toList();
    }

    /** A run that is too long only takes more current as it grows, so that the first is the last to be looked at. */
    private List<Long> runs(long chains) {
        List<Long> runs = new ArrayList<>();
        long run = 0;
        for (long left = chains; left != 0; left &= left - 1) {
            run |= Long.lowestOneBit(left);
            if (!runs.isEmpty() && !suffices(run)) {
                break;
            }
            runs.add(run);
        }
        return runs.reversed();
    }

    private boolean suffices(long chains) {
        return group(chains).cost().overloaded() == 0;
    }

    private SupplyGroup group(long chains) {
        SupplyGroup known = groups.get(chains);
        if (known != null) {
            return known;
        }
        SupplyGroup best = null;
        for (TriedSupply supply : supplies) {
            for (int count = supply.fewest(); count <= supply.most(); count++) {
                SupplyGroup group = supply.group(chains, count);
                if (best == null || isBetter(group, best)) {
                    SupplyGroup whole = group.protectedBy(request.protections(), this::farTerminal);
                    best = best == null || isBetter(whole, best) ? whole : best;
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
}
