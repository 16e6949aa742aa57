package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.CableExtension;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.controlpower.ChainFeed;
import io.axiswright.engine.controlpower.FeedLink;
import io.axiswright.engine.controlpower.PlacedControlSupply;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.CableLengths;
import io.axiswright.engine.design.CableRoute;
import io.axiswright.engine.design.Conduit;
import io.axiswright.engine.design.Containment;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.design.Place;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.StandardConduit;
import io.axiswright.engine.design.Trunking;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.standard.ConduitSizes;
import io.axiswright.engine.standard.Sourced;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.topology.PlacedGateway;
import io.axiswright.engine.topology.SpurLink;
import io.axiswright.engine.wiring.CableRun;
import io.axiswright.engine.wiring.ConduitOnWay;
import io.axiswright.engine.wiring.Join;
import io.axiswright.engine.wiring.WiringRequest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Every cable the other disciplines chose, on its way; and what is left to be joined: DC buses and stop inputs. */
final class WiringParts {

    private final StudyRun run;
    private final Design design;
    private final Network network;
    private final CableLengths lengths;
    private final Enclosures enclosures;
    private final Map<String, Position> places = new HashMap<>();
    private final Map<String, Position> loads = new HashMap<>();
    private final Map<String, String> zones = new HashMap<>();
    private final Map<String, PlacedGateway> gateways = new HashMap<>();
    private final List<CableRun> runs = new ArrayList<>();
    private final List<Join> joins = new ArrayList<>();

    private WiringParts(StudyRun run) {
        this.run = run;
        this.design = run.request().design();
        this.network = Needed.network(design);
        this.lengths = Needed.cableLengths(design);
        this.enclosures = new Enclosures(design);
        for (Place place : network.places()) {
            places.put(place.id(), place.position());
        }
        for (Axis axis : design.axes()) {
            loads.put(axis.id(), axis.position());
            loads.put(SupplyParts.fan(axis.id()), axis.position());
            if (axis.stopZone() != null) {
                zones.put(axis.id(), axis.stopZone());
            }
        }
        for (PlacedControlSupply supply : run.controlPower().supplies()) {
            SupplyParts.units(supply).forEach(unit -> loads.put(unit, place(supply.place())));
        }
        run.topology().gateways().forEach(gateway -> gateways.put(gateway.id(), gateway));
    }

    static WiringRequest request(StudyRun run) {
        var parts = new WiringParts(run);
        parts.runPowerCables();
        parts.runNetworkCables();
        parts.runControlCables();
        parts.joins.addAll(BusJoins.of(run, parts.enclosures));
        parts.joinStopInputs();
        Catalogue catalogue = run.request().catalogue();
        return new WiringRequest(
                parts.joins,
                parts.runs,
                run.supply().circuits().isEmpty() ? null : run.supply().disconnect(),
                run.stock().find(ProtectiveDevice.class, run.supply().feeder().device()),
                parts.conduits(),
                catalogue.cableAssemblies(),
                catalogue.coupledCables(),
                catalogue.glandStock(),
                catalogue.disconnectorStock(),
                run.request().catalogueSource());
    }

    private Map<String, List<ConduitOnWay>> conduits() {
        Map<String, List<ConduitOnWay>> conduits = new HashMap<>();
        List<CableRoute> routes = Needed.installation(design).routes();
        for (int k = 0; k < routes.size(); k++) {
            CableRoute route = routes.get(k);
            Length inner = innerDiameter(route.containment());
            if (inner != null) {
                var conduit =
                        new ConduitOnWay(route.id(), inner, "/design/installation/cableRoutes/" + k + "/containment");
                Stream.concat(
                                route.axisAssemblyList().stream().map(axis -> "axis " + axis),
                                gateways.values().stream()
                                        .filter(one -> route.placeAssemblyList().contains(one.place()))
                                        .map(one -> "gateway " + one.id()))
                        .forEach(asker -> conduits.computeIfAbsent(asker, _ -> new ArrayList<>())
                                .add(conduit));
            }
        }
        return conduits;
    }

    /** What a cable has to pass from end to end; into trunking it is laid. A conduit that does not exist is refused where its fill is examined. */
    private static @Nullable Length innerDiameter(@Nullable Containment containment) {
        return switch (containment) {
            case null -> null;
            case Trunking _ -> null;
            case Conduit conduit -> conduit.innerDiameter();
            case StandardConduit conduit ->
                ConduitSizes.innerDiameter(conduit.type(), conduit.metricDesignator())
                        .map(Sourced::value)
                        .orElse(null);
        };
    }

    private Position place(String id) {
        return Objects.requireNonNull(places.get(id));
    }

    private void runPowerCables() {
        Map<String, BranchCircuit> circuits = new HashMap<>();
        run.supply().circuits().forEach(circuit -> circuits.put(circuit.id(), circuit));
        Position panel = Needed.installation(design).mainsPanel();
        for (CircuitConductoring.PowerCable cable : run.conductoring().cables()) {
            var item = run.stock().get(BulkCable.class, cable.item());
            BranchCircuit circuit = circuits.get(cable.circuit());
            List<List<String>> ways = circuit == null
                    ? List.of(enclosures.entered(panel))
                    : circuit.loads().stream()
                            .map(load -> enclosures.entered(panel, Objects.requireNonNull(loads.get(load))))
                            .toList();
            for (List<String> way : ways) {
                runs.add(new CableRun(
                        "circuit " + cable.circuit(),
                        item.id(),
                        item.outerDiameter(),
                        List.of(),
                        way,
                        "/design/installation"));
            }
        }
    }

    private void runNetworkCables() {
        for (PlacedGateway gateway : run.topology().gateways()) {
            Position here = place(gateway.place());
            Position from = gateway.upstream() == null ? network.host().position() : standing(gateway.upstream());
            runCable(
                    "gateway " + gateway.id(),
                    gateway.linkCable(),
                    gateway.linkExtension(),
                    from,
                    here,
                    "/design/network");
            for (SpurLink spur : gateway.spurs()) {
                Position to = Objects.requireNonNull(loads.get(spur.axis()));
                runCable("axis " + spur.axis(), spur.cable(), spur.extension(), here, to, "/design/network");
            }
        }
    }

    private void runControlCables() {
        Map<String, Position> supplies = new HashMap<>();
        run.controlPower().supplies().forEach(supply -> supplies.put(supply.id(), place(supply.place())));
        Map<String, Position> feeding = new HashMap<>();
        for (ChainFeed chain : run.controlPower().chains()) {
            if (chain.feedPoint() != null && chain.supply() != null) {
                feeding.put(chain.feedPoint(), Objects.requireNonNull(supplies.get(chain.supply())));
            }
        }
        for (FeedLink link : run.controlPower().links()) {
            Position from = link.upstream() == null
                    ? Objects.requireNonNull(feeding.get(link.node()))
                    : standing(link.upstream());
            runCable(
                    "gateway " + link.node(),
                    link.item(),
                    link.extension(),
                    from,
                    standing(link.node()),
                    "/design/controlPower");
        }
    }

    private Position standing(String gateway) {
        return place(Objects.requireNonNull(gateways.get(gateway)).place());
    }

    private void runCable(
            String asker,
            @Nullable String item,
            @Nullable CableExtension extension,
            Position from,
            Position to,
            String pointer) {
        if (item != null) {
            runs.addAll(
                    CableRun.along(asker, run.stock().laid(item, extension), enclosures.entered(from, to), pointer));
        }
    }

    /** A stop demand goes to the gateway, to the first of its trunk, or, where neither takes it, to each drive unit. */
    private void joinStopInputs() {
        Set<String> done = new HashSet<>();
        for (PlacedGateway gateway : run.topology().gateways()) {
            for (SpurLink spur : gateway.spurs()) {
                if (zones.containsKey(spur.axis())) {
                    joinStopInput(gateway, spur.axis(), done);
                }
            }
        }
    }

    private void joinStopInput(PlacedGateway gateway, String axis, Set<String> done) {
        switch (run.stock().get(GatewayType.class, gateway.gatewayType()).stopScope()) {
            case GATEWAY -> joinStop("gateway " + gateway.id(), place(gateway.place()), done);
            case TRUNK -> {
                PlacedGateway first = firstOfTrunk(gateway);
                joinStop("gateway " + first.id(), place(first.place()), done);
            }
            case NONE -> joinStop("axis " + axis, Objects.requireNonNull(loads.get(axis)), done);
        }
    }

    private PlacedGateway firstOfTrunk(PlacedGateway gateway) {
        PlacedGateway at = gateway;
        while (at.upstream() != null) {
            at = Objects.requireNonNull(gateways.get(at.upstream()));
        }
        return at;
    }

    private void joinStop(String asker, Position to, Set<String> done) {
        if (!done.add(asker)) {
            return;
        }
        String stated = Needed.wiring(design).stopPlace();
        Position from = place(stated == null ? Needed.controlPower(design).place() : stated);
        joins.add(new Join(
                CableUse.STOP_SIGNAL,
                asker,
                "brings it the stop demand",
                CableEnds.STOP_SOURCE,
                CableEnds.stopInput(asker),
                lengths.between(from, to),
                null,
                null,
                null,
                enclosures.entered(from, to),
                "/design/stopZones"));
    }
}
