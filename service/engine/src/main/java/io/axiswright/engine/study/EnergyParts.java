package io.axiswright.engine.study;

import io.axiswright.engine.braking.BrakingCase;
import io.axiswright.engine.braking.CycleBasis;
import io.axiswright.engine.braking.GroupBraking;
import io.axiswright.engine.braking.SupplyLine;
import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.design.Operation;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.duty.DutyFigures;
import io.axiswright.engine.duty.UnitFigures;
import io.axiswright.engine.energy.AxisPower;
import io.axiswright.engine.energy.BusPower;
import io.axiswright.engine.energy.ConductorLoss;
import io.axiswright.engine.energy.ControlSupplyPower;
import io.axiswright.engine.energy.EnergyRequest;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Power;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The mean powers of everything that takes energy or turns it into heat. */
final class EnergyParts {

    private static final Power NOTHING = new Power(0);

    private EnergyParts() {}

    static EnergyRequest request(StudyRun run, Operation operation) {
        Map<String, AxisPower> axes = new LinkedHashMap<>();
        run.duty().axes().forEach(duty -> addAxis(duty, run.stock(), axes));
        var heat = new CableHeat(run);
        return new EnergyRequest(
                operation,
                List.copyOf(axes.values()),
                run.braking().groups().stream().map(group -> bus(group, axes)).toList(),
                run.controlPower().supplies().stream()
                        .map(supply -> new ControlSupplyPower(supply.id(), supply.inputPower(), supply.heat()))
                        .toList(),
                conductors(run, heat),
                operation.life() == null ? List.of() : new CableChoices(run, heat).all());
    }

    private static void addAxis(AxisDuty duty, Stock stock, Map<String, AxisPower> axes) {
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
    private static BusPower bus(GroupBraking group, Map<String, AxisPower> axes) {
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

    private static List<ConductorLoss> conductors(StudyRun run, CableHeat heat) {
        List<ConductorLoss> losses = new ArrayList<>();
        for (var cable : run.conductoring().cables()) {
            heat.watts(cable, run.stock().get(BulkCable.class, cable.item()).size())
                    .ifPresent(watts -> losses.add(new ConductorLoss(cable.circuit(), new Power(watts))));
        }
        return List.copyOf(losses);
    }
}
