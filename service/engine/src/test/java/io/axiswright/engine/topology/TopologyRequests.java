package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.design.CableWays;
import io.axiswright.engine.design.FixedPlace;
import io.axiswright.engine.design.Host;
import io.axiswright.engine.design.HostPort;
import io.axiswright.engine.design.KeptLayout;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.design.Place;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.ReservedAxis;
import io.axiswright.engine.design.RouteMetric;
import io.axiswright.engine.design.RouteRule;
import io.axiswright.engine.design.SecondMeasure;
import io.axiswright.engine.design.Separation;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Requests for the tests, by hand and at random. */
final class TopologyRequests {

    Position hostAt = at(0, 0);
    RouteRule route = new RouteRule(RouteMetric.RECTILINEAR, 1, new Length(0));
    final List<HostPort> ports = new ArrayList<>();
    final List<Place> places = new ArrayList<>();
    final List<NetworkAxis> axes = new ArrayList<>();
    final List<GatewayType> types = new ArrayList<>();
    final List<CableAssembly> cables = new ArrayList<>();
    final List<ReservedAxis> reserved = new ArrayList<>();
    final List<Separation> separations = new ArrayList<>();
    LayoutEffort effort = LayoutEffort.PROVEN;

    @Nullable
    KeptLayout keep;

    @Nullable
    List<FixedPlace> fixed;

    @Nullable
    Integer sparePorts;

    @Nullable
    SecondMeasure tradeOff;

    @Nullable
    CableWays ways;

    @Nullable
    Time searchLimit;

    static Position at(double x, double y) {
        return new Position(new Length(x), new Length(y), new Length(0));
    }

    static @Nullable Money euro(double amount) {
        return amount < 0 ? null : new Money(BigDecimal.valueOf(amount), "EUR");
    }

    TopologyRequests port(double rate) {
        ports.add(new HostPort("P" + (ports.size() + 1), new Frequency(rate)));
        return this;
    }

    TopologyRequests place(double x, double y, int room) {
        places.add(new Place("L" + (places.size() + 1), at(x, y), room));
        return this;
    }

    TopologyRequests axis(double x, double y, @Nullable String zone, boolean brake, double rate) {
        int index = axes.size();
        axes.add(new NetworkAxis("A" + (index + 1), at(x, y), zone, brake, new Frequency(rate), index));
        return this;
    }

    TopologyRequests axis(double x) {
        return axis(x, 0, null, false, 1000);
    }

    /** Ports kept for axes to come at that spot. */
    TopologyRequests reserve(int ports, double x, double rate) {
        reserved.add(new ReservedAxis(
                "R" + (reserved.size() + 1), ports, at(x, 0), null, null, null, null, null, new Frequency(rate), null));
        return this;
    }

    /** Axes to be kept apart; a negative price stands for none, so that they must be. */
    TopologyRequests apart(double price, String... ids) {
        separations.add(new Separation("S" + (separations.size() + 1), List.of(ids), euro(price)));
        return this;
    }

    /** A negative price stands for none. */
    TopologyRequests type(double price, int drivePorts, int depth, int brakes, StopScope scope) {
        types.add(new GatewayType(
                "T" + (types.size() + 1),
                "gateway",
                euro(price),
                List.of(),
                drivePorts,
                depth,
                brakes,
                scope,
                new Power(5),
                new Voltage(19.2),
                new Current(16)));
        return this;
    }

    /** A negative price stands for none. */
    TopologyRequests cable(CableUse use, double length, double price) {
        cables.add(new CableAssembly(
                use.name().charAt(0) + "-" + cables.size(),
                "cable",
                euro(price),
                List.of(),
                use,
                new Length(length),
                null,
                null,
                new Length(0.008)));
        return this;
    }

    TopologyRequest build() {
        var network = new Network(
                new Host(hostAt, List.copyOf(ports)),
                List.copyOf(places),
                route,
                keep,
                fixed,
                sparePorts,
                searchLimit,
                reserved.isEmpty() ? null : reserved,
                separations.isEmpty() ? null : separations,
                ways,
                tradeOff);
        return new TopologyRequest(
                network,
                Stream.concat(axes.stream(), NetworkAxis.toCome(network).stream())
                        .toList(),
                types,
                cables,
                CatalogueSource.SENT,
                "EUR",
                effort);
    }

    /** The same to be changed; what the network says beside its host and places is left out. */
    static TopologyRequests copy(TopologyRequest request) {
        var copy = new TopologyRequests();
        copy.ports.addAll(request.network().host().ports());
        copy.places.addAll(request.network().places());
        copy.axes.addAll(request.axes());
        copy.types.addAll(request.gatewayTypes());
        copy.cables.addAll(request.cableAssemblies());
        return copy;
    }

    /** Toys small enough to try every layout, with every limit biting now and then. */
    static TopologyRequest toy(long seed) {
        var random = new SplittableRandom(seed);
        var toy = new TopologyRequests();
        int zones = random.nextInt(4);
        int count = 1 + random.nextInt(5);
        for (int k = 0; k < count; k++) {
            String zone = zones == 0 || random.nextInt(4) == 0 ? null : "Z" + random.nextInt(zones);
            toy.axis(
                    random.nextInt(13), random.nextInt(4), zone, random.nextInt(3) == 0, 500 + 250 * random.nextInt(3));
        }
        int sites = 1 + random.nextInt(3);
        for (int k = 0; k < sites; k++) {
            toy.place(random.nextInt(13), random.nextInt(3), 1 + random.nextInt(2));
        }
        int ports = 1 + random.nextInt(2);
        for (int k = 0; k < ports; k++) {
            toy.port(random.nextInt(3) == 0 ? 1000 + 500 * random.nextInt(4) : 10000);
        }
        StopScope[] scopes = StopScope.values();
        int types = 1 + random.nextInt(2);
        for (int k = 0; k < types; k++) {
            int depth = 1 + random.nextInt(ports == 1 ? 3 : 2);
            toy.type(
                    20 + random.nextInt(60),
                    1 + random.nextInt(4),
                    depth,
                    random.nextInt(4),
                    scopes[random.nextInt(3)]);
        }
        for (CableUse use : new CableUse[] {CableUse.HOST, CableUse.TRUNK, CableUse.SPUR}) {
            for (int length : new int[] {2, 5, 9, 14}) {
                if (random.nextInt(6) > 0) {
                    toy.cable(use, length, 3 + random.nextInt(2 * length) + 0.5 * random.nextInt(2));
                }
            }
        }
        return toy.build();
    }

    /** Toys whose host cables are short and whose axes are far: gateways without axes have to relay. */
    static TopologyRequest farToy(long seed) {
        var random = new SplittableRandom(seed);
        var toy = new TopologyRequests();
        for (int k = 0; k < 3; k++) {
            toy.place(4 + 5 * k + random.nextInt(2), 0, 1 + random.nextInt(2));
        }
        int count = 2 + random.nextInt(3);
        for (int k = 0; k < count; k++) {
            toy.axis(9 + random.nextInt(8), random.nextInt(2), random.nextBoolean() ? "Z" : null, false, 1000);
        }
        toy.port(random.nextBoolean() ? 2000 : 9000).port(3000);
        toy.type(30 + random.nextInt(40), 1 + random.nextInt(3), 3, 0, StopScope.values()[random.nextInt(3)]);
        toy.cable(CableUse.HOST, 6, 5).cable(CableUse.TRUNK, 7, 6 + random.nextInt(3));
        toy.cable(CableUse.SPUR, 3, 4).cable(CableUse.SPUR, 7, 5 + random.nextInt(9));
        return toy.build();
    }

    /** Axes along a machine, a place every few metres, stop zones of sixteen axes, cables in steps. */
    static TopologyRequests machine(int count, int sites, int hostPorts, long seed) {
        var random = new SplittableRandom(seed);
        var machine = new TopologyRequests();
        machine.route = new RouteRule(RouteMetric.RECTILINEAR, 1.15, new Length(0.3));
        double metres = count * 0.45;
        for (int k = 0; k < count; k++) {
            machine.axis(
                    k * metres / count + random.nextDouble() * 0.3,
                    random.nextDouble() * 2,
                    "Z" + k / 16,
                    random.nextInt(4) == 0,
                    1000);
        }
        for (int k = 0; k < sites; k++) {
            machine.place((k + 0.5) * metres / sites, 1, 1);
        }
        for (int k = 0; k < hostPorts; k++) {
            machine.port(32000);
        }
        machine.type(420, 8, 4, 4, StopScope.GATEWAY);
        for (double length : new double[] {0.5, 1, 1.5, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25}) {
            machine.cable(CableUse.SPUR, length, 18 + 4.3 * length);
            machine.cable(CableUse.TRUNK, length, 12 + 2.1 * length);
            machine.cable(CableUse.HOST, length, 14 + 2.4 * length);
        }
        machine.cable(CableUse.HOST, 70, 190);
        return machine;
    }
}
