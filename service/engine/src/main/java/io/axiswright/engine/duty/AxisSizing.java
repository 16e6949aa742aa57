package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Sizes the axes of a request one by one; what drive units are worth at its site and on its mains is worked out once for all of them. */
final class AxisSizing {

    /**
     * All that the sizing of an axis follows from.
     *
     * @param index its place in the design's list of axes, for pointers
     * @param searched whether reserves are searched for, if it asks for them
     * @param request a request for it alone
     */
    record Question(int index, boolean searched, DutyRequest request) {}

    private final DutyRequest all;
    private final BrakeStock brakes;
    private @Nullable List<Offer> onMains;
    private @Nullable List<Offer> behindTransformer;

    /** For the axes of a request. */
    AxisSizing(DutyRequest all) {
        this.all = all;
        this.brakes = new BrakeStock(all.holdingBrakes());
    }

    /** Sizes one of its axes. */
    SizedAxis size(Question question) {
        DutyRequest request = question.request();
        Axis axis = request.axes().getFirst();
        String pointer = "/design/axes/" + question.index();
        List<GearedLoad> ways = GearedLoad.all(axis, request);
        Choice choice = Choice.among(
                ways, candidates(axis, offers(!request.throughTransformer().isEmpty())), axis.drive(), brakes);
        GearedLoad way =
                choice.best() == null ? ways.getFirst() : choice.best().trial().way();
        AxisLoad load = way.load();
        LoadSums sums = way.sums();
        Reserves reserves = question.searched() && axis.drive().asksReserves() && choice.best() != null
                ? ReserveSearch.of(axis, choice.best(), brakes)
                : null;
        double hardestPull = MechanismReport.hardestPull(axis, way);
        CourseFigures figures = new CourseFigures(load.course(inertia(load, choice)));
        AxisDuty duty = duty(axis, way, choice, brakes, reserves, hardestPull, figures);
        List<Finding> findings = new ArrayList<>(DutyFindings.of(axis, question.index(), load, duty, request));
        List<Derivation> derivations = new ArrayList<>();
        MechanismReport report = MechanismReport.of(axis, pointer, load, hardestPull);
        findings.addAll(report.findings());
        derivations.addAll(report.derivations());
        if (duty.sideThrust() != null) {
            derivations.add(duty.sideThrust().derivation(axis.id()));
        }
        if (choice.best() != null && duty.unit() != null) {
            MechanismReport shaft = ShaftChecks.report(
                    axis, pointer, duty.shaft(), choice.best().trial().offer().unit(), load.period());
            findings.addAll(shaft.findings());
            findings.addAll(HeatFindings.of(axis.id(), pointer, choice.best()));
            derivations.addAll(shaft.derivations());
            derivations.addAll(DutyDerivations.of(
                    axis, load, sums, figures.stretches(), choice.best(), duty.figures(), duty.unit(), request.site()));
            if (reserves != null) {
                derivations.addAll(ReserveDerivations.of(axis.id(), reserves, load.period()));
            }
        }
        return new SizedAxis(duty, findings, derivations);
    }

    private List<Offer> offers(boolean transformed) {
        if (transformed) {
            if (behindTransformer == null) {
                behindTransformer = Offer.behindTransformer(all);
            }
            return behindTransformer;
        }
        if (onMains == null) {
            onMains = Offer.onMains(all);
        }
        return onMains;
    }

    private static List<Offer> candidates(Axis axis, List<Offer> offers) {
        String item = axis.drive().item();
        return item == null
                ? offers
                : offers.stream()
                        .filter(offer -> offer.unit().id().equals(item))
                        .toList();
    }

    /** Inertia of what turns with the motor, as far as the motor is known, kg·m². */
    private static double inertia(AxisLoad load, Choice choice) {
        return choice.best() == null
                ? load.addedInertia()
                : choice.best().trial().inertia();
    }

    private static AxisDuty duty(
            Axis axis,
            GearedLoad way,
            Choice choice,
            BrakeStock brakes,
            @Nullable Reserves reserves,
            double hardestPull,
            CourseFigures figures) {
        AxisLoad load = way.load();
        LoadSums sums = way.sums();
        Choice.Judged best = choice.best();
        double inertia = inertia(load, choice);
        Course course = figures.course();
        StopZone zone = way.zone();
        return new AxisDuty(
                axis.id(),
                best == null ? null : best.candidate().driveUnit(),
                best == null ? null : best.candidate().gearUnit(),
                best == null ? null : best.candidate().ventilationKit(),
                best == null ? null : best.candidate().holdingBrake(),
                best != null && best.candidate().feasible(),
                figures.figures(load, sums),
                best == null ? null : BestUnit.figures(load, best, course, figures.peakTorque()),
                best == null
                        ? null
                        : ShaftFigures.of(
                                way.geared(axis), load, best.trial().offer().unit(), hardestPull),
                SideThrust.of(axis, load),
                best == null ? List.of() : BestUnit.limits(best),
                choice.feasible(),
                choice.rejected(),
                choice.listed(),
                best == null ? null : best.trial().hardestStop(),
                best == null || best.candidate().feasible() ? null : LongerMoves.factor(axis, best, brakes),
                reserves,
                figures.reversing(),
                course,
                zone == null
                        ? null
                        : new EvenStops(load, inertia, zone.decelerationTime().si()),
                Coasting.of(axis, load, inertia));
    }
}
