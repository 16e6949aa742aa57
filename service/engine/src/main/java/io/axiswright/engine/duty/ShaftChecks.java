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
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.List;

/** Whether the shaft of a drive unit and the bearing at its end stand the radial force of a mechanism. */
final class ShaftChecks {

    private static final String LEVER = "derived: moments about the bearings of an overhung force";

    private static final String LIFE = "ISO 281:2007 (from memory; Jindal, Machine Design, ch. 18)";

    private static final double SECONDS_PER_HOUR = 3600;

    /** A life in excess of this is no number that anybody needs: 100 000 years, s. */
    private static final double LONGEST_LIFE = 3.2e12;

    private final Axis axis;
    private final String pointer;
    private final AxisLoad load;
    private final DriveUnit unit;
    private final RadialForce force;
    private final double distance;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Derivation> derivations = new ArrayList<>();

    private ShaftChecks(Axis axis, String pointer, AxisLoad load, DriveUnit unit, RadialForce force) {
        this.axis = axis;
        this.pointer = pointer;
        this.load = load;
        this.unit = unit;
        this.force = force;
        ShaftLoad stated = axis.shaftLoad();
        distance = stated == null || stated.distance() == null
                ? unit.shaftLength().si() / 2
                : stated.distance().si();
    }

    /** Of an axis, at a JSON Pointer, with its drive unit. */
    static MechanismReport report(Axis axis, String pointer, AxisLoad load, DriveUnit unit) {
        RadialForce force = RadialForce.of(axis, load);
        if (force == null) {
            return MechanismReport.NONE;
        }
        var checks = new ShaftChecks(axis, pointer, load, unit, force);
        checks.check();
        return new MechanismReport(checks.findings, checks.derivations);
    }

    private void check() {
        ShaftBearing bearing = unit.shaftBearing();
        Force permitted = bearing == null ? null : bearing.permittedRadialLoad();
        Force rating = bearing == null ? null : bearing.dynamicLoadRating();
        Length spacing = bearing == null ? null : bearing.bearingSpacing();
        Length near = bearing == null ? null : bearing.bearingDistance();
        boolean rated = rating != null && spacing != null && near != null;
        if (permitted != null) {
            radial(permitted.si());
        }
        if (rating != null && spacing != null && near != null) {
            life(rating, spacing, near);
        }
        if (permitted == null && !rated) {
            findings.add(FindingCode.DUTY_SHAFT_UNCHECKED.at(
                    axis.id(), pointer + "/drive", LEVER, new Force(force.largest(load)), null));
        }
    }

    /** Farther out than the middle it stands less, as the moment about the shoulder must not grow. */
    private void radial(double permitted) {
        double middle = unit.shaftLength().si() / 2;
        Force allowed = new Force(permitted * Math.min(1, middle / Math.max(middle, distance)));
        Force largest = new Force(force.largest(load));
        derivations.add(new Derivation(
                axis.id(),
                "F_r,perm",
                "F_r,perm = F_mid·min(1, (l/2)/x)",
                inputs(
                        "F_mid",
                        new Force(permitted),
                        "l",
                        unit.shaftLength(),
                        "x",
                        new Length(distance),
                        "F_r",
                        largest),
                LEVER,
                allowed));
        if (largest.si() > allowed.si()) {
            findings.add(FindingCode.DUTY_SHAFT_LOAD_HIGH.at(axis.id(), pointer + "/drive", LEVER, largest, allowed));
        }
    }

    private void life(Force rating, Length spacing, Length near) {
        BearingLife wear = BearingLife.of(load.pieces(), force);
        double lever = BearingLife.lever(spacing.si(), near.si() + distance);
        double turns = BearingLife.lifeTurns(rating.si(), lever * wear.meanForce());
        double seconds = wear.turns() == 0 ? LONGEST_LIFE : turns / wear.turns() * load.period();
        Time life = new Time(Math.min(LONGEST_LIFE, seconds));
        derivations.add(new Derivation(
                axis.id(),
                "L_10h,shaft",
                "L_10h = (C/P_m)³·10⁶·t_cycle/N, P_m = F_m·(s + a + x)/s, F_m³ = (1/N)·integral of F_r³ dN",
                inputs(
                        "C", rating,
                        "F_m", new Force(wear.meanForce()),
                        "s", spacing,
                        "a", near,
                        "x", new Length(distance),
                        "N", new Ratio(wear.turns()),
                        "t_cycle", new Time(load.period())),
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
