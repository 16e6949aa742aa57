package io.axiswright.engine.topology;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import io.axiswright.engine.numeric.LinearRelaxation;
import io.axiswright.engine.numeric.LinearRelaxation.Prices;
import io.axiswright.engine.topology.Layout.Trunk;
import io.axiswright.engine.topology.LayoutSolver.Answer;
import io.axiswright.engine.topology.TrunkPricing.Cheapest;
import io.axiswright.engine.topology.TrunkRoute.Stops;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The search over whole trunks. Routes are added to the relaxation until none would make it cheaper (column generation); then what it
 * says every route costs beyond the bound tells which cannot be part of a layout cheaper than some limit. Over the few routes that can, a
 * layout is solved for in whole numbers; if it is no dearer than the limit, no layout is cheaper, else the limit is raised to it.
 * Measured with 128 axes: the bound is within 0.2 % of the cheapest layout, and proven from some 800 routes of 21,000.
 */
final class TrunkSearch {

    /** Routes added to the relaxation at once. */
    private static final int BATCH = 200;

    private static final int MOST_ROUNDS = 60;
    /** Routes the first layout is solved for from. */
    private static final int FEW = 800;

    /** How many times more routes the next one is solved for from: fewer steps leave more of the work for the proof. */
    private static final int MORE = 5;

    private static final int MOST = 20_000;
    /** What rounding may have done to a cost, in the model's money unit. */
    private static final double ROUNDING = 1e-3;

    /** And to a sum of many, as a share of it. */
    private static final double RELATIVE_ROUNDING = 1e-11;

    private final LayoutModel model;
    private final Slots slots;
    private final DoubleFunction<CpSolver> solvers;
    private final TrunkPricing pricing;
    private final WorkBudget budget;
    private final SearchStop stop;

    private Layout best;
    private double bound;

    /**
     * A search.
     *
     * @param start a layout to set out from
     * @param solvers makes a solver with a limit in its deterministic seconds
     */
    TrunkSearch(
            LayoutModel model,
            Slots slots,
            Layout start,
            WorkBudget budget,
            SearchStop stop,
            DoubleFunction<CpSolver> solvers) {
        this.model = model;
        this.slots = slots;
        this.solvers = solvers;
        this.pricing = new TrunkPricing(model);
        this.best = start;
        this.budget = budget;
        this.stop = stop;
    }

    /** The cheapest layout found; empty if there are too many routes to tell. */
    Optional<Answer> run() {
        var relaxed = new TrunkModel(model, slots, List.of());
        Optional<Relaxed> relaxation = relax(relaxed);
        if (relaxation.isEmpty()) {
            return Optional.empty();
        }
        double base = relaxation.get().bound();
        bound = base;
        for (int most = FEW; most <= MOST && budget.share(1) > 0 && !stop.asked(); most *= MORE) {
            Prices prices = relaxation.get().prices();
            Cheapest routes = pricing.cheapest(relaxed.worth(prices), cost() + 1 - base, most);
            if (routes == null) {
                break;
            }
            double others = base + routes.below();
            double told = cheapest(program(prices, routes));
            bound = Math.max(bound, Math.min(told, others));
            if (told < others) {
                if (cost() <= bound + ROUNDING) {
                    shortest(program(prices, routes));
                }
                break;
            }
        }
        return Optional.of(new Answer(best, (long) Math.ceil(bound - ROUNDING), false));
    }

    private long cost() {
        return Score.of(model, best).cost();
    }

    private TrunkModel program(Prices prices, Cheapest routes) {
        Map<Stops, TrunkRoute> all = new LinkedHashMap<>();
        routes.routes().forEach(route -> all.put(route.stops(), route));
        // The best layout known can be told whatever its trunks cost.
        routes(best).forEach(route -> all.putIfAbsent(route.stops(), route));
        var program = new TrunkModel(model, slots, List.copyOf(all.values()));
        program.hint(best);
        program.decide(prices, routes.below());
        return program;
    }

    private Stream<TrunkRoute> routes(Layout layout) {
        return layout.trunks.stream().filter(trunk -> !trunk.chain.isEmpty()).map(trunk -> TrunkRoute.of(model, trunk));
    }

    private record Relaxed(Prices prices, double bound) {}

    private Optional<Relaxed> relax(TrunkModel whole) {
        try (var relaxation = new LinearRelaxation(whole.exact.cp.model())) {
            routes(best).forEach(route -> whole.add(route, relaxation));
            for (int round = 0; round < MOST_ROUNDS && !stop.asked(); round++) {
                Optional<Prices> prices = relaxation.solve();
                if (prices.isEmpty()) {
                    return Optional.empty();
                }
                Cheapest routes = pricing.cheapest(whole.worth(prices.get()), -ROUNDING, BATCH);
                if (routes == null) {
                    return Optional.empty();
                }
                if (routes.routes().isEmpty()) {
                    // no route left out is cheaper than its worth by more than the rounding
                    return Optional.of(
                            new Relaxed(prices.get(), safe(prices.get().bound())));
                }
                routes.routes().forEach(route -> whole.add(route, relaxation));
            }
            return Optional.empty();
        }
    }

    /** The bound less what rounding and the routes left out may have done to it. */
    private double safe(double value) {
        return value - ROUNDING * model.portRate().length - RELATIVE_ROUNDING * Math.abs(value);
    }

    /** Looks for a cheaper layout; what any that the program tells costs at least. */
    private double cheapest(TrunkModel program) {
        CpSolver solver = solvers.apply(budget.share(Double.POSITIVE_INFINITY));
        return solve(program, solver) == CpSolverStatus.INFEASIBLE
                ? Double.POSITIVE_INFINITY
                : solver.bestObjectiveBound();
    }

    /** Of the layouts that cost as little as the best the one with the least cable, as far as the work left allows. */
    private void shortest(TrunkModel program) {
        program.shortest(cost());
        solve(program, solvers.apply(budget.share(Double.POSITIVE_INFINITY)));
    }

    private CpSolverStatus solve(TrunkModel program, CpSolver solver) {
        CpSolverStatus status = solver.solve(program.exact.cp);
        budget.spend(solver.response().getDeterministicTime());
        if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE) {
            best = Objects.requireNonNull(Score.better(model, best, mended(program.layout(solver))));
        }
        return status;
    }

    /** The layout improved where it can be. What the program does not tell of may not hold in it: then gateways that break it are left off
     * and their axes hung anew. */
    private @Nullable Layout mended(Layout layout) {
        boolean holds = true;
        for (Trunk trunk : layout.trunks) {
            while (!LayoutRules.hold(model, trunk)) {
                trunk.chain.removeLast();
                holds = false;
            }
        }
        return holds
                ? LocalImprovement.polished(model, layout)
                : model.within(new GreedySearch(model, new Surroundings(model), SearchBreadth.WIDE).from(layout));
    }
}
