package io.axiswright.engine.topology;

import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.numeric.NativeSolver;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.topology.LayoutSolver.Answer;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * Plans the control network: which gateways stand where, which axis hangs on which, in which trunks on which host ports,
 * over which cables, at least cost. The same request has the same answer.
 */
public final class LayoutPlanning {

    /** Work the exact search may do, in its deterministic seconds: proves machines of 50 axes, leaves a small gap beyond. */
    private static final double SEARCH_LIMIT = 2;

    /** Planning a relaxation does this share of the work of a search. */
    private static final int PLANS_IN_A_SEARCH = 8;

    private final LayoutSolver quick = new PlainSolver(SearchBreadth.NARROW);
    private final LayoutSolver wide = new PlainSolver(SearchBreadth.WIDE);
    private final double searchLimit;
    private final DoubleFunction<LayoutSolver> exact;

    /** A planning whose exact searches wait for nobody. */
    public LayoutPlanning() {
        this(SearchGate.open());
    }

    /** A planning whose exact searches pass a gate. */
    public LayoutPlanning(SearchGate gate) {
        this(SEARCH_LIMIT, limit -> new ExactSolver(limit, gate));
    }

    /** A planning with another search limit where the request states none, in the exact solver's deterministic seconds. */
    LayoutPlanning(double searchLimit) {
        this(searchLimit, limit -> new ExactSolver(limit, SearchGate.open()));
    }

    /** A planning with another exact solver. */
    LayoutPlanning(LayoutSolver exact) {
        this(SEARCH_LIMIT, limit -> exact);
    }

    private LayoutPlanning(double searchLimit, DoubleFunction<LayoutSolver> exact) {
        this.searchLimit = searchLimit;
        this.exact = exact;
    }

    /**
     * Plans the layout.
     *
     * @throws io.axiswright.engine.finding.InvalidDesign if ids are used twice or prices are in several currencies
     */
    public TopologyResult plan(TopologyRequest request) {
        RequestCheck.check(request);
        var routes = new Routes(request);
        var reader = new ModelReader(request, routes);
        LayoutModel model = reader.read();
        List<Finding> shortfalls = new ArrayList<>(Shortfalls.of(request, routes, model));
        if (!shortfalls.isEmpty()) {
            Clash clash = clash(request, routes, reader, model);
            shortfalls.addAll(Relaxations.growth(clash.relaxations()));
            return nothing(request, shortfalls, clash);
        }
        LayoutSolver solver = solver(request);
        Layout start = KeptStart.of(request, model);
        Answer answer = solver.solve(model, start);
        if (answer.layout() == null) {
            Clash clash = clash(request, routes, reader, model);
            return nothing(request, findings(request, model, answer, clash), clash);
        }
        Layout layout = start == null
                ? IndexOrder.apply(model, answer.layout().inOrder(model))
                : KeptOrder.apply(model, answer.layout(), start);
        return result(request, routes, reader.money(), model, layout, answer.bound());
    }

    private LayoutSolver solver(TopologyRequest request) {
        return switch (request.effort()) {
            case HEURISTIC -> quick;
            case PROVEN -> {
                double limit = limit(request);
                yield limit == 0 ? wide : new BothSolvers(wide, exact.apply(limit));
            }
        };
    }

    private double limit(TopologyRequest request) {
        Time stated = request.network().searchLimit();
        return stated == null ? searchLimit : stated.si();
    }

    /** Which limits clash, and what would help; the searches for it together do no more work than one for the layout. */
    private Clash clash(TopologyRequest request, Routes routes, ModelReader reader, LayoutModel model) {
        double work = request.effort() == LayoutEffort.PROVEN ? limit(request) : 0;
        var limits = NamedLimits.of(request, routes, model);
        var widened = new WidenedModel(request, routes, reader.money(), model, limits);
        var check = new ExistenceCheck(request, routes, solver(request), new WorkBudget(work));
        var search = new ClashSearch(limits, widened, check);
        search.run();
        LayoutSolver planner = work == 0 ? quick : new BothSolvers(quick, exact.apply(work / PLANS_IN_A_SEARCH));
        var relaxations = new Relaxations(request, routes, reader.money(), limits, widened, check, planner);
        return new Clash(
                search.clash().stream()
                        .mapToObj(k -> limits.all().get(k).told())
                        .toList(),
                search.proof(),
                relaxations.of(search.corrections()));
    }

    private static List<Finding> findings(TopologyRequest request, LayoutModel model, Answer answer, Clash clash) {
        var findings = new ArrayList<Finding>();
        FindingCode code = answer.impossible() ? FindingCode.TOPOLOGY_NO_LAYOUT : FindingCode.TOPOLOGY_NOT_FOUND;
        findings.add(code.at(
                "the network",
                "/design/network",
                Clauses.SEARCH,
                new Ratio(model.axes().size()),
                new Ratio(model.mostGateways())));
        findings.addAll(Relaxations.findings(request, clash.relaxations()));
        return findings;
    }

    private static TopologyResult nothing(TopologyRequest request, List<Finding> findings, Clash clash) {
        return new TopologyResult(
                List.of(),
                null,
                null,
                null,
                null,
                null,
                LayoutMethod.NONE,
                request.network().host().ports().stream().map(port -> port.id()).toList(),
                List.of(),
                List.of(),
                findings,
                List.of(),
                clash);
    }

    private TopologyResult result(
            TopologyRequest request, Routes routes, MoneyScale scale, LayoutModel model, Layout layout, long bound) {
        long units = Score.of(model, layout).cost();
        List<PlacedGateway> gateways = GatewayList.of(request, routes, model, layout);
        List<LayoutChange> changes = LayoutChanges.of(request, gateways);
        Money cost = scale.money(Prices.of(request, gateways));
        BigDecimal moving = request.movePrice().multiply(BigDecimal.valueOf(LayoutChanges.moves(changes)));
        BigDecimal sharing = SharedGateways.price(request, gateways);
        Money all = scale.money(cost.amount().add(moving).add(sharing));
        boolean proven = bound >= units;
        Money boundMoney = proven ? all : scale.money(bound);
        Ratio gap = gap(all, boundMoney);
        LayoutMethod method = LayoutMethod.SEARCH_LIMIT;
        if (proven) {
            method = LayoutMethod.PROVEN_OPTIMAL;
        } else if (request.effort() == LayoutEffort.HEURISTIC || limit(request) == 0 || !NativeSolver.available()) {
            method = LayoutMethod.HEURISTIC;
        }
        return new TopologyResult(
                gateways,
                cost,
                request.network().keep() == null ? null : scale.money(moving),
                request.network().separationList().stream().allMatch(one -> one.price() == null)
                        ? null
                        : scale.money(sharing),
                boundMoney,
                gap,
                method,
                layout.trunks.stream()
                        .filter(trunk -> trunk.chain.isEmpty())
                        .map(trunk ->
                                request.network().host().ports().get(trunk.port).id())
                        .toList(),
                BindingLimits.of(request, model, layout),
                changes,
                Remarks.of(request, gateways),
                LayoutDerivations.of(request, routes, layout, gateways, all, boundMoney, gap),
                null);
    }

    private static Ratio gap(Money cost, Money bound) {
        if (cost.amount().signum() == 0) {
            return new Ratio(0);
        }
        BigDecimal saving = cost.amount().subtract(bound.amount()).max(BigDecimal.ZERO);
        return new Ratio(saving.divide(cost.amount(), MathContext.DECIMAL64).doubleValue());
    }
}
