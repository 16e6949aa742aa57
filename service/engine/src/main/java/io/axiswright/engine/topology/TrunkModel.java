package io.axiswright.engine.topology;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.Constraint;
import com.google.ortools.sat.CpModelProto;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.PartialVariableAssignment;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.numeric.LinearRelaxation;
import io.axiswright.engine.numeric.LinearRelaxation.Prices;
import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;
import io.axiswright.engine.topology.TrunkPricing.Worth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;

/**
 * The layout as a constraint model whose trunks are whole routes, each taken or not: the set partitioning form of a routing problem.
 * Its relaxation is far tighter than that of single links, for a route is as deep as a trunk may be and no deeper. That a trunk of k
 * gateways is made of types that go k deep needs no more than enough of them in each place: the deepest go to the longest trunks.
 * What it costs never exceeds what the layout does, but it lets pass what it does not tell: command rates where several gateways share
 * a place or ports differ, stop zones of whole trunks, and which gateways of a place can be coupled directly.
 */
final class TrunkModel {

    final ExactModel exact;
    private final LayoutModel model;
    private final List<TrunkRoute> routes;
    private final List<IntVar> times = new ArrayList<>();
    /** "As many gateways in a place as trunks call there", by place. */
    private final Constraint[] calls;
    /** "As many gateways of types that go so deep", by depth from 2 where not every type does, and by place. */
    private final Map<Integer, Constraint[]> deep = new HashMap<>();

    private final Constraint trunks;

    TrunkModel(LayoutModel model, Slots slots, List<TrunkRoute> routes) {
        this.model = model;
        this.routes = routes;
        this.exact = new ExactModel(model, slots);
        for (TrunkRoute route : routes) {
            String name = "t" + times.size();
            int most = most(route);
            times.add(most == 1 ? exact.cp.newBoolVar(name) : exact.cp.newIntVar(0, most, name));
        }
        if (model.ratesMatter()) {
            limitRates();
        }
        this.calls = perPlace(0);
        for (int depth = 2; depth <= model.deepestChain(); depth++) {
            int least = depth;
            if (model.types().stream().anyMatch(type -> type.chainDepth() < least)) {
                deep.put(depth, perPlace(depth));
            }
        }
        this.trunks = exact.cp.addLinearConstraint(
                LinearExpr.sum(times.toArray(new IntVar[0])),
                GatewayCounts.fewestTrunks(model),
                model.portRate().length);
        exact.cp.minimize(sum(exact.cost(), route -> route.links().cost()));
    }

    /** Whether it tells all there is to a model. */
    static boolean tellsAll(LayoutModel model) {
        boolean tellsRates = Arrays.stream(model.portRate()).allMatch(rate -> rate == model.fastestPort())
                && Arrays.stream(model.room()).allMatch(room -> room <= 1);
        return (!model.ratesMatter() || tellsRates)
                && !model.couples()
                && !(model.zonesMatter() && model.types().stream().anyMatch(type -> type.scope() == StopScope.TRUNK));
    }

    /** How often a route can be used at most. */
    private int most(TrunkRoute route) {
        int most = model.portRate().length;
        for (int place : route.places()) {
            most = Math.min(most, model.room()[place] / route.gatewaysIn(place));
        }
        return most;
    }

    /** The axes of a trunk whose gateways stand alone in their places ask for no more commands than the fastest port carries. */
    private void limitRates() {
        for (int k = 0; k < routes.size(); k++) {
            int[] places = routes.get(k).places();
            if (times.get(k) instanceof BoolVar taken
                    && Arrays.stream(places).allMatch(place -> model.room()[place] == 1)) {
                LinearExprBuilder rate = LinearExpr.newBuilder();
                for (int place : places) {
                    rate.add(exact.rateOn(exact.slots.place().indexOf(place)));
                }
                exact.cp.addLessOrEqual(rate, model.fastestPort()).onlyEnforceIf(taken);
            }
        }
    }

    private Constraint[] perPlace(int depth) {
        var sums = new LinearExprBuilder[model.places()];
        for (int place = 0; place < sums.length; place++) {
            sums[place] = LinearExpr.newBuilder();
        }
        for (int slot = 0; slot < exact.slots.count(); slot++) {
            for (int type = 0; type < model.types().size(); type++) {
                if (model.types().get(type).chainDepth() >= depth) {
                    sums[exact.place(slot)].add(exact.typed(slot, type));
                }
            }
        }
        for (int k = 0; k < routes.size(); k++) {
            if (routes.get(k).depth() >= depth) {
                for (int place : routes.get(k).places()) {
                    sums[place].addTerm(times.get(k), -1);
                }
            }
        }
        var constraints = new Constraint[sums.length];
        for (int place = 0; place < sums.length; place++) {
            constraints[place] =
                    depth == 0 ? exact.cp.addEquality(sums[place], 0) : exact.cp.addGreaterOrEqual(sums[place], 0);
        }
        return constraints;
    }

    private LinearExpr sum(LinearExprBuilder sum, ToLongFunction<TrunkRoute> part) {
        for (int k = 0; k < routes.size(); k++) {
            sum.addTerm(times.get(k), part.applyAsLong(routes.get(k)));
        }
        return sum.build();
    }

    /** Asks for the least cable at no more than that cost. */
    void shortest(long cost) {
        exact.cp.addLessOrEqual(sum(exact.cost(), route -> route.links().cost()), cost);
        exact.cp.minimize(sum(exact.length(), route -> route.links().length()));
    }

    /** Adds a route to the relaxation of this model. */
    void add(TrunkRoute route, LinearRelaxation relaxation) {
        List<Integer> rows = new ArrayList<>(List.of(trunks.getIndex()));
        List<Long> factors = new ArrayList<>(List.of(1L));
        for (int place = 0; place < model.places(); place++) {
            long gateways = route.gatewaysIn(place);
            if (gateways > 0) {
                rows.add(calls[place].getIndex());
                factors.add(-gateways);
                for (int depth = 2; depth <= route.depth(); depth++) {
                    Constraint[] constraints = deep.get(depth);
                    if (constraints != null) {
                        rows.add(constraints[place].getIndex());
                        factors.add(-gateways);
                    }
                }
            }
        }
        relaxation.add(
                route.links().cost(),
                most(route),
                rows.stream().mapToInt(Integer::intValue).toArray(),
                factors.stream().mapToLong(Long::longValue).toArray());
    }

    /** What routes are measured against, from the prices of the relaxation of this model. */
    Worth worth(Prices prices) {
        var worth = new double[model.deepestChain() + 1][model.places()];
        for (int place = 0; place < model.places(); place++) {
            double sum = -prices.constraints()[calls[place].getIndex()];
            for (int depth = 1; depth < worth.length; depth++) {
                Constraint[] constraints = deep.get(depth);
                sum -= constraints == null ? 0 : prices.constraints()[constraints[place].getIndex()];
                worth[depth][place] = sum;
            }
        }
        return new Worth(prices.constraints()[trunks.getIndex()], worth);
    }

    /**
     * Decides every gateway and spur that would cost more than that beyond the bound if it were decided otherwise, unless it is in the
     * layout hinted.
     */
    void decide(Prices prices, double beyond) {
        CpModelProto.Builder builder = exact.cp.getBuilder();
        Map<Integer, Long> hinted = new HashMap<>();
        PartialVariableAssignment hint = builder.getSolutionHint();
        for (int k = 0; k < hint.getVarsCount(); k++) {
            hinted.put(hint.getVars(k), hint.getValues(k));
        }
        for (int variable = 0; variable < builder.getVariablesCount() - times.size(); variable++) {
            double reduced = prices.reduced()[variable];
            if (Math.abs(reduced) > beyond) {
                var decided = builder.getVariablesBuilder(variable);
                long value = decided.getDomain(reduced > 0 ? 0 : decided.getDomainCount() - 1);
                if (hinted.getOrDefault(variable, value) == value) {
                    decided.clearDomain().addDomain(value).addDomain(value);
                }
            }
        }
    }

    /** Hints a layout, as far as its routes are among these. */
    void hint(Layout layout) {
        exact.slots.of(layout).ifPresent(slotOf -> exact.hint(slotOf, node -> exact.zones(List.of(node))));
        Map<TrunkRoute.Stops, Integer> taken = new HashMap<>();
        for (Trunk trunk : layout.trunks) {
            if (!trunk.chain.isEmpty()) {
                taken.merge(TrunkRoute.of(model, trunk).stops(), 1, Integer::sum);
            }
        }
        for (int k = 0; k < routes.size(); k++) {
            exact.cp.addHint(times.get(k), taken.getOrDefault(routes.get(k).stops(), 0));
        }
    }

    /** The layout a solver found: the deepest types go to the longest trunks, the busiest trunks to the fastest ports. */
    Layout layout(CpSolver solver) {
        Map<Integer, List<Node>> waiting = new HashMap<>();
        for (int slot = 0; slot < exact.slots.count(); slot++) {
            Node node = exact.gateway(slot, solver);
            if (node != null) {
                waiting.computeIfAbsent(node.place, place -> new ArrayList<>()).add(node);
            }
        }
        waiting.values()
                .forEach(nodes -> nodes.sort(Comparator.comparingInt(
                        (Node node) -> -model.types().get(node.type).chainDepth())));
        var taken = new ArrayList<TrunkRoute>();
        for (int k = 0; k < routes.size(); k++) {
            for (long time = solver.value(times.get(k)); time > 0; time--) {
                taken.add(routes.get(k));
            }
        }
        taken.sort(Comparator.comparingInt(route -> -route.depth()));
        List<List<Node>> chains = new ArrayList<>();
        for (TrunkRoute route : taken) {
            List<Node> chain = new ArrayList<>();
            for (int place : route.places()) {
                chain.add(waiting.getOrDefault(place, List.of()).removeFirst());
            }
            chains.add(chain);
        }
        return onPorts(chains);
    }

    private Layout onPorts(List<List<Node>> chains) {
        chains.sort(Comparator.comparingLong(chain -> -rate(chain)));
        long[] speed = model.portRate();
        List<Integer> ports = IntStream.range(0, speed.length)
                .boxed()
                .sorted(Comparator.comparingLong(port -> -speed[port]))
                .toList();
        var layout = new Layout(speed.length);
        for (int k = 0; k < chains.size(); k++) {
            layout.trunks.get(ports.get(k)).chain.addAll(chains.get(k));
        }
        return layout;
    }

    private long rate(List<Node> chain) {
        return chain.stream()
                .flatMap(node -> node.axes.stream())
                .mapToLong(axis -> model.axes().get(axis).rate())
                .sum();
    }
}
