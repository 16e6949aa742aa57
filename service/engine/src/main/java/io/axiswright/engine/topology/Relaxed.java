package io.axiswright.engine.topology;

import io.axiswright.engine.quantity.Length;
import java.util.Arrays;
import java.util.function.UnaryOperator;

/** The same layout problem with one limit widened. Costs do not matter there, only whether a layout exists. */
final class Relaxed {

    /** Length of a route between two ends. */
    interface Way {
        Length length(int from, int to);
    }

    private Relaxed() {}

    static LayoutModel hostPorts(LayoutModel model, int more) {
        long[] rates = Arrays.copyOf(model.portRate(), model.portRate().length + more);
        Arrays.fill(rates, model.portRate().length, rates.length, model.fastestPort());
        return with(model, model.room(), rates);
    }

    static LayoutModel room(LayoutModel model, int more) {
        return with(model, Arrays.stream(model.room()).map(room -> room + more).toArray(), model.portRate());
    }

    static LayoutModel rates(LayoutModel model) {
        long[] rates = model.portRate().clone();
        Arrays.fill(rates, model.totalRate());
        return with(model, model.room(), rates);
    }

    /** Without all but the first axes. */
    static LayoutModel axes(LayoutModel model, int first) {
        return new LayoutModel(
                model.axes().subList(0, first),
                model.types(),
                model.room(),
                model.portRate(),
                model.host(),
                model.trunk(),
                model.spur(),
                model.separations().among(first));
    }

    /** With every axis free to share a gateway with any other. */
    static LayoutModel together(LayoutModel model) {
        return new LayoutModel(
                model.axes(), model.types(), model.room(), model.portRate(), model.host(), model.trunk(), model.spur());
    }

    static LayoutModel types(LayoutModel model, UnaryOperator<LayoutModel.Type> wider) {
        return new LayoutModel(
                model.axes(),
                model.types().stream().map(wider).toList(),
                model.room(),
                model.portRate(),
                model.host(),
                model.trunk(),
                model.spur(),
                model.separations());
    }

    /** The links with a cable of the given length added. */
    static LinkTable reaching(LinkTable links, Way way, double metres) {
        var cost = new long[links.cost().length][];
        for (int from = 0; from < cost.length; from++) {
            cost[from] = links.cost()[from].clone();
            for (int to = 0; to < cost[from].length; to++) {
                if (!links.reaches(from, to) && way.length(from, to).si() <= metres) {
                    cost[from][to] = 0;
                }
            }
        }
        return new LinkTable(cost, links.length());
    }

    static LayoutModel links(LayoutModel model, LinkTable host, LinkTable trunk, LinkTable spur) {
        return new LayoutModel(
                model.axes(), model.types(), model.room(), model.portRate(), host, trunk, spur, model.separations());
    }

    private static LayoutModel with(LayoutModel model, int[] room, long[] rates) {
        return new LayoutModel(
                model.axes(),
                model.types(),
                room,
                rates,
                model.host(),
                model.trunk(),
                model.spur(),
                model.separations());
    }
}
