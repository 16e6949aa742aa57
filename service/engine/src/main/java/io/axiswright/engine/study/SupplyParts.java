package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.controlpower.ControlPowerResult;
import io.axiswright.engine.controlpower.PlacedControlSupply;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.CableLengths;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.design.Place;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.duty.DutyResult;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.supply.LoadUse;
import io.axiswright.engine.supply.SupplyLoad;
import io.axiswright.engine.supply.SupplyRequest;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Everything that hangs on the mains: drive units, their fans, control supplies; and what hangs on a DC bus that a drive unit
 * on the mains feeds.
 */
final class SupplyParts {

    /** Fans and supplies do not limit how many share a circuit; their current does. */
    private static final int NO_COUNT_LIMIT = 64;

    private static final Current NO_CURRENT = new Current(0);

    private final Design design;
    private final Installation installation;
    private final CableLengths lengths;
    private final Stock stock;
    private final FedBuses buses;
    private final List<SupplyLoad> loads = new ArrayList<>();
    private final Set<String> throughTransformer = new HashSet<>();

    private SupplyParts(Design design, Stock stock, FedBuses buses) {
        this.design = design;
        this.installation = Needed.installation(design);
        this.lengths = Needed.cableLengths(design);
        this.stock = stock;
        this.buses = buses;
    }

    static SupplyRequest request(StudyRequest request, Stock stock, DutyResult duty, ControlPowerResult controlPower) {
        var parts = new SupplyParts(request.design(), stock, new FedBuses(request.design(), stock, duty));
        for (int k = 0; k < duty.axes().size(); k++) {
            parts.addAxis(k, duty.axes().get(k));
        }
        controlPower.supplies().forEach(parts::addControlSupply);
        return new SupplyRequest(
                request.codeBasis(),
                request.design().mains(),
                parts.installation,
                parts.loads,
                request.catalogue().protectiveDevices(),
                parts.throughTransformer);
    }

    private void addAxis(int index, AxisDuty duty) {
        Axis axis = design.axes().get(index);
        if (installation.throughTransformer(axis)) {
            throughTransformer.addAll(List.of(axis.id(), fan(axis.id())));
        }
        DriveUnit unit = stock.find(DriveUnit.class, duty.driveUnit());
        if (unit != null && buses.feed(axis, unit)) {
            loads.add(new SupplyLoad(
                    axis.id(),
                    LoadUse.DRIVE,
                    unit.feed(),
                    unit.ratedVoltage(),
                    unit.ratedInputCurrent(),
                    duty.unit() == null ? unit.ratedInputCurrent() : duty.unit().cycleInputCurrent(),
                    unit.maxProtectiveDevice(),
                    unit.maxUnitsPerCircuit(),
                    unit.shortCircuitRating(),
                    unit.leakageCurrent(),
                    route(axis.position()),
                    "/design/axes/" + index,
                    axis.stopZone(),
                    axis.busGroup(),
                    unit.inputInrush(),
                    unit.inputTerminals(),
                    Boolean.TRUE.equals(installation.cyclesInStep()) ? InputCourse.of(duty, unit) : null));
        }
        VentilationKit kit = stock.find(VentilationKit.class, duty.ventilationKit());
        if (kit != null) {
            Current current = lineCurrent(kit.inputPower().si(), kit.ratedVoltage(), kit.feed());
            loads.add(new SupplyLoad(
                    fan(axis.id()),
                    LoadUse.VENTILATION,
                    kit.feed(),
                    kit.ratedVoltage(),
                    current,
                    current,
                    null,
                    NO_COUNT_LIMIT,
                    null,
                    NO_CURRENT,
                    route(axis.position()),
                    "/design/axes/" + index,
                    axis.stopZone(),
                    null));
        }
    }

    /** The id of the load that is the fan of an axis. */
    static String fan(String axis) {
        return axis + "/fan";
    }

    /** The ids of the loads that are the units of a control supply. */
    static List<String> units(PlacedControlSupply placed) {
        return placed.count() == 1
                ? List.of(placed.id())
                : IntStream.rangeClosed(1, placed.count())
                        .mapToObj(unit -> placed.id() + "/" + unit)
                        .toList();
    }

    private void addControlSupply(PlacedControlSupply placed) {
        ControlSupply item = stock.get(ControlSupply.class, placed.item());
        double ratedInput =
                item.outputVoltage().si() * item.ratedCurrent().si() / item.efficiency() / item.powerFactor();
        double input = placed.inputApparentPower().si() / placed.count();
        for (String unit : units(placed)) {
            if (installation.controlSuppliesThroughTransformer()) {
                throughTransformer.add(unit);
            }
            loads.add(new SupplyLoad(
                    unit,
                    LoadUse.CONTROL_SUPPLY,
                    item.feed(),
                    item.ratedVoltage(),
                    lineCurrent(ratedInput, item.ratedVoltage(), item.feed()),
                    lineCurrent(input, item.ratedVoltage(), item.feed()),
                    item.maxProtectiveDevice(),
                    NO_COUNT_LIMIT,
                    null,
                    NO_CURRENT,
                    route(place(placed.place())),
                    "/design/controlPower",
                    null,
                    null,
                    item.inputInrush(),
                    null,
                    null));
        }
    }

    private static Current lineCurrent(double voltAmperes, Voltage voltage, Feed feed) {
        return new Current(voltAmperes / voltage.si() / (feed == Feed.THREE_PHASE ? Math.sqrt(3) : 1));
    }

    private Length route(Position to) {
        return lengths.between(installation.mainsPanel(), to);
    }

    private Position place(String id) {
        return Needed.network(design).places().stream()
                .filter(place -> place.id().equals(id))
                .map(Place::position)
                .findFirst()
                .orElseThrow();
    }
}
