package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Works out what each axis asks of its drive unit, and chooses the cheapest drive unit that holds it, or judges the one
 * stated.
 */
public final class DutySizing {

    /**
     * Sizes every axis by itself.
     *
     * @throws io.axiswright.engine.finding.InvalidDesign if the request has no meaning; pointers start at the root of a
     *     study request, {@code /design/axes/…} and {@code /catalogue/driveUnits/…}
     */
    public DutyResult size(DutyRequest request) {
        DutyFaults.check(request);
        List<Offer> offers = Offer.onMains(request);
        List<Offer> behind = request.throughTransformer().isEmpty() ? List.of() : Offer.behindTransformer(request);
        BrakeStock brakes = new BrakeStock(request.holdingBrakes());
        List<AxisDuty> duties = new ArrayList<>();
        List<Finding> findings = new ArrayList<>(DutyFindings.ofSite(request.site()));
        List<Derivation> derivations = new ArrayList<>();
        int asked = ReserveSearch.pieces(request.axes());
        boolean searched = asked <= ReserveSearch.MOST_PIECES;
        if (!searched) {
            findings.add(DutyFindings.unsearched(asked));
        }
        for (int k = 0; k < request.axes().size(); k++) {
            Axis axis = request.axes().get(k);
            List<GearedLoad> ways = GearedLoad.all(axis, request);
            Choice choice = Choice.among(
                    ways,
                    candidates(axis, request.throughTransformer().contains(axis.id()) ? behind : offers),
                    axis.drive(),
                    brakes);
            GearedLoad way = choice.best() == null
                    ? ways.getFirst()
                    : choice.best().trial().way();
            AxisLoad load = way.load();
            LoadSums sums = way.sums();
            Reserves reserves = searched && axis.drive().asksReserves() && choice.best() != null
                    ? ReserveSearch.of(axis, choice.best(), brakes)
                    : null;
            double hardestPull = MechanismReport.hardestPull(axis, way);
            CourseFigures figures = new CourseFigures(load.course(inertia(load, choice)));
            AxisDuty duty = duty(axis, way, choice, brakes, reserves, hardestPull, figures);
            duties.add(duty);
            findings.addAll(DutyFindings.of(axis, k, load, duty, request));
            MechanismReport report = MechanismReport.of(axis, "/design/axes/" + k, load, hardestPull);
            findings.addAll(report.findings());
            derivations.addAll(report.derivations());
            if (duty.sideThrust() != null) {
                derivations.add(duty.sideThrust().derivation(axis.id()));
            }
            if (choice.best() != null && duty.unit() != null) {
                MechanismReport shaft = ShaftChecks.report(
                        axis,
                        "/design/axes/" + k,
                        duty.shaft(),
                        choice.best().trial().offer().unit(),
                        load.period());
                findings.addAll(shaft.findings());
                findings.addAll(HeatFindings.of(axis.id(), "/design/axes/" + k, choice.best()));
                derivations.addAll(shaft.derivations());
                derivations.addAll(DutyDerivations.of(
                        axis,
                        load,
                        sums,
                        figures.stretches(),
                        choice.best(),
                        duty.figures(),
                        duty.unit(),
                        request.site()));
                if (reserves != null) {
                    derivations.addAll(ReserveDerivations.of(axis.id(), reserves, load.period()));
                }
            }
        }
        return new DutyResult(duties, findings, derivations);
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
