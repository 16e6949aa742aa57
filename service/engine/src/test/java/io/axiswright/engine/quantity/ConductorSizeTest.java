package io.axiswright.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ConductorSizeTest {

    private static final double CMIL = 5.067074790974977e-10;

    /** NFPA 70 Chapter 9 Table 8 (sfasoft.com/look/35/Conductor_Properties), nominal circular mils, which the table
     * rounds: the exact 18 AWG is 1624. */
    @ParameterizedTest
    @CsvSource({
        "18 AWG,1620",
        "16 AWG,2580",
        "14 AWG,4110",
        "12 AWG,6530",
        "10 AWG,10380",
        "8 AWG,16510",
        "6 AWG,26240",
        "4 AWG,41740",
        "3 AWG,52620",
        "2 AWG,66360",
        "1 AWG,83690",
        "1/0 AWG,105600",
        "2/0 AWG,133100",
        "3/0 AWG,167800",
        "4/0 AWG,211600",
        "250 kcmil,250000",
        "500 kcmil,500000"
    })
    void areaByTheGaugeRule(String label, double circularMils) {
        assertThat(new ConductorSize(label).area().si() / CMIL).isCloseTo(circularMils, within(0.003 * circularMils));
    }

    /** ASTM B258: 36 AWG is 0.005 in, 4/0 AWG 0.46 in by definition; six sizes down halve the diameter (2.005). */
    @Test
    void gaugeIsFixedAtItsEnds() {
        double mil = 25.4e-6;
        assertThat(diameter("36 AWG")).isCloseTo(5 * mil, within(1e-12));
        assertThat(diameter("4/0 AWG")).isCloseTo(460 * mil, within(1e-12));
        assertThat(diameter("6 AWG") / diameter("12 AWG")).isCloseTo(2.005, within(5e-4));
    }

    private static double diameter(String label) {
        return Math.sqrt(new ConductorSize(label).area().si() * 4 / Math.PI);
    }

    @Test
    void sizesCompareByAreaAcrossSystems() {
        assertThat(List.of("18 AWG", "1 mm2", "16 AWG", "1.5 mm2", "14 AWG", "2.5 mm2", "12 AWG", "1/0 AWG", "70 mm2"))
                .extracting(ConductorSize::new)
                .isSorted();
        assertThat(ConductorSize.metric("2.5").isMetric()).isTrue();
        assertThat(new ConductorSize("2/0 AWG").isMetric()).isFalse();
        assertThat(ConductorSize.metric("2.5")).hasToString("2.5 mm2");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "14", "14AWG", "5/0 AWG", "2,5 mm2", "-1 mm2", "12 awg", "99999 kcmil"})
    void refusesWhatIsNoSize(String label) {
        assertThatThrownBy(() -> new ConductorSize(label))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("14 AWG");
    }
}
