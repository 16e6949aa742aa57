package io.axiswright.load;

import io.axiswright.app.demo.Demo;
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
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.study.StudyRequest;
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
