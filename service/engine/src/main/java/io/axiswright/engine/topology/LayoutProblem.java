package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.quantity.Length;

/** A request, what its routes and prices are, and the model the solvers see. */
record LayoutProblem(TopologyRequest request, Routes routes, ModelReader reader, LayoutModel model) {

    static LayoutProblem of(TopologyRequest request) {
        var routes = new Routes(request);
        return of(request, routes, new ModelReader(request, routes));
    }

    private static LayoutProblem of(TopologyRequest request, Routes routes, ModelReader reader) {
        return new LayoutProblem(request, routes, reader, reader.read());
    }

    MoneyScale money() {
        return reader.money();
    }

    /** The same problem with no more than so many gateways. */
    LayoutProblem withGateways(int most) {
        return new LayoutProblem(request, routes, reader, model.withGateways(most));
    }

    /** The same problem, in the same unit of money, without longer spur cables. */
    LayoutProblem withSpurs(Length longest) {
        var shorter = new TopologyRequest(
                request.network(),
                request.axes(),
                request.gatewayTypes(),
                request.cableAssemblies().stream()
                        .filter(cable ->
                                cable.use() != CableUse.SPUR || cable.length().si() <= longest.si())
                        .toList(),
                request.coupled().stream()
                        .filter(pair ->
                                pair.use() != CableUse.SPUR || pair.length().si() <= longest.si())
                        .toList(),
                request.catalogueSource(),
                request.currency(),
                request.effort());
        var ways = new Routes(shorter);
        return of(shorter, ways, new ModelReader(shorter, ways, money()));
    }

    /** Ties in a layout broken: as it was where one is kept, else by the axes' order. */
    Layout inOrder(Layout layout) {
        Layout kept = KeptStart.of(request, model);
        return kept == null ? IndexOrder.apply(model, layout.inOrder(model)) : KeptOrder.apply(model, layout, kept);
    }
}
