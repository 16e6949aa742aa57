package io.axiswright.engine.study;

import io.axiswright.engine.bill.CableLink;
import io.axiswright.engine.bill.Connections;
import io.axiswright.engine.bill.PortBank;
import io.axiswright.engine.braking.GroupBraking;
import io.axiswright.engine.catalogue.CableExtension;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.controlpower.FeedLink;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.HostPort;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.topology.PlacedGateway;
import io.axiswright.engine.topology.SpurLink;
import io.axiswright.engine.wiring.JoinedCable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The ports of host, gateways and drive units, the terminals of what has no ports that are counted, and the cables between them, for
 * the bill's closing check.
 */
final class ConnectionParts {

    private static final String SUPPLY = "control supply";
    private static final String FEEDER = "feeder";

    private final StudyRun run;
    private final List<PortBank> banks = new ArrayList<>();
    private final Set<String> terminals =
            new HashSet<>(Set.of(SUPPLY, CableEnds.SUPPLY_TERMINALS, CableEnds.MAINS_PANEL, CableEnds.STOP_SOURCE));
    private final List<CableLink> links = new ArrayList<>();

    private ConnectionParts(StudyRun run) {
        this.run = run;
    }

    static Connections of(StudyRun run) {
        var parts = new ConnectionParts(run);
        parts.addHost();
        for (Axis axis : run.request().design().axes()) {
            parts.banks.add(new PortBank(axis(axis.id()), 1, 0));
        }
        Set<String> passedOn = new HashSet<>();
        run.topology().gateways().forEach(gateway -> {
            if (gateway.upstream() != null) {
                passedOn.add(gateway.upstream());
            }
        });
        run.topology().gateways().forEach(gateway -> parts.addGateway(gateway, passedOn.contains(gateway.id())));
        run.controlPower().links().forEach(parts::addFeed);
        parts.addTerminals();
        for (JoinedCable joined : run.wiring().joined()) {
            if (joined.joined()) {
                parts.terminals.add(joined.to());
            }
            parts.links.add(new CableLink(joined.item(), joined.from(), joined.to()));
        }
        run.conductoring().cables().forEach(parts::addPower);
        return new Connections(parts.banks, parts.terminals, parts.links);
    }

    private void addHost() {
        Set<String> spare = new HashSet<>(run.topology().spareHostPorts());
        for (HostPort port : Needed.network(run.request().design()).host().ports()) {
            banks.add(new PortBank(host(port.id()), 1, spare.contains(port.id()) ? 1 : 0));
        }
    }

    private void addGateway(PlacedGateway gateway, boolean passesOn) {
        GatewayType type = run.stock().get(GatewayType.class, gateway.gatewayType());
        banks.add(new PortBank(gateway(gateway.id(), "drive ports"), type.drivePorts(), gateway.spareDrivePorts()));
        banks.add(new PortBank(gateway(gateway.id(), "trunk input"), 1, 0));
        if (type.chainDepth() > 1) {
            banks.add(new PortBank(gateway(gateway.id(), "trunk output"), 1, passesOn ? 0 : 1));
        }
        banks.add(new PortBank(gateway(gateway.id(), "24 V input"), 1, 0));
        terminals.add(gateway(gateway.id(), "24 V output"));
        link(
                gateway.linkCable(),
                gateway.linkExtension(),
                gateway.upstream() == null ? host(gateway.hostPort()) : gateway(gateway.upstream(), "trunk output"),
                gateway(gateway.id(), "trunk input"));
        for (SpurLink spur : gateway.spurs()) {
            link(spur.cable(), spur.extension(), gateway(gateway.id(), "drive ports"), axis(spur.axis()));
        }
    }

    /** Of two cables that are joined, each has one end at the coupler. */
    private void link(@Nullable String item, @Nullable CableExtension extension, String from, String to) {
        if (extension == null) {
            links.add(new CableLink(item, from, to));
            return;
        }
        String coupler = "coupler between " + from + " and " + to;
        terminals.add(coupler);
        links.add(new CableLink(item, from, coupler));
        links.add(new CableLink(extension.cable(), coupler, to));
    }

    private void addFeed(FeedLink feed) {
        @Nullable String item = feed.item();
        if (item != null) {
            link(
                    item,
                    feed.extension(),
                    feed.upstream() == null ? SUPPLY : gateway(feed.upstream(), "24 V output"),
                    gateway(feed.node(), "24 V input"));
        }
    }

    /** What stands in the design, whether cables end there or not. */
    private void addTerminals() {
        for (Axis axis : run.request().design().axes()) {
            terminals.add(CableEnds.bus(axis));
            terminals.add(CableEnds.stopInput(axis(axis.id())));
        }
        run.topology().gateways().forEach(gateway -> terminals.add(CableEnds.stopInput("gateway " + gateway.id())));
        for (GroupBraking group : run.braking().groups()) {
            for (int k = 0; group.chosen() != null && k < group.chosen().count(); k++) {
                terminals.add(CableEnds.brakingUnit(group, k));
                terminals.add(CableEnds.resistor(group, k));
            }
        }
        for (BranchCircuit circuit : run.supply().circuits()) {
            terminals.add(CableEnds.circuit(circuit.id()));
            circuit.loads().forEach(load -> terminals.add(CableEnds.load(load)));
        }
    }

    private void addPower(CircuitConductoring.PowerCable cable) {
        boolean feeder = cable.circuit().equals(FEEDER);
        for (CircuitConductoring.Piece piece : cable.pieces()) {
            links.add(new CableLink(
                    cable.item(),
                    feeder ? CableEnds.SUPPLY_TERMINALS : CableEnds.circuit(cable.circuit()),
                    feeder ? CableEnds.MAINS_PANEL : CableEnds.load(piece.load()),
                    nanometres(piece.length())));
        }
    }

    /** What a length is over by rounding alone is not told. */
    private static Length nanometres(double metres) {
        return new Length(
                BigDecimal.valueOf(metres).setScale(9, RoundingMode.HALF_UP).doubleValue());
    }

    private static String host(String port) {
        return "host port " + port;
    }

    private static String axis(String id) {
        return "axis " + id;
    }

    private static String gateway(String id, String ports) {
        return "gateway " + id + ", " + ports;
    }
}
