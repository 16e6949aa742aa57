package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        List<Offer> offers = Offer.all(request);
        BrakeStock brakes = new BrakeStock(request.holdingBrakes());
        List<AxisDuty> duties = new ArrayList<>();
        List<Finding> findings = new ArrayList<>(DutyFindings.ofSite(request.site()));
        List<Derivation> derivations = new ArrayList<>();
        for (int k = 0; k < request.axes().size(); k++) {
            Axis axis = request.axes().get(k);
            AxisLoad load = AxisLoad.of(axis);
            LoadSums sums = LoadSums.of(load.pieces(), load.period());
            Choice choice = Choice.among(load, sums, candidates(axis, offers), axis.drive(), brakes);
            Reserves reserves = axis.drive().asksReserves() && choice.best() != null
                    ? ReserveSearch.of(axis, choice.best(), brakes)
                    : null;
            AxisDuty duty = duty(axis, load, sums, choice, request.stopZones(), reserves);
            duties.add(duty);
            findings.addAll(DutyFindings.of(axis, k, load, duty, request.mains()));
            MechanismReport report = MechanismReport.of(axis, "/design/axes/" + k, load);
            findings.addAll(report.findings());
            derivations.addAll(report.derivations());
            if (choice.best() != null && duty.unit() != null) {
                MechanismReport shaft = ShaftChecks.report(
                        axis,
                        "/design/axes/" + k,
                        load,
                        choice.best().trial().offer().unit());
                findings.addAll(shaft.findings());
                derivations.addAll(shaft.derivations());
                derivations.addAll(DutyDerivations.of(
                        axis, load, sums, choice.best(), duty.figures(), duty.unit(), request.site()));
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

    private static AxisDuty duty(
            Axis axis, AxisLoad load, LoadSums sums, Choice choice, List<StopZone> zones, @Nullable Reserves reserves) {
        Choice.Judged best = choice.best();
        double inertia = best == null ? load.addedInertia() : best.trial().inertia();
        Course course = load.course(inertia);
        CourseFigures figures = new CourseFigures(course);
        Optional<StopZone> zone = zones.stream()
                .filter(z -> z.id().equals(axis.stopZone()) && z.category() != StopCategory.CATEGORY_0)
                .findFirst();
        List<StopCourse> stops =
                zone.map(z -> Stops.of(load, sums.peakSpeed(), inertia, z)).orElse(List.of());
        return new AxisDuty(
                axis.id(),
                best == null ? null : best.candidate().driveUnit(),
                best == null ? null : best.candidate().ventilationKit(),
                best == null ? null : best.candidate().holdingBrake(),
                best != null && best.candidate().feasible(),
                figures.figures(load, sums),
                best == null ? null : BestUnit.figures(load, best, course, figures.peakTorque()),
                best == null ? List.of() : BestUnit.limits(best, sums),
                choice.feasible(),
                choice.rejected(),
                choice.listed(),
                best == null ? null : BestUnit.hardestStop(best, stops),
                reserves,
                figures.reversing(),
                course,
                stops,
                zone.map(z -> new EvenStops(load, inertia, z.decelerationTime().si()))
                        .orElse(null));
    }
}
