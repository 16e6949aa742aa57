package io.axiswright.engine.topology;

import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Length;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * The model of a request with some of its limits widened. A kind of limit is widened by steps: a count by one, a command rate by the
 * model's unit, a length to the next longer route of the machine; stop zones, fixed places, separations and
 * reserved ports in one step. The limits that are held
 * stay as stated all the same.
 */
final class WidenedModel {

    /** Length of a route between two ends. */
    private interface Way {
        Length length(int from, int to);
    }

    private final TopologyRequest request;
    private final Routes routes;
    private final MoneyScale money;
    private final LayoutModel model;
    private final NamedLimits limits;
    private final Map<LimitKind, List<Double>> longer = new EnumMap<>(LimitKind.class);

    WidenedModel(TopologyRequest request, Routes routes, MoneyScale money, LayoutModel model, NamedLimits limits) {
        this.request = request;
        this.routes = routes;
        this.money = money;
        this.model = model;
        this.limits = limits;
        int axes = model.axes().size();
        longer.put(LimitKind.SPUR_LENGTH, longer(routes.spurCables, axes, routes::spur));
        longer.put(LimitKind.TRUNK_LENGTH, longer(routes.trunkCables, model.places(), routes::link));
        longer.put(LimitKind.HOST_LENGTH, longer(routes.hostCables, 1, (host, place) -> routes.link(-1, place)));
    }

    private List<Double> longer(CableChoice cables, int rows, Way way) {
        var lengths = new TreeSet<Double>();
        for (int row = 0; row < rows; row++) {
            for (int place = 0; place < model.places(); place++) {
                Length route = way.length(row, place);
                if (!cables.reaches(route)) {
                    lengths.add(route.si());
                }
            }
        }
        return List.copyOf(lengths);
    }

    /** Steps after which a limit of the kind binds no more, whatever the others are. */
    long most(LimitKind kind) {
        int axes = model.axes().size();
        return switch (kind) {
            // A trunk without axes is of no use, nor is a gateway without axes behind the last one with axes.
            case HOST_PORTS, PLACE_ROOM, DRIVE_PORTS, BRAKE_OUTPUTS -> axes;
            case CHAIN_DEPTH -> (long) axes * model.places();
            case COMMAND_RATE ->
                Math.max(
                        1,
                        model.totalRate()
                                - Arrays.stream(model.portRate()).min().orElse(0));
            case SPARE_PORTS -> request.sparePorts();
            case SPUR_LENGTH, TRUNK_LENGTH, HOST_LENGTH -> of(longer, kind).size();
            case STOP_ZONE, FIXED_PLACE, SEPARATION, RESERVED_PORTS, PLACES -> 1;
        };
    }

    /** The longest cable there is after so many steps, in m. */
    double metres(LimitKind kind, long steps) {
        return of(longer, kind).get((int) steps - 1);
    }

    /** What every host port carries at least after so many steps. */
    Frequency rate(long steps) {
        double unit = request.axes().getFirst().commandRate().si()
                / model.axes().getFirst().rate();
        return new Frequency((Arrays.stream(model.portRate()).min().orElse(0) + steps) * unit);
    }

    /**
     * The widened model.
     *
     * @param steps by kind; none where a kind is missing
     * @param held indices of the limits that stay as stated
     */
    LayoutModel model(Map<LimitKind, Long> steps, BitSet held) {
        return new Made(steps, held).model();
    }

    private static <T> T of(Map<LimitKind, T> map, LimitKind kind) {
        return java.util.Objects.requireNonNull(map.get(kind));
    }

    private final class Made {

        private final Map<LimitKind, Long> steps;
        private final Map<LimitKind, BitSet> held = new EnumMap<>(LimitKind.class);

        Made(Map<LimitKind, Long> steps, BitSet heldLimits) {
            this.steps = steps;
            heldLimits.stream()
                    .mapToObj(limits.all()::get)
                    .forEach(limit -> held.computeIfAbsent(limit.kind(), kind -> new BitSet())
                            .set(limit.member()));
        }

        private int by(LimitKind kind, int member) {
            BitSet stays = held.get(kind);
            return stays != null && stays.get(member)
                    ? 0
                    : (int) Math.min(Integer.MAX_VALUE, steps.getOrDefault(kind, 0L));
        }

        private long by(LimitKind kind) {
            return held.containsKey(kind) ? 0 : steps.getOrDefault(kind, 0L);
        }

        LayoutModel model() {
            List<LayoutModel.Axis> axes = axes();
            return new LayoutModel(
                    axes,
                    types(),
                    room(),
                    ports(),
                    host(),
                    table(LimitKind.TRUNK_LENGTH, model.trunk(), routes.trunkCables, routes::link),
                    spurs(),
                    model.separations().among(axes.size()).allowing(group -> by(LimitKind.SEPARATION, group) > 0),
                    model.gatewayLimit());
        }

        private List<LayoutModel.Axis> axes() {
            int kept = by(LimitKind.RESERVED_PORTS, 0) > 0
                    ? request.present().size()
                    : model.axes().size();
            return model.axes().stream()
                    .limit(kept)
                    .map(axis -> axis.zone() >= 0 && by(LimitKind.STOP_ZONE, axis.zone()) > 0
                            ? new LayoutModel.Axis(axis.brake(), -1, axis.rate())
                            : axis)
                    .toList();
        }

        private List<LayoutModel.Type> types() {
            int spare = request.sparePorts() - by(LimitKind.SPARE_PORTS, 0);
            return IntStream.range(0, model.types().size())
                    .mapToObj(k -> {
                        LayoutModel.Type type = model.types().get(k);
                        int ports = request.gatewayTypes().get(k).drivePorts() + by(LimitKind.DRIVE_PORTS, 0);
                        return type.withDrivePorts(Math.max(0, ports - spare))
                                .withChainDepth(type.chainDepth() + by(LimitKind.CHAIN_DEPTH, 0))
                                .withBrakeOutputs(type.brakeOutputs() + by(LimitKind.BRAKE_OUTPUTS, 0));
                    })
                    .toList();
        }

        private int[] room() {
            return IntStream.range(0, model.places())
                    .map(place -> model.room()[place] + by(LimitKind.PLACE_ROOM, place))
                    .toArray();
        }

        private long[] ports() {
            int stated = model.portRate().length;
            long[] rates = Arrays.copyOf(model.portRate(), stated + by(LimitKind.HOST_PORTS, 0));
            Arrays.fill(rates, stated, rates.length, model.fastestPort());
            long least = Arrays.stream(model.portRate()).min().orElse(0) + by(LimitKind.COMMAND_RATE);
            return Arrays.stream(rates).map(rate -> Math.max(rate, least)).toArray();
        }

        private LinkTable host() {
            return table(
                    LimitKind.HOST_LENGTH, model.host(), routes.hostCables, (host, place) -> routes.link(-1, place));
        }

        private LinkTable table(LimitKind kind, LinkTable stated, CableChoice cables, Way way) {
            if (by(kind, 0) == 0) {
                return stated;
            }
            var table = copy(stated);
            for (int from = 0; from < table.cost().length; from++) {
                for (int to = 0; to < model.places(); to++) {
                    fill(table, from, to, cables, way.length(from, to), metres(kind, by(kind, 0)));
                }
            }
            return table;
        }

        private LinkTable spurs() {
            if (!steps.containsKey(LimitKind.SPUR_LENGTH) && !steps.containsKey(LimitKind.FIXED_PLACE)) {
                return model.spur();
            }
            var table = copy(model.spur());
            double stated = routes.spurCables.longest().si();
            for (int axis = 0; axis < model.axes().size(); axis++) {
                int more = by(LimitKind.SPUR_LENGTH, axis);
                double reach = more > 0 ? metres(LimitKind.SPUR_LENGTH, more) : stated;
                for (int place = 0; place < model.places(); place++) {
                    if (routes.allowed(axis, place) || by(LimitKind.FIXED_PLACE, axis) > 0) {
                        fill(table, axis, place, routes.spurCables, routes.spur(axis, place), reach);
                    }
                }
            }
            return table;
        }

        /** Lets a cable lead where none did, if the route is no longer than the reach. */
        private void fill(LinkTable table, int from, int to, CableChoice cables, Length route, double reach) {
            if (!table.reaches(from, to) && route.si() <= reach) {
                table.cost()[from][to] = cables.forRoute(route)
                        .map(money::units)
                        .orElseGet(() -> money.units(cables.priceBeyond(route)));
                table.length()[from][to] = Math.round(route.si() * 1000);
            }
        }

        private LinkTable copy(LinkTable table) {
            return new LinkTable(
                    Arrays.stream(table.cost()).map(long[]::clone).toArray(long[][]::new),
                    Arrays.stream(table.length()).map(long[]::clone).toArray(long[][]::new));
        }
    }
}
