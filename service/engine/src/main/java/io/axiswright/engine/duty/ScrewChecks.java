package io.axiswright.engine.duty;

import static io.axiswright.engine.finding.Derivation.inputs;

import io.axiswright.engine.design.NutRating;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.ScrewSupport;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Pressure;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Speed;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/** Whether a screw runs true, stands straight and lasts. */
final class ScrewChecks {

    private static final String BEAM =
            "Thomson and Dahleh, Theory of Vibration with Applications, table 9.5-1; share: common practice, no source";
    private static final String EULER = "Euler's cases of buckling; factor: common practice, no source";
    private static final String JOHNSON =
            "J. B. Johnson's parabola (Shigley, Mechanical Engineering Design, 8th ed., eq. 4-43); factor: common practice, no source";
    private static final String TRAVEL = "derived: the nut stays on the screw; its own length and the ends come on top";
    private static final String LIFE = "ISO 3408-5:2006, 7.1.2 and 7.2 (formulas from memory)";

    /** Share of the critical speed a screw may turn at, and how much buckling force it must have: common practice, no source. */
    private static final double SPEED_SHARE = 0.8;

    private static final double BUCKLING_FACTOR = 2;

    /** Strokes typed in decimals equal a length to this share. */
    private static final double ROUNDING = 1e-9;

    private static final double SECONDS_PER_HOUR = 3600;

    /** Lives beyond this are not told apart: 100 000 years. */
    private static final double LONGEST_LIFE = 3.2e12;

    private final String subject;
    private final String pointer;
    private final Screw screw;
    private final AxisLoad load;
    private final double hardestPull;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Derivation> derivations = new ArrayList<>();

    ScrewChecks(String subject, String pointer, Screw screw, AxisLoad load, double hardestPull) {
        this.subject = subject;
        this.pointer = pointer;
        this.screw = screw;
        this.load = load;
        this.hardestPull = hardestPull;
    }

    MechanismReport report() {
        double stroke = load.reach().stroke();
        if (stroke > screw.length().si() * (1 + ROUNDING)) {
            findings.add(FindingCode.DUTY_SCREW_SHORT.at(
                    subject, pointer + "/length", TRAVEL, new Length(stroke), screw.length()));
        }
        if (screw.support() == null) {
            findings.add(FindingCode.DUTY_SCREW_UNCHECKED.at(subject, pointer, BEAM, null, null));
        } else {
            whirling(screw.support());
            buckling(screw.support());
        }
        if (screw.nut() != null) {
            life(screw.nut());
        } else if (screw.thread() == null) {
            findings.add(FindingCode.DUTY_NUT_UNCHECKED.at(subject, pointer, LIFE, null, null));
        }
        return new MechanismReport(findings, derivations);
    }

    private Column column(ScrewSupport support) {
        Length length = support.unsupportedLength() == null ? screw.length() : support.unsupportedLength();
        Pressure yield = support.yieldStrength();
        return new Column(
                support.rootDiameter().si(),
                length.si(),
                support.ends(),
                yield == null ? Double.POSITIVE_INFINITY : yield.si());
    }

    private void whirling(ScrewSupport support) {
        Column column = column(support);
        double share = support.speedShare() == null ? SPEED_SHARE : support.speedShare();
        double allowed = share * column.criticalSpeed();
        double speed = fastest();
        derive(
                "n_perm",
                "n_perm = share·(beta·l)²/L²·c·d/4; c = sqrt(E/rho) of steel",
                inputs(
                        "share", new Ratio(share),
                        "(beta·l)²", new Ratio(column.modeNumber()),
                        "L", new Length(column.length()),
                        "c", new Speed(Math.sqrt(Column.STIFFNESS / Column.DENSITY)),
                        "d", support.rootDiameter(),
                        "n", new AngularSpeed(speed)),
                BEAM,
                new AngularSpeed(allowed));
        if (speed > allowed) {
            findings.add(FindingCode.DUTY_SCREW_WHIRLS.at(
                    subject, pointer + "/support", BEAM, new AngularSpeed(speed), new AngularSpeed(allowed)));
        }
    }

    private void buckling(ScrewSupport support) {
        Column column = column(support);
        double factor = support.bucklingFactor() == null ? BUCKLING_FACTOR : support.bucklingFactor();
        double allowed = column.bucklingForce() / factor;
        double force = hardestPull / LinearMechanics.travel(screw);
        SequencedMap<String, Quantity> inputs = new LinkedHashMap<>(inputs(
                "E", new Pressure(Column.STIFFNESS),
                "d", support.rootDiameter(),
                "K", new Ratio(column.bucklingLengthShare()),
                "L", new Length(column.length()),
                "factor", new Ratio(factor),
                "F", new Force(force)));
        if (support.yieldStrength() != null) {
            inputs.put("S_y", support.yieldStrength());
        }
        String clause = column.stout() ? JOHNSON : EULER;
        derive(
                "F_perm",
                column.stout()
                        ? "F_perm = pi·d²/4·(S_y − (S_y·K·L/(d/4)/(2·pi))²/E)/factor"
                        : "F_perm = pi³·E·d⁴/(64·(K·L)²)/factor",
                inputs,
                clause,
                new Force(allowed));
        if (force > allowed) {
            findings.add(FindingCode.DUTY_SCREW_BUCKLES.at(
                    subject, pointer + "/support", clause, new Force(force), new Force(allowed)));
        }
    }

    private void life(NutRating nut) {
        NutLife wear = NutLife.of(
                load.pieces(), LinearMechanics.travel(screw), load.drivetrain().ratio());
        double turns = wear.lifeTurns(nut.dynamicLoadRating().si());
        double seconds = wear.turns() == 0 ? LONGEST_LIFE : turns / wear.turns() * load.period();
        Time life = new Time(Math.min(LONGEST_LIFE, seconds));
        derive(
                "L_10h",
                "L_10h = min(3.2·10¹² s, (C/F_m)³·10⁶·t_cycle/N), F_m = (F_1^(10/3) + F_2^(10/3))^(3/10), F_1,2³ = (1/N)·integral of F³ dN",
                inputs(
                        "C", nut.dynamicLoadRating(),
                        "F_1", new Force(wear.forward()),
                        "F_2", new Force(wear.backward()),
                        "N", new Ratio(wear.turns()),
                        "t_cycle", new Time(load.period())),
                LIFE,
                life);
        if (nut.requiredLife() != null && life.si() < nut.requiredLife().si()) {
            findings.add(FindingCode.DUTY_NUT_LIFE_SHORT.at(
                    subject,
                    pointer + "/nut",
                    LIFE,
                    new Ratio(life.si() / SECONDS_PER_HOUR),
                    new Ratio(nut.requiredLife().si() / SECONDS_PER_HOUR)));
        }
    }

    private double fastest() {
        return load.pieces().stream().mapToDouble(LoadPiece::fastest).max().orElse(0)
                / load.drivetrain().ratio();
    }

    private void derive(
            String symbol, String formula, SequencedMap<String, Quantity> inputs, String clause, Quantity result) {
        derivations.add(new Derivation(subject, symbol, formula, inputs, clause, result));
    }
}
