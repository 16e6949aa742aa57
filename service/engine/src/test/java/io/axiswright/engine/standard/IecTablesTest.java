package io.axiswright.engine.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Spot values of the IEC tables, and the rules that generate some of them. */
class IecTablesTest {

    private static Temperature celsius(double value) {
        return new Temperature(value + 273.15);
    }

    private static double installation(String size, InstallationMethod method, Insulation insulation, int loaded) {
        return IecAmpacity.installation(
                        ConductorMaterial.COPPER, ConductorSize.metric(size), method, insulation, loaded)
                .orElseThrow()
                .value()
                .si();
    }

    /**
     * Electrical trade journal 2002-05 p. 384 (de.scribd.com/document/562373361): 1.5 mm² sheathed cable, two loaded cores,
     * method B2, 25 °C: 17.5 A, here 16.5 · 1.06 = 17.49 A.
     */
    @Test
    void cableAt25Degrees() {
        double ambient = IecCorrection.ambient(Insulation.PVC_70, celsius(25))
                .orElseThrow()
                .value()
                .si();
        assertThat(installation("1.5", InstallationMethod.B2, Insulation.PVC_70, 2) * ambient)
                .isCloseTo(17.49, within(1e-9));
    }

    /** Linsley, Basic Electrical Installation Work, p. 301: 32 A at 35 °C asks for 32/0.94 = 34.04 A; 34 A is not enough. */
    @Test
    void ratingNeededAt35Degrees() {
        double ambient = IecCorrection.ambient(Insulation.PVC_70, celsius(35))
                .orElseThrow()
                .value()
                .si();
        assertThat(32 / ambient).isCloseTo(34.043, within(1e-3));
        assertThat(Limits.within(32, 34 * ambient)).isFalse();
    }

    /** Values on which independent public copies of IEC 60364-5-52:2009 agree. */
    @ParameterizedTest
    @CsvSource({
        "1.5,B1,PVC_70,2,17.5",
        "16,B2,PVC_70,3,62",
        "25,C,PVC_70,3,96",
        "120,E,PVC_70,2,328",
        "4,B1,XLPE_90,3,37",
        "35,B2,XLPE_90,2,146",
        "95,C,XLPE_90,3,278",
        "120,E,XLPE_90,3,346",
        "300,B1,PVC_70,3,394",
        "185,B2,PVC_70,3,255",
        "240,C,PVC_70,2,461",
        "150,E,PVC_70,3,319",
        "240,B2,XLPE_90,2,459",
        "300,E,XLPE_90,3,621",
        "25,F,PVC_70,3,110",
        "240,F,PVC_70,3,485",
        "70,F,XLPE_90,2,310",
        "120,F,XLPE_90,3,383"
    })
    void ampacity(String size, InstallationMethod method, Insulation insulation, int loaded, double amperes) {
        assertThat(installation(size, method, insulation, loaded)).isEqualTo(amperes);
    }

    /** IEC 60204-1 Table 6 is 0.87 (40 °C) times the three-loaded PVC value of IEC 60364-5-52, rounded. */
    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "F")
    void machineTableFollowsFromTheInstallationTable(InstallationMethod method) {
        int compared = 0;
        for (ConductorSize size : IecConductors.sizes(ConductorMaterial.COPPER)) {
            var machine = IecAmpacity.machine(ConductorMaterial.COPPER, size, method);
            var installation = IecAmpacity.installation(ConductorMaterial.COPPER, size, method, Insulation.PVC_70, 3);
            if (machine.isPresent()
                    && installation.isPresent()
                    && size.area().si() >= 1.5e-6
                    && size.area().si() <= 120e-6) {
                double expected = 0.87 * installation.get().value().si();
                double tolerance = Math.max(0.55, 0.01 * expected);
                assertThat(machine.get().value().si()).as(size.label()).isCloseTo(expected, within(tolerance));
                assertThat(machine.get().source().confidence()).isEqualTo(Confidence.FROM_MEMORY);
                compared++;
            }
        }
        assertThat(compared).isEqualTo(12);
    }

    /** IEC 60364-5-52 Table B.52.14: √((Tmax − Ta)/(Tmax − 30)) to two decimals; a value between two rows takes the hotter. */
    @ParameterizedTest
    @CsvSource({"PVC_70,70,60", "XLPE_90,90,80"})
    void ambientFactorsFollowTheSquareRootRule(Insulation insulation, double conductor, int last) {
        for (int row = 10; row <= last; row += 5) {
            double factor = IecCorrection.ambient(insulation, celsius(row))
                    .orElseThrow()
                    .value()
                    .si();
            assertThat(factor).isCloseTo(Math.sqrt((conductor - row) / (conductor - 30)), within(0.00501));
            assertThat(IecCorrection.ambient(insulation, celsius(row - 4.9))
                            .orElseThrow()
                            .value()
                            .si())
                    .isEqualTo(factor);
        }
        assertThat(IecCorrection.ambient(insulation, celsius(last + 0.1))).isEmpty();
        assertThat(IecCorrection.highestAmbient(insulation).orElseThrow().si()).isEqualTo(last + 273.15);
    }

    /** IEC 60204-1 Table D.1: √((70 − T)/30) to two decimals (1.155 at 30 °C is printed 1.15). */
    @Test
    void machineAmbientFactorsFollowTheSquareRootRule() {
        for (int row = 30; row <= 60; row += 5) {
            assertThat(IecCorrection.machineAmbient(celsius(row))
                            .orElseThrow()
                            .value()
                            .si())
                    .isCloseTo(Math.sqrt((70.0 - row) / 30), within(0.00501));
        }
        assertThat(IecCorrection.machineAmbient(celsius(61))).isEmpty();
        assertThat(IecCorrection.highestMachineAmbient().si()).isEqualTo(333.15);
    }

    /** IEC 60364-5-52 Table B.52.17, first arrangement; IEC 60204-1 Table D.2 agrees at 2, 4, 6 and 9. */
    @ParameterizedTest
    @CsvSource({
        "1,1.0,1.0",
        "2,0.8,0.8",
        "3,0.65,0.7",
        "4,0.65,0.65",
        "5,0.57,0.6",
        "7,0.5,0.54",
        "9,0.5,0.5",
        "10,0.45,0.45",
        "20,0.38,0.38"
    })
    void grouping(int circuits, double machine, double installation) {
        assertThat(IecCorrection.machineGrouping(InstallationMethod.B1, circuits)
                        .orElseThrow()
                        .value()
                        .si())
                .isEqualTo(machine);
        assertThat(IecCorrection.grouping(InstallationMethod.B1, circuits)
                        .orElseThrow()
                        .value()
                        .si())
                .isEqualTo(installation);
    }

    @Test
    void groupingEndsWithTheTable() {
        assertThat(IecCorrection.grouping(InstallationMethod.B1, 21)).isEmpty();
        assertThat(IecCorrection.mostCircuits(InstallationMethod.B1)).isEqualTo(20);
    }

    /** IEC 60228:2004, etechnik-synergie.com/technical_information/condutor-resistance; 50 mm² is no slip. */
    @ParameterizedTest
    @CsvSource({"2.5,7.41,7.98", "16,1.15,1.21", "50,0.387,0.386", "120,0.153,0.161"})
    void resistance(String size, double stranded, double flexible) {
        var metric = ConductorSize.metric(size);
        assertThat(IecConductors.resistanceAt20(ConductorMaterial.COPPER, metric, ConductorClass.CLASS_2)
                                .orElseThrow()
                                .value()
                                .si()
                        * 1000)
                .isCloseTo(stranded, within(1e-12));
        assertThat(IecConductors.resistanceAt20(ConductorMaterial.COPPER, metric, ConductorClass.CLASS_5)
                                .orElseThrow()
                                .value()
                                .si()
                        * 1000)
                .isCloseTo(flexible, within(1e-12));
    }

    /** Payback paper, studylib.net/doc/18141104: 0.00393 at 20 °C is 0.00323 referred to 75 °C. */
    @Test
    void temperatureCoefficientOfCopper() {
        double at20 = IecConductors.temperatureCoefficientAt20(ConductorMaterial.COPPER)
                .value();
        assertThat(at20 / (1 + at20 * 55)).isCloseTo(0.00323, within(5e-6));
        // electrakit.com/formulas/resistance-temperature: 1.21 at 20 °C is 1.472 at 75 °C
        assertThat(1.21 * (1 + at20 * 55)).isCloseTo(1.472, within(1e-3));
    }

    /** IEC 60364-5-54 Table 54.2 (Linsley p. 250): S, 16, S/2 and then the next size; 95 mm² asks for 47.5, so 50. */
    @ParameterizedTest
    @CsvSource({"6,6", "16,16", "25,16", "35,16", "50,25", "70,35", "95,50", "120,70"})
    void protectiveConductors(String line, String protective) {
        assertThat(ProtectiveConductors.iec(ConductorSize.metric(line))
                        .orElseThrow()
                        .value())
                .isEqualTo(ConductorSize.metric(protective));
    }

    /** k = 226·√(ln((Tf + 234.5)/(Ti + 234.5))), the form of IEC 60949. */
    @ParameterizedTest
    @CsvSource({"PVC_70,70,160", "XLPE_90,90,250", "NEC_60,60,150", "NEC_75,75,150", "NEC_90,90,150"})
    void adiabaticFactorFromFirstPrinciples(Insulation insulation, double initial, double last) {
        double k = 226 * Math.sqrt(Math.log((last + 234.5) / (initial + 234.5)));
        assertThat(AdiabaticFactor.of(
                                ConductorMaterial.COPPER,
                                insulation,
                                ConductorSize.metric("10").area())
                        .value())
                .isCloseTo(k, within(0.12))
                .isLessThan(k + 0.01);
    }
}
