package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.LaidCable;
import io.axiswright.engine.design.ReservedAxis;
import io.axiswright.engine.design.Separation;
import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.Stream;

/** Turns a request into the whole-number model the solvers see. */
final class ModelReader {

    /** Command rates are counted in µHz: fine enough that thirds of a hertz add up, and whole. */
    private static final double RATE_UNITS = 1e6;

    private final TopologyRequest request;
    private final Routes routes;
    private final MoneyScale money;

    ModelReader(TopologyRequest request, Routes routes) {
        this(request, routes, scale(request));
    }

    /** A reader that counts money on the scale of another request. */
    ModelReader(TopologyRequest request, Routes routes, MoneyScale money) {
        this.request = request;
        this.routes = routes;
        this.money = money;
    }

    private static MoneyScale scale(TopologyRequest request) {
        int gateways = request.network().places().stream()
                .mapToInt(place -> place.maxGateways())
                .sum();
        return new MoneyScale(
                request.currency(),
                Stream.of(
                                request.gatewayTypes().stream().map(MoneyScale::price),
                                request.cableAssemblies().stream().map(MoneyScale::price),
                                request.coupled().stream().map(LaidCable::amount),
                                Stream.of(request.movePrice()),
                                separationPrices(request))
                        .flatMap(Function.identity()),
                2 * request.axes().size() + 2 * gateways + separated(request));
    }

    private static Stream<BigDecimal> separationPrices(TopologyRequest request) {
        return request.network().separationList().stream()
                .flatMap(separation -> Stream.ofNullable(separation.price()))
                .map(Money::amount);
    }

    private static int separated(TopologyRequest request) {
        return members(request).stream().mapToInt(List::size).sum();
    }

    /** The axes of each separation; of reserved axes every port. */
    private static List<List<Integer>> members(TopologyRequest request) {
        List<Separation> all = request.network().separationList();
        if (all.isEmpty()) {
            return List.of();
        }
        Map<String, List<Integer>> axes = new HashMap<>();
        for (int k = 0; k < request.axes().size(); k++) {
            ReservedAxis reserved = request.axes().get(k).reserved();
            String id = reserved == null ? request.axes().get(k).id() : reserved.id();
            axes.computeIfAbsent(id, name -> new ArrayList<>()).add(k);
        }
        return all.stream()
                .map(separation -> separation.axes().stream()
                        .flatMap(id -> axes.getOrDefault(id, List.of()).stream())
                        .toList())
                .toList();
    }

    private Separations separations() {
        long[] prices = request.network().separationList().stream()
                .mapToLong(separation -> separation.price() == null
                        ? Separations.NEVER
                        : money.units(separation.price().amount()))
                .toArray();
        return new Separations(prices, members(request), request.axes().size());
    }

    MoneyScale money() {
        return money;
    }

    LayoutModel read() {
        int places = request.network().places().size();
        int axes = request.axes().size();
        long unit = rateUnit();
        return new LayoutModel(
                axes(unit),
                request.gatewayTypes().stream()
                        .map(type -> new LayoutModel.Type(
                                money.units(type),
                                Math.max(0, type.drivePorts() - request.sparePorts()),
                                type.chainDepth(),
                                type.brakeOutputs(),
                                type.stopScope(),
                                type.directRow() == null ? 1 : type.directRow()))
                        .toList(),
                request.network().places().stream()
                        .mapToInt(place -> place.maxGateways())
                        .toArray(),
                request.network().host().ports().stream()
                        .mapToLong(port -> rate(port.commandRate().si()) / unit)
                        .toArray(),
                table(1, places, from -> place -> routes.linkCable(-1, place)),
                table(places, places, from -> place -> routes.linkCable(from, place)),
                withMoves(table(axes, places, axis -> place -> routes.spurCable(axis, place))),
                separations(),
                LayoutModel.NO_LIMIT);
    }

    /** To hang an axis in another place than before costs the price of a move, besides the cable. */
    private LinkTable withMoves(LinkTable spurs) {
        long move = money.units(request.movePrice());
        int[] kept = KeptStart.places(request);
        for (int axis = 0; axis < kept.length; axis++) {
            long[] cost = spurs.cost()[axis];
            for (int place = 0; place < cost.length; place++) {
                if (kept[axis] >= 0 && place != kept[axis] && spurs.reaches(axis, place)) {
                    cost[place] += move;
                }
            }
        }
        return toCome(spurs);
    }

    /** The cables of axes to come are not bought; only whether one reaches and how long it is counts. */
    private LinkTable toCome(LinkTable spurs) {
        for (int axis = request.present().size(); axis < request.axes().size(); axis++) {
            long[] cost = spurs.cost()[axis];
            for (int place = 0; place < cost.length; place++) {
                if (spurs.reaches(axis, place)) {
                    cost[place] = 0;
                }
            }
        }
        return spurs;
    }

    private List<LayoutModel.Axis> axes(long unit) {
        List<String> zones = request.axes().stream()
                .map(NetworkAxis::stopZone)
                .filter(java.util.Objects::nonNull)
                .distinct()
                .toList();
        var axes = new ArrayList<LayoutModel.Axis>();
        for (NetworkAxis axis : request.axes()) {
            int zone = axis.stopZone() == null ? -1 : zones.indexOf(axis.stopZone());
            axes.add(new LayoutModel.Axis(
                    axis.holdingBrake(), zone, rate(axis.commandRate().si()) / unit));
        }
        return axes;
    }

    private static long rate(double hertz) {
        return Math.round(hertz * RATE_UNITS);
    }

    /** Largest unit in which the axes' rates are whole: small numbers suit the solver. Ports may lose a fraction of it. */
    private long rateUnit() {
        var unit = BigInteger.ZERO;
        for (NetworkAxis axis : request.axes()) {
            unit = unit.gcd(BigInteger.valueOf(rate(axis.commandRate().si())));
        }
        return Math.max(1, unit.longValueExact());
    }

    private LinkTable table(int rows, int columns, IntFunction<IntFunction<Optional<LaidCable>>> cable) {
        var cost = new long[rows][columns];
        var length = new long[rows][columns];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                Optional<LaidCable> bought = cable.apply(row).apply(column);
                cost[row][column] = bought.map(money::units).orElse(LinkTable.FAR);
                length[row][column] = bought.map(
                                item -> Math.round(item.length().si() * 1000))
                        .orElse(0L);
            }
        }
        return new LinkTable(cost, length);
    }
}
