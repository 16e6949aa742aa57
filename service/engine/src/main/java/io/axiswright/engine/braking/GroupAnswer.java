package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.BrakingUnit;
import io.axiswright.engine.quantity.Capacitance;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** Puts the bare numbers of a bus into the quantities of the result. */
final class GroupAnswer {

    private final GroupStudy study;
    private final BrakingRequest request;

    GroupAnswer(GroupStudy study, BrakingRequest request) {
        this.study = study;
        this.request = request;
    }

    /** The bus in the result. */
    GroupBraking braking() {
        BrakingUnit unit = study.unit();
        return new GroupBraking(
                study.group().id(),
                study.group().axes().stream().map(BrakingAxis::id).toList(),
                study.verdict(),
                unit == null ? null : unit.id(),
                new Capacitance(study.bus().capacitance()),
                new Voltage(RectifiedVoltage.nominal(study.group().axes(), request.mains())),
                voltage(study.bus().floorEnergy()),
                voltage(study.bus().tripEnergy()),
                study.run().basis(),
                study.run().cases().stream().map(this::one).toList(),
                study.rejected());
    }

    private BrakingCase one(CaseOutcome outcome) {
        CaseOutcome.Worst worst = outcome.worst();
        BrakingUnit unit = study.unit();
        return new BrakingCase(
                outcome.kind(),
                outcome.zone(),
                outcome.criterion(),
                new Time(outcome.duration()),
                voltage(outcome.startEnergy()),
                voltage(outcome.endEnergy()),
                voltage(outcome.peakEnergy()),
                instant(outcome.peakInstant()),
                instant(outcome.tripInstant()),
                new Energy(outcome.returned()),
                new Energy(outcome.drawn()),
                new Energy(outcome.supplied()),
                new Energy(outcome.burned()),
                new Power(outcome.meanBurned()),
                new Power(unit == null || outcome.burned() == 0 ? 0 : peakPower(unit, outcome)),
                unit == null ? null : new Temperature(request.ambient().si() + outcome.peakRise()),
                worst == null ? null : new Time(worst.found().instant()),
                worst == null || Double.isNaN(worst.bound()) ? null : voltage(worst.bound()));
    }

    private double peakPower(BrakingUnit unit, CaseOutcome outcome) {
        double voltage = Math.max(unit.chopperOn().si(), study.bus().voltage(outcome.peakEnergy()));
        return voltage * UnitTrial.current(unit, voltage);
    }

    private Voltage voltage(double energy) {
        return new Voltage(study.bus().voltage(energy));
    }

    private static @Nullable Time instant(double seconds) {
        return Double.isNaN(seconds) ? null : new Time(seconds);
    }
}
