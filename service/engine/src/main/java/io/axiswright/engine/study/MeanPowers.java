package io.axiswright.engine.study;

import io.axiswright.engine.braking.BrakingCase;
import io.axiswright.engine.braking.CycleBasis;
import io.axiswright.engine.braking.GroupBraking;
import io.axiswright.engine.braking.SupplyLine;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.duty.DutyFigures;
import io.axiswright.engine.duty.UnitFigures;
import io.axiswright.engine.energy.AxisPower;
import io.axiswright.engine.energy.BusPower;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Power;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The mean powers of axes and DC buses over their cycles. */
final class MeanPowers {

    private static final Power NOTHING = new Power(0);

    private final Map<String, AxisPower> axes = new LinkedHashMap<>();
    private final List<BusPower> buses;

    MeanPowers(StudyRun run) {
        run.duty().axes().forEach(duty -> addAxis(duty, run.stock()));
        buses = run.braking().groups().stream().map(this::bus).toList();
    }

    /** Every axis that has a drive unit. */
    List<AxisPower> axes() {
        return List.copyOf(axes.values());
    }

    List<BusPower> buses() {
        return buses;
    }

    /** What a bus takes from the mains, what the load adds to the losses of its electronics included, W. */
    double fromMains(BusPower bus) {
        return bus.burned().si()
                + bus.axes().stream()
                        .map(axes::get)
                        .filter(Objects::nonNull)
                        .mapToDouble(a -> a.fromBus() + a.byLoad())
                        .sum();
    }

    private void addAxis(AxisDuty duty, Stock stock) {
        DriveUnit unit = stock.find(DriveUnit.class, duty.driveUnit());
        UnitFigures figures = duty.unit();
        if (unit == null || figures == null) {
            return;
        }
        DutyFigures cycle = duty.figures();
        VentilationKit kit = stock.find(VentilationKit.class, duty.ventilationKit());
        axes.put(
                duty.axis(),
                new AxisPower(
                        duty.axis(),
                        mean(cycle.motoredEnergy(), cycle),
                        mean(cycle.returnedEnergy(), cycle),
                        figures.copperLoss(),
                        unit.standbyLoss(),
                        unit.loadLoss(cycle.rmsTorque()).orElse(null),
                        kit == null ? NOTHING : kit.inputPower()));
    }

    private static Power mean(Energy energy, DutyFigures cycle) {
        double period = cycle.cyclePeriod().si();
        return new Power(period > 0 ? energy.si() / period : 0);
    }

    /** What a bus without a unit that fits cannot take is counted as burned: it has to go somewhere. */
    private BusPower bus(GroupBraking group) {
        BrakingCase cycle = group.cases().getFirst();
        double seconds = cycle.duration().si();
        double surplus = -group.axes().stream()
                .map(axes::get)
                .filter(Objects::nonNull)
                .mapToDouble(AxisPower::fromBus)
                .sum();
        double burned = group.lines().stream()
                .filter(line -> line.line() == SupplyLine.NOMINAL)
                .mapToDouble(line -> line.meanResistorPower().si())
                .findFirst()
                .orElse(0);
        return new BusPower(
                group.id(),
                group.axes(),
                new Power(seconds > 0 ? cycle.returnedEnergy().si() / seconds : 0),
                new Power(Math.max(burned, surplus)),
                group.cycleBasis() == CycleBasis.BOUND);
    }
}
