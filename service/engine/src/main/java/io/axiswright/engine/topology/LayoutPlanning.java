package io.axiswright.engine.topology;

import io.axiswright.engine.design.Network;
import io.axiswright.engine.design.SecondMeasure;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.numeric.NativeSolver;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.topology.LayoutSolver.Answer;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Plans the control network: which gateways stand where, which axis hangs on which, in which trunks on which host ports,
 * over which cables, at least cost. The same request has the same answer.
 */
public final class LayoutPlanning {

    /** Work the exact search may do, in its deterministic seconds: proves machines of 50 axes, leaves a small gap beyond. */
    private static final double SEARCH_LIMIT = 2;

    /** Planning a relaxation does this share of the work of a search. */
    private static final double PLANNING = 1.0 / 8;

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
        return planned(request, List.of()).result();
    }

    /** The same with all that is known of it; of layouts known for other requests, the first that can be carried over is kept. */
    Planned planned(TopologyRequest request, List<Planned> known) {
        RequestCheck.check(request);
        LayoutProblem problem = LayoutProblem.of(request);
        LayoutModel model = problem.model();
        List<Finding> shortfalls = new ArrayList<>(Shortfalls.of(request, problem.routes(), model));
        if (!shortfalls.isEmpty()) {
            Clash clash = clash(problem);
            shortfalls.addAll(Relaxations.growth(clash.relaxations()));
            TopologyResult none = nothing(request, shortfalls, clash);
            return ofThoseInReach(problem, none, known).orElseGet(() -> new Planned(problem, null, 0, none));
        }
        Answer answer =
                carried(known, problem).orElseGet(() -> solver(request).solve(model, KeptStart.of(request, model)));
        if (answer.layout() == null) {
            Clash clash = clash(problem);
            return new Planned(problem, null, 0, nothing(request, findings(request, model, answer, clash), clash));
        }
        Layout layout = problem.inOrder(answer.layout());
        return new Planned(problem, layout, answer.bound(), result(problem, layout, answer.bound()));
    }

    /** The layout of the axes that can be reached, where others cannot; none where all or none can, or these have none either. */
    private Optional<Planned> ofThoseInReach(LayoutProblem problem, TopologyResult none, List<Planned> known) {
        TopologyRequest request = problem.request();
        BitSet out = problem.model().types().isEmpty() ? new BitSet() : Shortfalls.outOfReach(problem.model());
        TopologyRequest rest = request.without(out);
        if (out.isEmpty() || rest.present().isEmpty()) {
            return Optional.empty();
        }
        Planned planned = planned(rest, known);
        return planned.layout() == null
                ? Optional.empty()
                : Optional.of(new Planned(
                        planned.problem(),
                        planned.layout(),
                        planned.bound(),
                        planned.result()
                                .leavingOut(
                                        out.stream()
                                                .mapToObj(request.axes()::get)
                                                .filter(axis -> !axis.isToCome())
                                                .map(NetworkAxis::id)
                                                .toList(),
                                        none)));
    }

    private static Optional<Answer> carried(List<Planned> known, LayoutProblem problem) {
        return known.stream()
                .flatMap(one -> Stream.ofNullable(CarriedLayout.to(one, problem)))
                .findFirst();
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

    /** A solver that may do a share of the exact work of a search for the layout. */
    private LayoutSolver solver(TopologyRequest request, double share) {
        double limit = request.effort() == LayoutEffort.PROVEN ? share * limit(request) : 0;
        return limit == 0 ? quick : new BothSolvers(quick, exact.apply(limit));
    }

    private double limit(TopologyRequest request) {
        Time stated = request.network().searchLimit();
        return stated == null ? searchLimit : stated.si();
    }

    /** Which limits clash, and what would help; the searches for it together do no more work than one for the layout. */
    private Clash clash(LayoutProblem problem) {
        TopologyRequest request = problem.request();
        Routes routes = problem.routes();
        double work = request.effort() == LayoutEffort.PROVEN ? limit(request) : 0;
        var limits = NamedLimits.of(request, routes, problem.model());
        var widened = new WidenedModel(request, routes, problem.money(), problem.model(), limits);
        var check = new ExistenceCheck(request, routes, solver(request), new WorkBudget(work));
        var search = new ClashSearch(limits, widened, check);
        search.run();
        LayoutSolver planner = solver(request, PLANNING);
        var relaxations = new Relaxations(request, routes, problem.money(), limits, widened, check, planner);
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
                null,
                clash,
                null);
    }

    private TopologyResult result(LayoutProblem problem, Layout layout, long bound) {
        TopologyRequest request = problem.request();
        Network network = request.network();
        Appraisal found = Appraisal.of(problem, layout, bound);
        return new TopologyResult(
                found.gateways(),
                found.cost(),
                network.keep() == null ? null : found.moving(),
                network.separationList().stream().allMatch(one -> one.price() == null) ? null : found.sharing(),
                found.bound(),
                found.gap(),
                method(request, found),
                layout.trunks.stream()
                        .filter(trunk -> trunk.chain.isEmpty())
                        .map(trunk -> network.host().ports().get(trunk.port).id())
                        .toList(),
                BindingLimits.of(request, problem.model(), layout),
                found.changes(),
                Remarks.of(request, found.gateways()),
                LayoutDerivations.of(
                        request, problem.routes(), layout, found.gateways(), found.all(), found.bound(), found.gap()),
                tradeOff(problem, layout, bound),
                null,
                null);
    }

    private @Nullable TradeOff tradeOff(LayoutProblem problem, Layout layout, long bound) {
        TopologyRequest request = problem.request();
        SecondMeasure measure = request.network().tradeOff();
        return measure == null
                ? null
                : new TradeOffSearch(problem, measure, share -> solver(request, share), found -> method(request, found))
                        .from(layout, bound);
    }

    private LayoutMethod method(TopologyRequest request, Appraisal found) {
        if (found.proven()) {
            return LayoutMethod.PROVEN_OPTIMAL;
        }
        return request.effort() == LayoutEffort.HEURISTIC || limit(request) == 0 || !NativeSolver.available()
                ? LayoutMethod.HEURISTIC
                : LayoutMethod.SEARCH_LIMIT;
    }
}
