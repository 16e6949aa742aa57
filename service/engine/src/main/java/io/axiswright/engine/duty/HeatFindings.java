package io.axiswright.engine.duty;

import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.TemperatureRise;
import java.util.ArrayList;
import java.util.List;

/** What must be said of the heat of a drive unit that holds its duty. */
final class HeatFindings {

    private static final String STANDSTILL =
            "derived: at the worst angle one phase carries √2 times the rms current (derating where the data are silent: common practice, no source)";
    private static final String FAN = "derived: continuous curve without forced ventilation";

    private HeatFindings() {}

    /** Of one axis, at a JSON Pointer. */
    static List<Finding> of(String axis, String pointer, Choice.Judged best) {
        List<Finding> findings = new ArrayList<>();
        Trial trial = best.trial();
        var permitted = new TemperatureRise(trial.permittedRise());
        WindingHeat heat = trial.heat(best.kit());
        if (broken(heat, permitted)) {
            return findings;
        }
        double standstill = trial.offer().continuous().at(0) / Math.sqrt(Hold.WORST_PHASE);
        WindingHeat still = trial.withStandstill(heat, standstill, best.kit());
        if (trial.offer().unit().stallTorque() == null && broken(still, permitted)) {
            findings.add(FindingCode.DUTY_STANDSTILL_UNSTATED.at(
                    axis, pointer + "/cycle", STANDSTILL, new TemperatureRise(still.rise()), permitted));
        }
        WindingHeat unventilated = best.kit() == null ? heat : trial.heat(null);
        if (broken(unventilated, permitted)) {
            findings.add(FindingCode.DUTY_FAN_NEEDED.at(
                    axis, pointer + "/drive", FAN, new TemperatureRise(unventilated.rise()), permitted));
        }
        return findings;
    }

    private static boolean broken(WindingHeat heat, TemperatureRise permitted) {
        return DutyLimit.broken(DutyLimit.use(heat.rise(), permitted.si()));
    }
}
