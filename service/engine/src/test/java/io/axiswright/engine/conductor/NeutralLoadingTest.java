package io.axiswright.engine.conductor;

import static io.axiswright.engine.conductor.CircuitBuilder.iec;
import static io.axiswright.engine.conductor.CircuitBuilder.nec;
import static io.axiswright.engine.conductor.Sizing.conductor;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.standard.ThirdHarmonic;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Third harmonics in the neutral. */
class NeutralLoadingTest {

    /** IEC 60364-5-52 Table E.52.1; filipinoengineer.com prints the rows, each ending with its share. */
    @ParameterizedTest
    @CsvSource({
        "0,1,false",
        "0.15,1,false",
        "0.151,0.86,false",
        "0.33,0.86,false",
        "0.34,0.86,true",
        "0.45,0.86,true",
        "0.46,1,true",
        "1,1,true"
    })
    void reductionFactors(double share, double factor, boolean byNeutral) {
        assertThat(ThirdHarmonic.factor(share).value().si()).isEqualTo(factor);
        assertThat(ThirdHarmonic.chosenByNeutral(share)).isEqualTo(byNeutral);
    }

    private static CircuitBuilder annexE() {
        return iec(39).method(InstallationMethod.C)
                .insulation(Insulation.XLPE_90)
                .termination(90);
    }

    /**
     * The currents of IEC 60364-5-52 Annex E for 39 A (from memory; the factors are confirmed): 45 A at 20 %, neutral 46.8 A and
     * 54.4 A at 40 %, 58.5 A at 50 %. Here behind 40 A and with XLPE on a wall, 4, 6 and 10 mm² carrying 40, 52 and 71 A:
     * 40/0.86 = 46.5, 40 · 1.2/0.86 = 55.8, 40 · 1.5 = 60 A.
     */
    @Test
    void annexEExample() {
        assertThat(conductor(Sizing.iec(annexE()))).isEqualTo("4 mm2");
        assertThat(conductor(Sizing.iec(annexE().thirdHarmonic(0.1)))).isEqualTo("4 mm2");
        assertThat(conductor(Sizing.iec(annexE().thirdHarmonic(0.2)))).isEqualTo("6 mm2");
        var forty = Sizing.iec(annexE().thirdHarmonic(0.4));
        assertThat(conductor(forty)).isEqualTo("10 mm2");
        assertThat(Objects.requireNonNull(forty.neutralCurrent()).si()).isCloseTo(46.8, within(1e-9));
        assertThat(Sizing.ampacity(forty)).isCloseTo(71 * 0.86, within(1e-9));
        var fifty = Sizing.iec(annexE().thirdHarmonic(0.5));
        assertThat(conductor(fifty)).isEqualTo("10 mm2");
        assertThat(Objects.requireNonNull(fifty.neutralCurrent()).si()).isCloseTo(58.5, within(1e-9));
    }

    /**
     * neca-neis.org/code-question-of-the-day, 16 January 2023: a 225 A feeder takes 4/0 AWG, with the neutral counted 300 kcmil.
     * Table 310.16 at 75 °C: 230 A; 285 · 0.80 = 228 A, 250 kcmil 255 · 0.80 = 204 A.
     */
    @Test
    void countedNeutralOfAFeeder() {
        var feeder = nec(LoadKind.GENERAL, 225).insulation(Insulation.NEC_75);
        assertThat(conductor(Sizing.nec(feeder))).isEqualTo("4/0 AWG");
        assertThat(Sizing.nec(feeder).neutralCurrent()).isNull();
        assertThat(conductor(Sizing.nec(feeder.thirdHarmonic(0.3)))).isEqualTo("300 kcmil");
    }

    /** By hand: 60 % of 100 A puts 180 A on the neutral: 4/0 AWG at 75 °C (230 · 0.80 = 184 A), 3/0 carries 160 A. */
    @Test
    void theNeutralCarriesItsOwnCurrent() {
        assertThat(conductor(Sizing.nec(
                        nec(LoadKind.GENERAL, 100).insulation(Insulation.NEC_75).thirdHarmonic(0.6))))
                .isEqualTo("4/0 AWG");
    }
}
