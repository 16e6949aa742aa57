package io.axiswright.engine.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.standard.AdiabaticFactor;
import io.axiswright.engine.standard.ConductorClass;
import io.axiswright.engine.standard.IecConductors;
import io.axiswright.engine.standard.NecAmpacity;
import io.axiswright.engine.standard.NecConductors;
import io.axiswright.engine.standard.ProtectiveConductors;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Conductors of aluminium. */
class AluminiumTest {

    private static final CodeBasis NA = CodeBasis.NFPA_79;
    private static final CodeBasis IEC = CodeBasis.IEC_60204_1;
    private static final ConductorMaterial AL = ConductorMaterial.ALUMINIUM;

    private static CircuitBuilder circuit(double amperes) {
        var circuit = new CircuitBuilder();
        circuit.material = AL;
        circuit.amperes = amperes;
        return circuit;
    }

    private static CircuitBuilder northAmerican(double amperes) {
        var circuit = circuit(amperes);
        circuit.insulation = Insulation.NEC_75;
        circuit.volts = 480;
        return circuit;
    }

    /** Spot values of NFPA 70 Table 310.16, read at intrysys.com and wiresizes.com. */
    @ParameterizedTest
    @CsvSource({"10 AWG, 25, 30, 35", "1/0 AWG, 100, 120, 135", "250 kcmil, 170, 205, 230", "500 kcmil, 260, 310, 350"})
    void ampacityOfTheNorthAmericanTable(String size, double at60, double at75, double at90) {
        var conductor = new ConductorSize(size);
        assertThat(NecAmpacity.of(AL, conductor, Insulation.NEC_60)
                        .orElseThrow()
                        .value()
                        .si())
                .isEqualTo(at60);
        assertThat(NecAmpacity.of(AL, conductor, Insulation.NEC_75)
                        .orElseThrow()
                        .value()
                        .si())
                .isEqualTo(at75);
        assertThat(NecAmpacity.of(AL, conductor, Insulation.NEC_90)
                        .orElseThrow()
                        .value()
                        .si())
                .isEqualTo(at90);
    }

    /** NFPA 70 Table 250.122, the aluminium column: brunsengineering.com/nec-table-250-122; field-pm.com; calcpoint.net. */
    @ParameterizedTest
    @CsvSource({"15, 12 AWG", "60, 8 AWG", "100, 6 AWG", "200, 4 AWG", "400, 1 AWG", "800, 3/0 AWG", "1200, 250 kcmil"})
    void protectiveConductorOfTheNorthAmericanTable(double device, String size) {
        assertThat(ProtectiveConductors.northAmerican(AL, new Current(device))
                        .orElseThrow()
                        .value()
                        .label())
                .isEqualTo(size);
    }

    /**
     * 100 A continuous: 125 A asked of the 75 °C column at the terminals: 2/0 AWG with 135 A (1/0 AWG has 120 A). Device 125 A;
     * protective conductor of the row to 200 A: 4 AWG. Copper needs 1 AWG (130 A).
     */
    @Test
    void aFeederByHand() {
        var circuit = northAmerican(100);
        circuit.loadKind = LoadKind.GENERAL_CONTINUOUS;
        var answer = Sizing.one(NA, circuit.build());
        assertThat(Sizing.conductor(answer)).isEqualTo("2/0 AWG");
        assertThat(Sizing.device(answer)).isEqualTo(125);
        assertThat(Objects.requireNonNull(answer.protectiveConductor()).label()).isEqualTo("4 AWG");
        circuit.material = ConductorMaterial.COPPER;
        assertThat(Sizing.conductor(Sizing.one(NA, circuit.build()))).isEqualTo("1 AWG");
    }

    /** 240.4(D): 10 AWG bears 30 A at 75 °C, but no device above 25 A; 28 A with 30 A take 8 AWG. */
    @Test
    void smallConductorsAreLimitedByTheirDevice() {
        var answer = Sizing.one(NA, northAmerican(28).build());
        assertThat(Sizing.conductor(answer)).isEqualTo("8 AWG");
        assertThat(answer.decidingLimit()).isEqualTo(Limit.SMALL_CONDUCTOR);
        assertThat(Sizing.conductor(Sizing.one(NA, northAmerican(24).build()))).isEqualTo("10 AWG");
    }

    /** Thinnest: 12 AWG in North America, 16 mm² on machines under IEC. */
    @Test
    void noneIsThinnerThanTheCodesAllow() {
        assertThat(Sizing.conductor(Sizing.one(NA, northAmerican(1).build()))).isEqualTo("12 AWG");
        assertThat(Sizing.conductor(Sizing.one(IEC, circuit(1).build()))).isEqualTo("16 mm2");
    }

    /**
     * PVC, three loaded in conduit (B1): 25 mm² bears 70 A at 30 °C, at 40 °C 70 · 0.87 = 60.9 A; 63 A take 35 mm², 86 · 0.87 =
     * 74.82 A. Drop over 50 m: 0.868 ohm/km · 1.2015, √3 · 60 · 0.0010429 · 50 = 5.419 V.
     */
    @Test
    void anIecCircuitByHand() {
        var circuit = circuit(60);
        circuit.ambient = 40;
        circuit.metres = 50;
        circuit.rating = 63.0;
        var answer = Sizing.one(IEC, circuit.build());
        assertThat(Sizing.conductor(answer)).isEqualTo("35 mm2");
        assertThat(Sizing.ampacity(answer)).isCloseTo(74.82, within(1e-9));
        assertThat(Sizing.drop(answer)).isCloseTo(5.419, within(0.001));
        assertThat(Objects.requireNonNull(answer.protectiveConductor()).label()).isEqualTo("16 mm2");
    }

    /** k = 148 √ln((θf + 228)/(θi + 228)), IEC 60949: 76.0 from 70 to 160 °C, 94.5 from 90 to 250 °C; the code prints 76 and 94. */
    @Test
    void adiabaticFactorsFollowTheirEquation() {
        var section = new ConductorSize("35 mm2").area();
        assertThat(AdiabaticFactor.of(AL, Insulation.PVC_70, section).value())
                .isCloseTo(148 * Math.sqrt(Math.log(388.0 / 298)), within(0.1));
        assertThat(AdiabaticFactor.of(AL, Insulation.XLPE_90, section).value())
                .isCloseTo(148 * Math.sqrt(Math.log(478.0 / 318)), within(0.6));
        assertThat(AdiabaticFactor.of(AL, Insulation.NEC_75, section).value())
                .isCloseTo(148 * Math.sqrt(Math.log(378.0 / 303)), within(0.1));
    }

    /** Aluminium conducts 61 % as well as copper: both tables, of the same size, within the strands' lay. */
    @Test
    void itsResistanceIsThatOfItsConductivity() {
        for (ConductorSize size : NecAmpacity.sizes(AL)) {
            double ratio = NecConductors.directCurrentResistance(AL, size)
                            .orElseThrow()
                            .value()
                            .si()
                    / NecConductors.directCurrentResistance(ConductorMaterial.COPPER, size)
                            .orElseThrow()
                            .value()
                            .si();
            assertThat(ratio).as(size.label()).isBetween(1 / 0.615, 1 / 0.605);
        }
        for (ConductorSize size : IecConductors.sizes(AL)) {
            double section = size.area().si();
            var resistance = IecConductors.resistanceAt20(AL, size, ConductorClass.CLASS_2)
                    .orElseThrow();
            // never below 28.264 nohm·m over the nominal section
            assertThat(resistance.value().si() * section).as(size.label()).isBetween(28.0e-9, 33.0e-9);
        }
    }

    @Test
    void terminalsAndFlexingAreTold() {
        var circuit = circuit(100);
        assertThat(Sizing.run(IEC, circuit.build()).findings())
                .extracting(Finding::code)
                .contains(FindingCode.CONDUCTOR_ALUMINIUM)
                .doesNotContain(FindingCode.CONDUCTOR_TERMINAL_NOT_FOR_ALUMINIUM, FindingCode.CONDUCTOR_NOT_FLEXIBLE);
        circuit.aluminiumTerminals = false;
        circuit.moving = true;
        assertThat(Sizing.run(IEC, circuit.build()).findings())
                .extracting(Finding::code)
                .contains(FindingCode.CONDUCTOR_TERMINAL_NOT_FOR_ALUMINIUM, FindingCode.CONDUCTOR_NOT_FLEXIBLE);
        circuit.material = ConductorMaterial.COPPER;
        assertThat(Sizing.run(IEC, circuit.build()).findings())
                .extracting(Finding::code)
                .doesNotContain(
                        FindingCode.CONDUCTOR_TERMINAL_NOT_FOR_ALUMINIUM,
                        FindingCode.CONDUCTOR_NOT_FLEXIBLE,
                        FindingCode.CONDUCTOR_ALUMINIUM);
    }
}
