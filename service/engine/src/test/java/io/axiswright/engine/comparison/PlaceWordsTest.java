package io.axiswright.engine.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected: what one would say. A step that begins with # is an element of the list before it. */
class PlaceWordsTest {

    @ParameterizedTest
    @CsvSource({
        "duty axes #lift figures peakTorque, peak torque of axis lift",
        "design axes #lift mechanism load, load of axis lift",
        "design site enclosureAmbient, enclosure ambient of the site",
        "braking groups #gantry verdict, verdict of DC bus gantry",
        "braking groups #gantry cases #0 peakVoltage, peak voltage of case 0 of DC bus gantry",
        "controlPower supplies #control-supply-1 item, item of control supply control-supply-1",
        "billOfMaterials required total, total of required of the bill of materials",
        "design mains voltage, voltage of the mains",
        "catalogue driveUnits #drive-80 price, price of drive unit drive-80 of the catalogue",
        "stopping powerLosses #lift provenDistance, proven distance of power loss lift",
        "duty axes #lift figures peakTorqueAt, instant of peak torque of axis lift",
        "duty axes #lift limits #continuous use, use of limit continuous of axis lift",
        "topology bound, bound",
        "codeBasis, code basis"
    })
    void placesReadAsTheyAreSaid(String steps, String words) {
        List<Step> path = new ArrayList<>();
        for (String step : steps.split(" ")) {
            path.add(step.startsWith("#") ? new Step.Element(step.substring(1), 0) : new Step.Member(step));
        }
        assertThat(PlaceWords.of(path)).isEqualTo(words);
    }
}
