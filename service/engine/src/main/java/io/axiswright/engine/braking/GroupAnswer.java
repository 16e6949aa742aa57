package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.BrakingUnit;
import io.axiswright.engine.quantity.Capacitance;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
        CycleOutcome.Settling settling = study.run().settling();
        BrakingUnit unit = study.unit();
        double highestLine = highestLine();
        return new GroupBraking(
                study.group().id(),
                study.group().axes().stream().map(BrakingAxis::id).toList(),
                study.verdict(),
                unit == null ? null : unit.id(),
                unit == null ? null : chosen(unit),
                new Capacitance(study.bus().capacitance()),
                new Voltage(RectifiedVoltage.nominal(study.group().axes(), request.mains())),
                voltage(study.bus().floorEnergy()),
                voltage(study.bus().tripEnergy()),
                study.run().basis(),
                settling == null ? null : settling.cycles(),
                settling == null ? null : new Energy(settling.residual()),
                alignment(),
                new Voltage(Math.min(
                        highestLine, RectifiedVoltage.highestLine(study.group().axes(), request.mains()))),
                new Voltage(highestLine),
                List.of(line(SupplyLine.HIGH), line(SupplyLine.NOMINAL), line(SupplyLine.LOW)),
                ZoneReliefs.of(study.loads(), study.bare(), study.bus()),
                request.unaidedStops()
                        ? UnaidedStops.of(study.loads(), study.bare().cycle(), study.bus())
                        : null,
                study.run().cases().stream().map(this::one).toList(),
                study.rejected());
    }

    private ChosenUnit chosen(BrakingUnit unit) {
        GroupRun run = study.run();
        GroupRun dead = study.withOneDead();
        double lowest = unit.resistance().si() * (1 - unit.resistanceTolerance());
        double on = unit.chopperOn().si();
        double highest = Math.max(on, study.bus().voltage(run.peakEnergy()));
        ResistorHeat heat = ResistorHeat.of(
                unit, study.count(), run, study.group().stopsPerHour(request.zones()), request.ambient());
        return new ChosenUnit(
                study.count(),
                new Resistance(on / (unit.chopperCurrent().si() * (1 - unit.resistanceTolerance()))),
                run.peakPower() > 0
                        ? new Resistance(on * on / run.peakPower() * study.count() / (1 + unit.resistanceTolerance()))
                        : null,
                new Current(highest / lowest),
                new Power(highest * highest / lowest),
                new Energy(run.largestPulse() / study.count()),
                new Power(heat.meanPower()),
                new Power(heat.allowedPower()),
                heat.stopsPerHour(),
                Double.isFinite(heat.tolerated()) ? heat.tolerated() : null,
                heat.hottest(),
                new Current(Math.sqrt(heat.meanPower() / lowest)),
                unit.maxResistorCable(),
                voltage(dead.peakEnergy()),
                !dead.fits(study.bus()));
    }

    private @Nullable Alignment alignment() {
        if (!(study.loads().cycle() instanceof PhaseBound bound)) {
            return null;
        }
        AlignmentSearch.Found found = AlignmentSearch.of(bound.courses(), study.bus(), study.chopper(study.bus(), 0));
        double peak = study.bus().voltage(found.peak());
        return new Alignment(
                new Voltage(peak),
                new Voltage(study.bus().voltage(study.run().cycle().peakEnergy()) - peak),
                Arrays.stream(found.phases()).mapToObj(Time::new).toList(),
                course(new Replay(
                        found.power(),
                        new BusState(study.bus().floorEnergy(), false, 0),
                        study.chopper(study.bus(), 0))));
    }

    private LineOutcome line(SupplyLine line) {
        double tolerance = switch (line) {
            case HIGH -> request.mains().highTolerance();
            case NOMINAL -> 0;
            case LOW -> -request.mains().lowTolerance();
        };
        double floor = nominal() * (1 + tolerance);
        Bus bus = study.group().bus(floor);
        GroupRun run = line == SupplyLine.HIGH
                ? study.run()
                : study.loads().again(study.run(), study.bus(), bus, study.chopper(bus, 0));
        double stops = run.stopPeakEnergy();
        return new LineOutcome(
                line,
                new Voltage(floor),
                voltage(run.cycle().peakEnergy()),
                stops == 0 ? null : voltage(stops),
                new Power(run.cycle().meanBurned()));
    }

    private double nominal() {
        return RectifiedVoltage.nominal(study.group().axes(), request.mains());
    }

    /**
     * Without a chopper the energy of the bus is that of the rectifier's voltage and what comes on top, so a higher line lifts
     * every peak by the same energy. With one, the line may rise to switch-off if every case still fits there; else the limit,
     * monotone because no peak falls when the line rises, is bracketed.
     */
    private double highestLine() {
        double perVolt = request.mains().voltage().si() / nominal();
        Bus bus = study.bus();
        BrakingUnit unit = study.unit();
        if (unit == null) {
            double room = bus.floorEnergy() + bus.tripEnergy() - study.bare().peakEnergy();
            return perVolt * bus.voltage(Math.max(0, room));
        }
        double fits = bus.voltage(bus.floorEnergy());
        double fails = unit.chopperOff().si();
        if (fitsAt(fails * (1 - 1e-9))) {
            return perVolt * fails;
        }
        while (fails - fits > 1e-4 * fits) {
            double middle = (fits + fails) / 2;
            if (fitsAt(middle)) {
                fits = middle;
            } else {
                fails = middle;
            }
        }
        return perVolt * fits;
    }

    private boolean fitsAt(double floor) {
        Bus bus = study.group().bus(floor);
        return study.loads().fit(bus, study.chopper(bus, 0));
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
                worst == null || Double.isNaN(worst.bound()) ? null : voltage(worst.bound()),
                alignment(outcome),
                course(outcome.replay()));
    }

    private @Nullable StopAlignment alignment(CaseOutcome outcome) {
        if (!(study.loads().stop(outcome) instanceof UnrelatedStop stop)
                || stop.stopping().isEmpty()) {
            return null;
        }
        StopAlignmentSearch.Found found = StopAlignmentSearch.of(stop, study.bus(), study.chopper(study.bus(), 0));
        double peak = study.bus().voltage(found.peak());
        List<String> axes = Stream.concat(
                        stop.stopping().stream().map(StoppingAxis::id),
                        stop.others().stream().map(UnrelatedStop.Going::id))
                .toList();
        return new StopAlignment(
                new Voltage(peak),
                new Voltage(study.bus().voltage(outcome.peakEnergy()) - peak),
                IntStream.range(0, axes.size())
                        .mapToObj(k -> new StopAlignment.AxisPhase(axes.get(k), new Time(found.phases()[k])))
                        .toList());
    }

    private @Nullable BusCourse course(@Nullable Replay replay) {
        TimeCourses wanted = request.timeCourses();
        return wanted == null || replay == null
                ? null
                : CourseDrawing.of(
                        replay, study.bus(), wanted.share(), study.unit() == null ? null : request.ambient());
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
