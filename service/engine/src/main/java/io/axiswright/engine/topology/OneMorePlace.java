package io.axiswright.engine.topology;

import io.axiswright.engine.design.Place;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.topology.LayoutSolver.Answer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether one more place for one gateway, at the position of an axis, lets a layout exist; of those that do, the cheapest found. */
final class OneMorePlace {

    /** Positions tried, spread evenly over the axes. */
    private static final int MOST = 16;

    private OneMorePlace() {}

    static Optional<Relaxation> of(TopologyRequest request, LayoutSolver planner) {
        var quick = new PlainSolver(SearchBreadth.NARROW);
        int axes = request.axes().size();
        TopologyRequest best = null;
        NetworkAxis where = request.axes().getFirst();
        long least = Long.MAX_VALUE;
        for (int k = 0; k < Math.min(MOST, axes); k++) {
            NetworkAxis axis = request.axes().get((int) ((long) k * axes / Math.min(MOST, axes)));
            TopologyRequest wider = with(request, axis);
            LayoutModel model = new ModelReader(wider, new Routes(wider)).read();
            if (Shortfalls.of(wider, new Routes(wider), model).isEmpty()) {
                Layout layout = quick.solve(model, null).layout();
                if (layout != null && Score.of(model, layout).cost() < least) {
                    least = Score.of(model, layout).cost();
                    best = wider;
                    where = axis;
                }
            }
        }
        return best == null ? Optional.empty() : planned(request, best, where, planner);
    }

    private static Optional<Relaxation> planned(
            TopologyRequest request, TopologyRequest wider, NetworkAxis where, LayoutSolver planner) {
        var reader = new ModelReader(wider, new Routes(wider));
        LayoutModel model = reader.read();
        Answer answer = planner.solve(model, null);
        int places = request.network().places().size();
        return Optional.ofNullable(answer.layout())
                .map(layout -> Priced.of(
                        reader.money(),
                        model,
                        layout,
                        answer.bound(),
                        List.of(new Widening(
                                LimitKind.PLACES,
                                where.id(),
                                "/design/network/places",
                                new Ratio(places),
                                new Ratio(places + 1)))));
    }

    private static TopologyRequest with(TopologyRequest request, NetworkAxis axis) {
        var places = new ArrayList<>(request.network().places());
        places.add(new Place("at " + axis.id(), axis.position(), 1));
        return new TopologyRequest(
                request.network().with(places),
                request.axes(),
                request.gatewayTypes(),
                request.cableAssemblies(),
                request.coupled(),
                request.catalogueSource(),
                request.currency(),
                request.effort());
    }
}
