package io.axiswright.load;

import io.axiswright.app.demo.Demo;
import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ControlPower;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Host;
import io.axiswright.engine.design.HostPort;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.design.Place;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.study.StudyRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The demo cell, and rows of it: every cell brings axes, stop zones, bus groups, places and host ports of its own, and is
 * controlled by the host of the first.
 */
final class DemoStudies {

    /** Metres from cell to cell: close enough that the longest cable in the catalogue reaches from the host to the last. */
    private static final double PITCH = 1;

    /** Metres from axis to axis along a line, and the boxes on it. */
    private static final double SPACING = 0.45;

    private static final int BOXES = 10;

    private static final Design CELL = Demo.design();

    private DemoStudies() {}

    /** The demo as it is. */
    static StudyRequest demo() {
        return request(CELL);
    }

    /** A row of cells; of the last only as many axes as are still wanted. */
    static StudyRequest row(int axes) {
        int inCell = CELL.axes().size();
        int cells = Math.ceilDiv(axes, inCell);
        Network network = Objects.requireNonNull(CELL.network());
        ControlPower power = Objects.requireNonNull(CELL.controlPower());
        return request(new Design(
                CELL.name(),
                CELL.site(),
                CELL.mains(),
                repeat(cells, CELL.axes(), DemoStudies::axis).subList(0, axes),
                repeat(cells, CELL.stopZones(), DemoStudies::stopZone),
                new Network(
                        new Host(
                                network.host().position(),
                                repeat(cells, network.host().ports(), DemoStudies::hostPort)),
                        repeat(cells, network.places(), DemoStudies::place),
                        network.route(),
                        null,
                        null,
                        network.sparePorts(),
                        network.searchLimit()),
                new ControlPower(of(0, power.place()), power.reserve(), power.brakesReleaseTogether()),
                withoutRoutes(Objects.requireNonNull(CELL.installation()))));
    }

    /**
     * The axes of such a row along one long machine, with boxes for one gateway each, one type of gateway, and host ports that carry
     * every command rate: its layout is proven within half a second, where the row keeps the search busy to its limit.
     */
    static StudyRequest line(int axes) {
        StudyRequest row = row(axes);
        Design design = row.design();
        Network network = Objects.requireNonNull(design.network());
        List<Axis> placed = IntStream.range(0, axes)
                .mapToObj(k -> Copies.with(design.axes().get(k), "position", at(k * SPACING, 0.5 + k % 3)))
                .toList();
        List<Place> places = new ArrayList<>(List.of(network.places().getFirst()));
        for (int k = 0; k < BOXES; k++) {
            places.add(new Place("box-" + k, at((k + 0.5) * axes * SPACING / BOXES, 1), 1));
        }
        List<HostPort> ports = network.host().ports().stream()
                .map(port -> new HostPort(port.id(), new Frequency(64_000)))
                .toList();
        Network lean = Copies.with(
                Copies.with(network, "places", places),
                "host",
                new Host(network.host().position(), ports));
        return new StudyRequest(
                row.codeBasis(),
                withOneGateway(row.catalogue()),
                Copies.with(Copies.with(design, "axes", placed), "network", lean));
    }

    private static Position at(double x, double y) {
        return new Position(new Length(x), new Length(y), new Length(1));
    }

    /** Terms, rules and exclusions may name the other types. */
    private static Catalogue withOneGateway(Catalogue catalogue) {
        Catalogue lean =
                Copies.with(catalogue, "gateways", List.of(catalogue.gateways().get(1)));
        for (String list : List.of("saleTerms", "demandRules", "exclusions")) {
            lean = Copies.with(lean, list, null);
        }
        return lean;
    }

    /** Routes and enclosures name axes and places of one cell; a machine of many is measured without them. */
    private static Installation withoutRoutes(Installation cell) {
        return new Installation(
                cell.mainsPanel(),
                cell.feederLength(),
                cell.method(),
                cell.insulation(),
                cell.material(),
                cell.ambient(),
                cell.groupedCircuits(),
                cell.terminationRating(),
                cell.voltageDropLimit(),
                cell.device());
    }

    private static StudyRequest request(Design design) {
        return new StudyRequest(CodeBasis.IEC_60204_1, Demo.catalogue(), design);
    }

    private static <T> List<T> repeat(int cells, List<T> inCell, BiFunction<Integer, T, T> copy) {
        return IntStream.range(0, cells)
                .boxed()
                .flatMap(cell -> inCell.stream().map(one -> copy.apply(cell, one)))
                .toList();
    }

    private static Axis axis(int cell, Axis axis) {
        return new Axis(
                of(cell, axis.id()),
                axis.description(),
                axis.mechanism(),
                axis.gears(),
                axis.couplingInertia(),
                axis.cycle(),
                moved(cell, axis.position()),
                ofNullable(cell, axis.stopZone()),
                ofNullable(cell, axis.busGroup()),
                axis.commandRate(),
                axis.drive(),
                axis.mounting(),
                axis.shaftLoad());
    }

    private static StopZone stopZone(int cell, StopZone zone) {
        return new StopZone(
                of(cell, zone.id()),
                zone.category(),
                zone.reactionTime(),
                zone.decelerationTime(),
                zone.stopsPerHour(),
                zone.safeguards());
    }

    private static HostPort hostPort(int cell, HostPort port) {
        return new HostPort(of(cell, port.id()), port.commandRate());
    }

    private static Place place(int cell, Place place) {
        return new Place(of(cell, place.id()), moved(cell, place.position()), place.maxGateways());
    }

    private static Position moved(int cell, Position position) {
        return new Position(new Length(position.x().si() + cell * PITCH), position.y(), position.z());
    }

    private static String of(int cell, String id) {
        return id + "-" + cell;
    }

    private static @Nullable String ofNullable(int cell, @Nullable String id) {
        return id == null ? null : of(cell, id);
    }
}
