package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.controlpower.ControlLoad;
import io.axiswright.engine.controlpower.ControlNode;
import io.axiswright.engine.controlpower.ControlPowerRequest;
import io.axiswright.engine.controlpower.FieldLoad;
import io.axiswright.engine.controlpower.SupplyWay;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.CableLengths;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.FieldDevice;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.design.Place;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.ReservedAxis;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.duty.DutyResult;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.topology.PlacedGateway;
import io.axiswright.engine.topology.ReservedPorts;
import io.axiswright.engine.topology.SpurLink;
import io.axiswright.engine.topology.TopologyResult;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The 24 V network as the layout makes it: each trunk's gateways are fed one from the other, the first from the supply. */
final class ControlPowerParts {

    private final Design design;
    private final Network network;
    private final CableLengths lengths;
    private final Stock stock;
    private final Map<String, Integer> axisIndex = new HashMap<>();
    private final Map<String, AxisDuty> duties = new HashMap<>();
    private final Map<String, Position> places = new HashMap<>();
    private final Map<String, PlacedGateway> gateways = new HashMap<>();

    private ControlPowerParts(Design design, Stock stock, DutyResult duty, TopologyResult topology) {
        this.design = design;
        this.network = Needed.network(design);
        this.lengths = CableLengths.of(design, network);
        this.stock = stock;
        for (int k = 0; k < design.axes().size(); k++) {
            axisIndex.put(design.axes().get(k).id(), k);
        }
        duty.axes().forEach(axis -> duties.put(axis.axis(), axis));
        for (Place place : network.places()) {
            places.put(place.id(), place.position());
        }
        topology.gateways().forEach(gateway -> gateways.put(gateway.id(), gateway));
    }

    static ControlPowerRequest request(StudyRequest request, Stock stock, DutyResult duty, TopologyResult topology) {
        Design design = request.design();
        var parts = new ControlPowerParts(design, stock, duty, topology);
        Installation installation = design.installation();
        return new ControlPowerRequest(
                request.codeBasis(),
                Needed.controlPower(design),
                design.site(),
                design.mains(),
                topology.gateways().stream().map(parts::node).toList(),
                request.catalogue().controlSupplies(),
                request.catalogue().cableAssemblies(),
                request.catalogue().coupledCables(),
                request.catalogue().outputProtectionStock(),
                request.catalogue().bufferStock(),
                installation != null && installation.controlSuppliesThroughTransformer());
    }

    /** What a controlled stop takes is known from the design alone; the drive has to hold the load until its brake does. */
    private @Nullable Time restTime(Axis axis, @Nullable HoldingBrake brake) {
        return design.stopZones().stream()
                .filter(zone -> zone.id().equals(axis.stopZone()))
                .flatMap(zone -> Stream.ofNullable(zone.plannedStop()))
                .map(stop -> new Time(
                        stop.si() + (brake == null ? 0 : brake.engageDelay().si())))
                .findFirst()
                .orElse(null);
    }

    private List<FieldLoad> devices(PlacedGateway gateway) {
        Set<String> axes = gateway.spurs().stream().map(SpurLink::axis).collect(Collectors.toSet());
        List<FieldDevice> devices = Needed.controlPower(design).fieldDeviceList();
        return IntStream.range(0, devices.size())
                .filter(k -> axes.contains(devices.get(k).axis()))
                .mapToObj(k -> new FieldLoad(devices.get(k), k))
                .toList();
    }

    private ControlNode node(PlacedGateway gateway) {
        PlacedGateway upstream = gateway.upstream() == null ? null : gateways.get(gateway.upstream());
        String from = upstream == null ? Needed.controlPower(design).place() : upstream.place();
        return new ControlNode(
                gateway.id(),
                stock.get(GatewayType.class, gateway.gatewayType()),
                gateway.hostPort(),
                gateway.depth(),
                gateway.upstream(),
                between(from, gateway.place()),
                between(Needed.controlPower(design).place(), gateway.place()),
                loads(gateway),
                devices(gateway),
                Needed.controlPower(design).furtherPlaceList().stream()
                        .map(place -> new SupplyWay(place, between(place, gateway.place())))
                        .toList(),
                reserved(gateway));
    }

    /** What the axes to come on a gateway will take; null where nothing is kept. */
    private @Nullable Current reserved(PlacedGateway gateway) {
        double sum = 0;
        for (ReservedPorts kept : gateway.reservedList()) {
            for (ReservedAxis reserved : network.reservedList()) {
                if (reserved.id().equals(kept.id()) && reserved.controlCurrent() != null) {
                    sum += kept.ports() * reserved.controlCurrent().si();
                }
            }
        }
        return sum == 0 ? null : new Current(sum);
    }

    private Length between(String from, String to) {
        return lengths.between(position(from), position(to));
    }

    private Position position(String place) {
        Position position = places.get(place);
        if (position == null) {
            throw new IllegalStateException("no place " + place);
        }
        return position;
    }

    private List<ControlLoad> loads(PlacedGateway gateway) {
        List<ControlLoad> loads = new ArrayList<>();
        for (SpurLink spur : gateway.spurs()) {
            int index = axisIndex.getOrDefault(spur.axis(), 0);
            Axis axis = design.axes().get(index);
            AxisDuty duty = duties.get(axis.id());
            DriveUnit unit = duty == null ? null : stock.find(DriveUnit.class, duty.driveUnit());
            if (duty != null && unit != null) {
                HoldingBrake brake = stock.find(HoldingBrake.class, duty.holdingBrake());
                loads.add(new ControlLoad(
                        axis.id(),
                        index,
                        unit,
                        brake,
                        stock.laid(spur.cable(), spur.extension()),
                        axis.drive().keepAlive(),
                        restTime(axis, brake)));
            }
        }
        return loads;
    }
}
