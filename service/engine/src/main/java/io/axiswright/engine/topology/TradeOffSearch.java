package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.CoupledCables;
import io.axiswright.engine.design.SecondMeasure;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.topology.LayoutSolver.Answer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The curve of cost against a second measure, by limits on the measure that become tighter: below what the last layout has, gateways by
 * one and the longest spur by the lengths that can be bought (the ε-constraint method).
 */
final class TradeOffSearch {

    /** Most searches for one curve. */
    static final int MOST = 16;

    private record Found(TradeOffPoint point, long units, long bound) {}

    private final LayoutProblem problem;
    private final SecondMeasure measure;
    private final DoubleFunction<LayoutSolver> solvers;
    private final Function<Appraisal, LayoutMethod> method;
    private final List<Found> found = new ArrayList<>();

    /**
     * A search.
     *
     * @param solvers a solver that may do a share of the work of a search for the layout
     * @param method how a layout was found
     */
    TradeOffSearch(
            LayoutProblem problem,
            SecondMeasure measure,
            DoubleFunction<LayoutSolver> solvers,
            Function<Appraisal, LayoutMethod> method) {
        this.problem = problem;
        this.measure = measure;
        this.solvers = solvers;
        this.method = method;
    }

    /**
     * The curve from a layout on.
     *
     * @param bound of the cost of every layout, in the model's money unit
     */
    TradeOff from(Layout layout, long bound) {
        add(problem, layout, bound);
        TradeOffEnd end = follow();
        return new TradeOff(measure, found.stream().map(Found::point).toList(), end);
    }

    private TradeOffEnd follow() {
        List<Double> limits = limits();
        if (limits.isEmpty()) {
            return TradeOffEnd.NONE_PROVEN;
        }
        LayoutSolver solver = solvers.apply(1.0 / Math.min(MOST, limits.size()));
        int searches = 0;
        for (double limit : limits) {
            if (limit >= last()) {
                continue;
            }
            LayoutProblem limited = limited(limit);
            if (impossible(limited)) {
                return TradeOffEnd.NONE_PROVEN;
            }
            if (searches++ == MOST) {
                return TradeOffEnd.NOT_EXAMINED;
            }
            Answer answer = solver.solve(limited.model(), KeptStart.of(limited.request(), limited.model()));
            Layout layout = answer.layout();
            if (layout == null) {
                return answer.impossible() ? TradeOffEnd.NONE_PROVEN : TradeOffEnd.NONE_FOUND;
            }
            // What is proven of all layouts that are allowed more is proven of these.
            add(
                    limited,
                    limited.inOrder(layout),
                    Math.max(answer.bound(), found.getLast().bound()));
        }
        return TradeOffEnd.NONE_PROVEN;
    }

    /** Adds a layout and drops those that cost as much with more of the measure. */
    private void add(LayoutProblem of, Layout layout, long bound) {
        Appraisal appraisal = Appraisal.of(of, layout, bound);
        long units = Score.of(of.model(), layout).cost();
        var point = new TradeOffPoint(
                appraisal.gateways().size(),
                longestSpur(appraisal.gateways()),
                appraisal.all(),
                appraisal.bound(),
                appraisal.gap(),
                method.apply(appraisal),
                appraisal.gateways().stream().map(PlacedGateway::kept).toList());
        while (!found.isEmpty() && found.getLast().units() >= units) {
            found.removeLast();
        }
        found.add(new Found(point, units, bound));
    }

    /** What the measure may be held below the last layout's, largest first. */
    private List<Double> limits() {
        double from = last();
        Stream<Double> all = switch (measure) {
            case GATEWAYS -> IntStream.range(1, (int) from).mapToObj(count -> (double) count);
            case LONGEST_SPUR ->
                Stream.concat(
                                problem.request().cableAssemblies().stream()
                                        .filter(cable -> cable.use() == CableUse.SPUR)
                                        .map(CableAssembly::length),
                                problem.request().coupled().stream()
                                        .filter(pair -> pair.use() == CableUse.SPUR)
                                        .map(CoupledCables::length))
                        .map(Length::si)
                        .distinct();
        };
        return all.filter(limit -> limit < from)
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    private double last() {
        TradeOffPoint point = found.getLast().point();
        return switch (measure) {
            case GATEWAYS -> point.gatewayCount();
            case LONGEST_SPUR -> point.longestSpur().si();
        };
    }

    private LayoutProblem limited(double limit) {
        return switch (measure) {
            case GATEWAYS -> problem.withGateways((int) limit);
            case LONGEST_SPUR -> problem.withSpurs(new Length(limit));
        };
    }

    private static boolean impossible(LayoutProblem limited) {
        return GatewayCounts.fewestGateways(limited.model()) > limited.model().mostGateways()
                || !Shortfalls.of(limited.request(), limited.routes(), limited.model())
                        .isEmpty();
    }

    private static Length longestSpur(List<PlacedGateway> gateways) {
        return new Length(gateways.stream()
                .flatMap(gateway -> Stream.concat(
                        gateway.spurs().stream().map(SpurLink::cableLength),
                        gateway.reservedList().stream().map(ReservedPorts::cableLength)))
                .mapToDouble(Length::si)
                .max()
                .orElse(0));
    }
}
