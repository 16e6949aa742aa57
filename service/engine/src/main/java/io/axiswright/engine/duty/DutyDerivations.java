package io.axiswright.engine.duty;

import static io.axiswright.engine.finding.Derivation.inputs;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.HousingHeat;
import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.DriveSelection;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.AngularAcceleration;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.TemperatureRise;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import org.jspecify.annotations.Nullable;

/** How the numbers that decide on a drive unit came about. */
final class DutyDerivations {

    static final String RMS_TORQUE =
            "T_rms = sqrt(T_l² + 2·r·T_l·J·a + (J·a)²); T_l, a: rms of what the load asks for at the shaft and "
                    + "of its acceleration over the cycle, standstill included, r: mean of their product over T_l·a";
    static final String EQUIVALENT_TORQUE =
            "equivalent torque method (Dubey, Fundamentals of Electrical Drives, ch. 4)";

    private final String axis;
    private final List<Derivation> derivations = new ArrayList<>();

    private DutyDerivations(String axis) {
        this.axis = axis;
    }

    static List<Derivation> of(
            Axis axis,
            AxisLoad load,
            LoadSums sums,
            List<PowerStretch> stretches,
            Choice.Judged best,
            DutyFigures figures,
            UnitFigures unit,
            Site site) {
        DutyDerivations all = new DutyDerivations(axis.id());
        all.mechanics(axis.drive(), load, sums, best, figures, unit);
        all.derivations.addAll(PeakDerivations.of(axis, load, best.trial(), figures));
        all.derivations.addAll(EnergyDerivations.of(axis.id(), stretches, figures));
        GearOutput output = best.trial().way().output();
        if (output != null) {
            all.derivations.addAll(GearDerivations.of(axis, output));
        }
        all.rating(sums, best, site);
        all.heat(best, figures, unit);
        return all.derivations;
    }

    private void mechanics(
            DriveSelection drive,
            AxisLoad load,
            LoadSums sums,
            Choice.Judged best,
            DutyFigures figures,
            UnitFigures unit) {
        Trial trial = best.trial();
        add(
                "J_L'",
                "J_L' = (J_load + J_shaft)/i² + J_gears; J_load: m·(travel/rad)² where it is largest, J_gears: all gears at the motor shaft",
                inputs(
                        "J_load", new Inertia(load.reach().inertia()),
                        "i", new Ratio(load.drivetrain().ratio()),
                        "J_shaft", new Inertia(load.drivetrain().mechanics().shaftInertia()),
                        "J_gears", new Inertia(load.drivetrain().gearsInertia())),
                "kinetic-energy equivalence (Dubey, Fundamentals of Electrical Drives, ch. 2)",
                unit.reflectedInertia());
        add("T_rms", RMS_TORQUE, rms(sums, trial.inertia()), EQUIVALENT_TORQUE, figures.rmsTorque());
        if (trial.brakeAsked()) {
            add(
                    "T_brake",
                    "T_brake = margin·T_hold",
                    inputs("margin", new Ratio(drive.holdingMargin()), "T_hold", figures.holdingTorque()),
                    BrakeStock.clause(drive),
                    new Torque(trial.brakeTorque()));
        }
    }

    /** What the rms torque of an inertia follows from, kg·m². */
    static SequencedMap<String, Quantity> rms(LoadSums sums, double inertia) {
        return inputs(
                "T_l", new Torque(sums.rmsLoad()),
                "r", new Ratio(sums.correlation()),
                "J", new Inertia(inertia),
                "a", new AngularAcceleration(sums.rmsAcceleration()));
    }

    private void rating(LoadSums sums, Choice.Judged best, Site site) {
        Trial trial = best.trial();
        Offer offer = trial.offer();
        DriveUnit unit = offer.unit();
        add(
                "x",
                "x = max(0, min(1, (theta_rated + rise − theta)/rise)·(1 − max(0, h − 1000 m)/10000 m))",
                inputs(
                        "theta_rated", unit.ratedAmbient(),
                        "rise", unit.ratedRise(),
                        "theta", site.ambient(),
                        "h", site.altitude()),
                "IEC 60034-1 (altitude rule from memory); derived for ambient",
                new Ratio(offer.permittedShare()));
        add(
                "T_c",
                "T_c = f·T_c(w_rms)·min(e, sqrt(x))",
                inputs(
                        "f", new Ratio(best.kit() == null ? 1 : best.kit().continuousTorqueFactor()),
                        "T_c(w_rms)", new Torque(trial.ratedTorque(null)),
                        "w_rms", new AngularSpeed(sums.rmsSpeed()),
                        "x", new Ratio(offer.permittedShare()),
                        "e", new Ratio(offer.electronicsShare())),
                "derived: losses go with the permitted rise, torque with their square root",
                new Torque(trial.continuousTorque(best.kit())));
        if (offer.lineFactor() < 1) {
            add(
                    "n_max",
                    "n_max = n_curve·V_low/V_rated",
                    inputs(
                            "V_low",
                                    new Voltage(offer.lineFactor()
                                            * unit.ratedVoltage().si()),
                            "V_rated", unit.ratedVoltage(),
                            "n_curve", unit.intermittentCurve().getLast().speed()),
                    "derived: the corner of the curve follows the rectified bus",
                    new AngularSpeed(offer.intermittent().topSpeed()));
        }
    }

    private void heat(Choice.Judged best, DutyFigures figures, UnitFigures unit) {
        Offer offer = best.trial().offer();
        HousingHeat housing = offer.unit().housing();
        Torque continuous = new Torque(best.trial().ratedTorque(best.kit()));
        SequencedMap<String, Quantity> bodies = housing == null
                ? inputs("tau", offer.unit().windingTimeConstant())
                : inputs(
                        "tau_w", offer.unit().windingTimeConstant(),
                        "tau_h", housing.timeConstant(),
                        "s", new Ratio(housing.riseShare()));
        Torque stall = offer.unit().stallTorque();
        VentilationKit kit = best.kit();
        SequencedMap<String, Quantity> still = stall == null
                ? inputs()
                : inputs("T_stall", new Torque(stall.si() * (kit == null ? 1 : kit.continuousTorqueFactor())));
        add(
                "theta_max",
                (housing == null
                                ? "tau·theta' = q − theta, q = rise·(T/T_c(w_rms))², repeating; its highest value"
                                : "theta = theta_w + theta_h, tau_w·theta_w' = (1 − s)·q − theta_w, tau_h·theta_h' = s·q − theta_h, "
                                        + "q = rise·(T/T_c(w_rms))², repeating; its highest value")
                        + (stall == null
                                ? ""
                                : ", with T_stall for T_c(w_rms) in the winding while it holds at standstill"),
                joined(
                        joined(
                                bodies,
                                inputs(
                                        "rise", offer.unit().ratedRise(),
                                        "T_c(w_rms)", continuous,
                                        "t_cycle", figures.cyclePeriod())),
                        still),
                heating(housing, "Pillai, A First Course on Electrical Drives, ch. 7"),
                unit.windingRise());
        if (unit.timeAtPeakTorque() != null) {
            add(
                    "t_peak",
                    housing == null
                            ? "t_peak = −tau·ln(1 − theta_permitted/(rise·(T_peak/T_c(w_rms))²))"
                            : "rise·(T_peak/T_c(w_rms))²·((1 − s)·(1 − e^(−t_peak/tau_w)) + s·(1 − e^(−t_peak/tau_h)))"
                                    + " = theta_permitted",
                    joined(
                            inputs(
                                    "T_peak",
                                    figures.peakTorque(),
                                    "T_c(w_rms)",
                                    continuous,
                                    "rise",
                                    offer.unit().ratedRise(),
                                    "theta_permitted",
                                    new TemperatureRise(best.trial().permittedRise())),
                            bodies),
                    heating(housing, "Dubey, Fundamentals of Electrical Drives, ch. 4"),
                    unit.timeAtPeakTorque());
        }
        add(
                "I_cycle",
                "I_cycle = min(I_rated, I_rated·(P_rms/P_rated)/(V_low/V_rated)); P_rms: of T·w + (T/Km)² + P_0 while positive",
                inputs(
                        "I_rated",
                        unit.ratedInputCurrent(),
                        "P_rms",
                        unit.rmsInputPower(),
                        "P_rated",
                        new Power(offer.ratedInput()),
                        "V_low/V_rated",
                        new Ratio(offer.lineFactor()),
                        "P_0",
                        offer.unit().standbyLoss()),
                "common practice, no source",
                unit.cycleInputCurrent());
    }

    private static String heating(@Nullable HousingHeat housing, String source) {
        return housing == null
                ? "one-body heating (" + source + ")"
                : "derived: winding over housing and housing over ambient, each heated as one body (" + source + ")";
    }

    private static SequencedMap<String, Quantity> joined(
            SequencedMap<String, Quantity> first, SequencedMap<String, Quantity> last) {
        var all = new LinkedHashMap<>(first);
        all.putAll(last);
        return all;
    }

    private void add(
            String symbol, String formula, SequencedMap<String, Quantity> inputs, String clause, Quantity result) {
        derivations.add(new Derivation(axis, symbol, formula, inputs, clause, result));
    }
}
