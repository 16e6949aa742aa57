package io.axiswright.engine.duty;

import static io.axiswright.engine.finding.Derivation.inputs;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.ShaftBearing;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.ShaftLoad;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Whether the shaft of a drive unit and the bearing at its end stand the radial force of a mechanism. */
final class ShaftChecks {

    private static final String LEVER = "derived: moments about the bearings of an overhung force";

    private static final String LIFE = "ISO 281:2007 (from memory; Jindal, Machine Design, ch. 18)";

    private static final double SECONDS_PER_HOUR = 3600;

    private final Axis axis;
    private final String pointer;
    private final ShaftFigures figures;
    private final DriveUnit unit;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Derivation> derivations = new ArrayList<>();

    private ShaftChecks(Axis axis, String pointer, ShaftFigures figures, DriveUnit unit) {
        this.axis = axis;
        this.pointer = pointer;
        this.figures = figures;
        this.unit = unit;
    }

    /** Of an axis, at a JSON Pointer, with its drive unit and what its cycle of that period does to the shaft. */
    static MechanismReport report(
            Axis axis, String pointer, @Nullable ShaftFigures figures, DriveUnit unit, double period) {
        if (figures == null) {
            return MechanismReport.NONE;
        }
        var checks = new ShaftChecks(axis, pointer, figures, unit);
        checks.check(new Time(period));
        return new MechanismReport(checks.findings, checks.derivations);
    }

    private void check(Time period) {
        ShaftBearing bearing = unit.shaftBearing();
        if (bearing != null && figures.permittedForce() != null) {
            radial(bearing, figures.permittedForce());
        }
        if (bearing != null && figures.equivalentLoad() != null && figures.bearingLife() != null) {
            life(bearing, figures.equivalentLoad(), figures.bearingLife(), period);
        }
        if (figures.permittedForce() == null && figures.bearingLife() == null) {
            findings.add(FindingCode.DUTY_SHAFT_UNCHECKED.at(
                    axis.id(), pointer + "/drive", LEVER, figures.radialForce(), null));
        }
    }

    private void radial(ShaftBearing bearing, Force allowed) {
        derivations.add(new Derivation(
                axis.id(),
                "F_r,perm",
                "F_r,perm = F_mid·min(1, (l/2)/x)",
                inputs(
                        "F_mid",
                        Objects.requireNonNull(bearing.permittedRadialLoad()),
                        "l",
                        unit.shaftLength(),
                        "x",
                        figures.distance(),
                        "F_r",
                        figures.radialForce()),
                LEVER,
                allowed));
        if (figures.radialForce().si() > allowed.si()) {
            findings.add(FindingCode.DUTY_SHAFT_LOAD_HIGH.at(
                    axis.id(), pointer + "/drive", LEVER, figures.radialForce(), allowed));
        }
    }

    private void life(ShaftBearing bearing, Force equivalent, Time life, Time period) {
        derivations.add(new Derivation(
                axis.id(),
                "P_m,shaft",
                "P_m = F_m·(s + a + x)/s, F_m³ = (1/N)·integral of |F_r|³ dN",
                inputs(
                        "F_m",
                        figures.meanForce(),
                        "s",
                        Objects.requireNonNull(bearing.bearingSpacing()),
                        "a",
                        Objects.requireNonNull(bearing.bearingDistance()),
                        "x",
                        figures.distance()),
                LEVER,
                equivalent));
        derivations.add(new Derivation(
                axis.id(),
                "L_10h,shaft",
                "L_10h = min(3.2·10¹² s, (C/P_m)³·10⁶·t_cycle/N)",
                inputs(
                        "C",
                        Objects.requireNonNull(bearing.dynamicLoadRating()),
                        "P_m",
                        equivalent,
                        "N",
                        new Ratio(figures.turnsPerCycle()),
                        "t_cycle",
                        period),
                LIFE,
                life));
        ShaftLoad stated = axis.shaftLoad();
        Time required = stated == null ? null : stated.requiredLife();
        if (required != null && life.si() < required.si()) {
            findings.add(FindingCode.DUTY_SHAFT_BEARING_SHORT.at(
                    axis.id(),
                    pointer + "/shaftLoad/requiredLife",
                    LIFE,
                    new Ratio(life.si() / SECONDS_PER_HOUR),
                    new Ratio(required.si() / SECONDS_PER_HOUR)));
        }
    }
}
