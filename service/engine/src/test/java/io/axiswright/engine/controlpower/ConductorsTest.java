package io.axiswright.engine.controlpower;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.quantity.ConductorSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConductorsTest {

    /** IEC 60228:2004 Table 3, class 5 plain copper, maxima at 20 °C; read at https://www.etechnik-synergie.com/technical_information/condutor-resistance/ */
    @ParameterizedTest
    @CsvSource({"0.5, 39.0", "0.75, 26.0", "1, 19.5", "1.5, 13.3", "2.5, 7.98", "4, 4.95", "6, 3.3", "10, 1.91"})
    void listedSizesHaveTheirTabledResistanceAndTheDerivedOneIsNotBelow(String size, double ohmPerKilometre) {
        assertThat(Conductors.coldResistance(ConductorSize.metric(size)))
                .isCloseTo(ohmPerKilometre * 1e-3, within(1e-12));
        double derived = ControlConstants.COPPER_RESISTIVITY
                * ControlConstants.STRANDING
                / ConductorSize.metric(size).area().si();
        assertThat(derived).isBetween(ohmPerKilometre * 1e-3, ohmPerKilometre * 1.06e-3);
    }

    /** 14 AWG stranded copper, NFPA 70 Chapter 9 Table 8 (from memory): 3.14 Ω/kft at 75 °C; ours must not be below. */
    @Test
    void unlistedSizesAreDerivedOnTheSafeSide() {
        var cable = ControlParts.cable("c", 1, 304.8, "14 AWG");
        double loop = Conductors.loopResistance(cable, ControlParts.celsius(75));
        assertThat(loop / 2).isBetween(3.14, 3.14 * 1.15);
    }

    /** r = 2 · R20 · (1 + 0.00393 (T − 20)) · ℓ: 2 · 7.98 mΩ/m · 10 m · 1.1965 at 70 °C (factor computed in the table's note). */
    @Test
    void loopCountsBothConductorsHot() {
        var cable = ControlParts.cable("c", 1, 10, "2.5 mm2");
        assertThat(Conductors.loopResistance(cable, ControlParts.celsius(70)))
                .isCloseTo(2 * 7.98e-3 * 10 * 1.1965, within(1e-9));
    }
}
