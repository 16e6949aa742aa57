package io.axiswright.engine.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Spot values of the NEC and NFPA 79 tables, and the rules that generate some of them. */
class NorthAmericanTablesTest {

    private static final double KFT = 304.8;

    private static Temperature celsius(double value) {
        return new Temperature(value + 273.15);
    }

    /**
     * NFPA 70:2023 Table 310.16, intrysys.com/tools/electrical/wire-ampacity-chart and wiresizes.com/guides/nec-table-310-16;
     * among them the four cells that differ from editions before 2011 (14 and 12 AWG at 60 °C, 3 and 1 AWG at 90 °C).
     */
    @ParameterizedTest
    @CsvSource({
        "14 AWG,NEC_60,15",
        "12 AWG,NEC_60,20",
        "10 AWG,NEC_90,40",
        "3 AWG,NEC_90,115",
        "1 AWG,NEC_90,145",
        "1 AWG,NEC_75,130",
        "4/0 AWG,NEC_75,230",
        "250 kcmil,NEC_75,255",
        "500 kcmil,NEC_90,430"
    })
    void ampacity(String size, Insulation column, double amperes) {
        var row = NecAmpacity.of(ConductorMaterial.COPPER, new ConductorSize(size), column)
                .orElseThrow();
        assertThat(row.value().si()).isEqualTo(amperes);
        assertThat(row.source()).isEqualTo(new Source("NFPA 70:2023 Table 310.16", Confidence.CONFIRMED_BY_TWO));
    }

    /** NFPA 79 Table 12.5.1 (from memory): 18 AWG 7 A, 16 AWG 10 A, the limits of 240.4(D). */
    @Test
    void ampacityBelowFourteenGaugeIsMarkedFromMemory() {
        var row = NecAmpacity.of(ConductorMaterial.COPPER, new ConductorSize("18 AWG"), Insulation.NEC_75)
                .orElseThrow();
        assertThat(row.value().si()).isEqualTo(7);
        assertThat(row.source().confidence()).isEqualTo(Confidence.FROM_MEMORY);
        assertThat(NecAmpacity.of(ConductorMaterial.COPPER, new ConductorSize("2.5 mm2"), Insulation.NEC_75))
                .isEmpty();
        assertThat(NecAmpacity.of(ConductorMaterial.COPPER, new ConductorSize("14 AWG"), Insulation.PVC_70))
                .isEmpty();
    }

    @Test
    void ampacityGrowsWithSizeAndColumn() {
        List<ConductorSize> sizes = NecAmpacity.sizes(ConductorMaterial.COPPER);
        assertThat(sizes).isSorted().hasSize(26);
        for (Insulation column : List.of(Insulation.NEC_60, Insulation.NEC_75, Insulation.NEC_90)) {
            double last = 0;
            for (ConductorSize size : sizes) {
                double amperes = NecAmpacity.of(ConductorMaterial.COPPER, size, column)
                        .map(r -> r.value().si())
                        .orElse(last);
                assertThat(amperes).as(size + " " + column).isGreaterThanOrEqualTo(last);
                last = amperes;
            }
        }
    }

    /** NFPA 70 310.15(B): factor = √((Tc − Ta)/(Tc − 30)) at the top of each 5 K band, to two decimals. */
    @ParameterizedTest
    @CsvSource({"NEC_60,60", "NEC_75,75", "NEC_90,90"})
    void ambientFactorsFollowTheSquareRootRule(Insulation column, double conductor) {
        for (int top = 10; top < conductor; top += 5) {
            double factor = NecCorrection.ambient(column, celsius(top))
                    .orElseThrow()
                    .value()
                    .si();
            assertThat(factor)
                    .as(column + " " + top)
                    .isCloseTo(Math.sqrt((conductor - top) / (conductor - 30)), within(0.00501));
            // anywhere in the band: the band's own factor, not an interpolated one
            assertThat(NecCorrection.ambient(column, celsius(top - 3))
                            .orElseThrow()
                            .value()
                            .si())
                    .isEqualTo(factor);
        }
        assertThat(NecCorrection.ambient(column, celsius(conductor))).isEmpty();
    }

    /** NFPA 70 Table 310.15(C)(1), buildmyowncabin.com/nec and tradehub.tools. */
    @ParameterizedTest
    @CsvSource({
        "3,1.0",
        "4,0.8",
        "6,0.8",
        "7,0.7",
        "9,0.7",
        "10,0.5",
        "20,0.5",
        "21,0.45",
        "40,0.4",
        "41,0.35",
        "300,0.35"
    })
    void conductorsTogether(int conductors, double factor) {
        assertThat(NecCorrection.together(conductors).orElseThrow().value().si())
                .isEqualTo(factor);
    }

    /** NFPA 70 240.4(D)(1) to (7), forums.mikeholt.com/threads/minimum-wire-size-motors.63400. */
    @ParameterizedTest
    @CsvSource({"18 AWG,7", "16 AWG,10", "14 AWG,15", "12 AWG,20", "10 AWG,30"})
    void smallConductors(String size, double amperes) {
        assertThat(SmallConductorRule.maxDevice(ConductorMaterial.COPPER, new ConductorSize(size))
                        .orElseThrow()
                        .value()
                        .si())
                .isEqualTo(amperes);
        assertThat(SmallConductorRule.maxDevice(ConductorMaterial.COPPER, new ConductorSize("8 AWG")))
                .isEmpty();
        assertThat(SmallConductorRule.maxContinuousLoad(ConductorMaterial.COPPER, new ConductorSize("18 AWG"))
                        .orElseThrow()
                        .value()
                        .si())
                .isEqualTo(5.6);
    }

    /** NFPA 70 Table 250.122, brunsengineering.com/nec-table-250-122; 10 A row of NFPA 79 from memory. */
    @ParameterizedTest
    @CsvSource({
        "10,16 AWG",
        "15,14 AWG",
        "20,12 AWG",
        "21,10 AWG",
        "60,10 AWG",
        "61,8 AWG",
        "200,6 AWG",
        "600,1 AWG",
        "800,1/0 AWG",
        "1200,3/0 AWG"
    })
    void protectiveConductors(double device, String size) {
        assertThat(ProtectiveConductors.northAmerican(ConductorMaterial.COPPER, new Current(device))
                        .orElseThrow()
                        .value()
                        .label())
                .isEqualTo(size);
        assertThat(ProtectiveConductors.northAmerican(ConductorMaterial.COPPER, new Current(1201)))
                .isEmpty();
    }

    /**
     * Chapter 9 Table 8, stranded (sfasoft.com/look/35/Conductor_Properties); an independent route: R of a solid round wire of
     * the same area, IACS copper 1/58 Ω·mm²/m, (234.5 + 75)/254.5, is 1.5 to 2.7 % below, for the lay of the strands.
     */
    @Test
    void directCurrentResistanceAgainstIacsCopper() {
        for (ConductorSize size : NecAmpacity.sizes(ConductorMaterial.COPPER)) {
            NecConductors.directCurrentResistance(ConductorMaterial.COPPER, size)
                    .ifPresent(row -> {
                        double solid = 1.0 / 58 * 1e-6 / size.area().si() * 309.5 / 254.5;
                        assertThat(row.value().si() / solid).as(size.label()).isBetween(1.013, 1.027);
                    });
        }
        assertThat(NecConductors.directCurrentResistance(ConductorMaterial.COPPER, new ConductorSize("16 AWG"))
                                .orElseThrow()
                                .value()
                                .si()
                        * KFT)
                .isCloseTo(4.99, within(1e-9));
    }

    /**
     * Table 8 brought from 75 °C to another temperature by (234.5 + T)/309.5. Texas DOT manual (txdot.gov, calculation example of
     * voltage drop): loop of 8 AWG 0.001308 ohm/ft, at 25 °C. Army course EN1136 (armyengineer.tpub.com): bare stranded 1 AWG
     * 0.12617 ohm/kft at 20 °C.
     */
    @ParameterizedTest
    @CsvSource({"8 AWG,25,0.654", "1 AWG,20,0.12617"})
    void directCurrentResistanceAgainstPublishedWires(String size, double celsius, double published) {
        double hot = NecConductors.directCurrentResistance(ConductorMaterial.COPPER, new ConductorSize(size))
                        .orElseThrow()
                        .value()
                        .si()
                * KFT;
        assertThat(hot * (234.5 + celsius) / 309.5).isCloseTo(published, within(0.005 * published));
    }

    /** Chapter 9 Table 9 note 2: the printed effective Z is R·cos φ + X·sin φ at 0.85; R and X are themselves rounded. */
    @ParameterizedTest
    @EnumSource(Raceway.class)
    void effectiveImpedanceFollowsFromResistanceAndReactance(Raceway raceway) {
        var rows = TableFile.rows("nec-chapter-9-table-9").stream()
                .filter(r -> r.word("raceway", Raceway.class) == raceway)
                .toList();
        assertThat(rows).hasSize(18);
        for (TableRow row : rows) {
            var line = NecConductors.impedance(ConductorMaterial.COPPER, row.size(), raceway)
                    .orElseThrow()
                    .value();
            double z = (line.resistance().si() * 0.85 + line.reactance().si() * Math.sqrt(1 - 0.85 * 0.85)) * KFT;
            assertThat(z).as(row.text("size")).isCloseTo(row.number("z_085"), within(0.055 * row.number("z_085")));
        }
    }

    /** NFPA 70 Table 430.52, buildmyowncabin.com/nec/nec2011_table430.52.html: 250 % breaker, 175 % dual-element fuse. */
    @Test
    void motorDevices() {
        assertThat(MotorDevices.multiple(io.axiswright.engine.design.DeviceKind.BREAKER)
                        .value()
                        .si())
                .isEqualTo(2.5);
        assertThat(MotorDevices.multiple(io.axiswright.engine.design.DeviceKind.FUSE)
                        .value()
                        .si())
                .isEqualTo(1.75);
    }
}
