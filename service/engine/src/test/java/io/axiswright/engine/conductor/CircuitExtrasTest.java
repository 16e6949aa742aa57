package io.axiswright.engine.conductor;

import static io.axiswright.engine.conductor.CircuitBuilder.iec;
import static io.axiswright.engine.conductor.CircuitBuilder.nec;
import static io.axiswright.engine.conductor.Sizing.conductor;
import static io.axiswright.engine.conductor.Sizing.device;
import static io.axiswright.engine.conductor.Sizing.protective;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.standard.ConductorClass;
import io.axiswright.engine.standard.ResistorDuty;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Braking resistors, leakage currents, terminals, flexing and the other code's insulation. */
class CircuitExtrasTest {

    private static List<Finding> of(CodeBasis basis, CircuitBuilder circuit, FindingCode code) {
        return Sizing.run(basis, circuit.build()).findings().stream()
                .filter(f -> f.code() == code)
                .toList();
    }

    /** NFPA 70 Table 430.29 as printed at solar365.com (NEC 2008, motors, page 10), and what falls between its rows. */
    @ParameterizedTest
    @CsvSource({
        "5,75,0.35",
        "10,70,0.45",
        "15,75,0.55",
        "15,45,0.65",
        "15,30,0.75",
        "15,15,0.85",
        "5,74,0.45",
        "6,75,0.45",
        "11,74,0.65",
        "15,44,0.75",
        "15,14,1.1",
        "16,600,1.1"
    })
    void resistorDuty(double on, double off, double multiple) {
        assertThat(ResistorDuty.multiple(new Time(on), new Time(off)).value().si())
                .isEqualTo(multiple);
    }

    /** By hand: 40 A for 15 s of 60 s ask for 26 A, 30 A device, 10 AWG; without pause for 44 A, 45 A and 8 AWG. */
    @Test
    void brakingResistor() {
        var resistor = nec(LoadKind.BRAKING_RESISTOR, 40).kind(CircuitKind.DC);
        var braking = Sizing.nec(resistor.pulse(15, 45));
        assertThat(device(braking)).isEqualTo(30);
        assertThat(conductor(braking)).isEqualTo("10 AWG");
        var heating = Sizing.nec(nec(LoadKind.BRAKING_RESISTOR, 40).kind(CircuitKind.DC));
        assertThat(device(heating)).isEqualTo(45);
        assertThat(conductor(heating)).isEqualTo("8 AWG");
    }

    /** IEC 60204-1 8.2.6 (cmph-safety.tech/?p=1023): above 10 mA at least 10 mm² of copper. */
    @Test
    void leakageReinforcesTheProtectiveConductor() {
        assertThat(protective(Sizing.iec(iec(10).leakage(0.01)))).isEqualTo(protective(Sizing.iec(iec(10))));
        assertThat(protective(Sizing.iec(iec(10).leakage(0.011)))).isEqualTo("10 mm2");
        assertThat(protective(Sizing.nec(nec(LoadKind.GENERAL, 10).leakage(0.011))))
                .isEqualTo("6 AWG");
        // larger already: 50 mm² and more take half
        assertThat(protective(Sizing.iec(iec(120).leakage(0.02)))).isEqualTo(protective(Sizing.iec(iec(120))));
    }

    /** 16 A wants 12 AWG; terminals that hold 8 AWG and up make it that, and the protective conductor grows in proportion. */
    @Test
    void terminalsThatHoldNothingThin() {
        var load = nec(LoadKind.GENERAL_CONTINUOUS, 16);
        assertThat(protective(Sizing.nec(load))).isEqualTo("12 AWG");
        var answer = Sizing.nec(load.terminals("8 AWG", null));
        assertThat(conductor(answer)).isEqualTo("8 AWG");
        assertThat(answer.decidingLimit()).isEqualTo(Limit.TERMINAL_RANGE);
        // 16 510 / 6 530 · 6 530 cmil
        assertThat(protective(answer)).isEqualTo("8 AWG");
    }

    @Test
    void terminalsTooSmall() {
        var load = iec(60).terminals(null, "6 mm2");
        var finding = of(CodeBasis.IEC_60204_1, load, FindingCode.CONDUCTOR_TERMINAL_TOO_SMALL)
                .getFirst();
        assertThat(finding.pointer()).isEqualTo("/circuits/0/terminals/largest");
        assertThat(finding.text()).contains("c1 need 16 mm2, its terminals take at most 6 mm2");
        assertThat(conductor(Sizing.iec(load))).isEqualTo(conductor(Sizing.iec(iec(60))));
        assertThat(of(
                        CodeBasis.IEC_60204_1,
                        iec(10).terminals(null, "6 mm2"),
                        FindingCode.CONDUCTOR_TERMINAL_TOO_SMALL))
                .isEmpty();
    }

    /**
     * NFPA 70 Table 310.15(C)(1): to 3 conductors 1, to 6 0.8, to 9 0.7, to 20 0.5. A three-phase circuit of 3 beside a one-phase
     * one of 2 makes 5, beside two three-phase ones 9, beside three 12.
     */
    @ParameterizedTest
    @CsvSource({"3, 1", "5, 0.8", "9, 0.7", "12, 0.5"})
    void conductorsTogetherMayBeCountedOneByOne(int together, double factor) {
        var alone = nec(LoadKind.GENERAL, 10).kind(CircuitKind.AC_THREE_PHASE);
        double free = Sizing.ampacity(Sizing.nec(alone.together(3)));
        var answer = Sizing.nec(alone.together(together));
        assertThat(conductor(answer)).isEqualTo(conductor(Sizing.nec(alone.together(3))));
        assertThat(Sizing.ampacity(answer)).isEqualTo(free * factor);
    }

    @Test
    void flexingNeedsFineStrands() {
        var fixed = iec(10).moving().construction(ConductorClass.CLASS_2);
        assertThat(of(CodeBasis.IEC_60204_1, fixed, FindingCode.CONDUCTOR_NOT_FLEXIBLE))
                .singleElement()
                .satisfies(f -> assertThat(f.pointer()).isEqualTo("/circuits/0/conductorClass"));
        assertThat(of(CodeBasis.IEC_60204_1, iec(10).moving(), FindingCode.CONDUCTOR_NOT_FLEXIBLE))
                .isEmpty();
    }

    /** The other code's insulation is one no hotter, and the answer says so once. */
    @ParameterizedTest
    @CsvSource({
        "NFPA_79,PVC_70,NEC_60,70 Cel,60 Cel",
        "NFPA_79,XLPE_90,NEC_90,90 Cel,90 Cel",
        "IEC_60204_1,NEC_75,PVC_70,75 Cel,70 Cel",
        "IEC_60204_1,NEC_90,XLPE_90,90 Cel,90 Cel"
    })
    void insulationOfTheOtherCode(CodeBasis basis, Insulation stated, Insulation assumed, String from, String to) {
        var circuit = iec(20).insulation(stated);
        var result = Sizing.run(basis, circuit.build(), circuit.id("c2").build());
        assertThat(result.findings().stream().filter(f -> f.code() == FindingCode.CONDUCTOR_INSULATION_ASSUMED))
                .singleElement()
                .satisfies(f -> assertThat(f.text()).contains(stated + " is read as " + assumed, from, to))
                .satisfies(f -> assertThat(f.pointer()).isEqualTo("/circuits/0/insulation"));
        assertThat(Sizing.one(basis, circuit.build()))
                .isEqualTo(Sizing.one(basis, circuit.insulation(assumed).build()));
        assertThat(of(basis, circuit, FindingCode.CONDUCTOR_INSULATION_ASSUMED)).isEmpty();
    }

    @Test
    void whatDoesNotBelongToTheLoadIsAFault() {
        assertThatThrownBy(() -> Sizing.run(
                        CodeBasis.NFPA_79,
                        nec(LoadKind.GENERAL, 10).id("a").largest(5).build(),
                        nec(LoadKind.MOTOR_OR_DRIVE, 10).id("b").largest(11).build(),
                        nec(LoadKind.GENERAL, 10).id("c").pulse(1, 1).build(),
                        nec(LoadKind.GENERAL, 10)
                                .id("d")
                                .kind(CircuitKind.AC_ONE_PHASE)
                                .thirdHarmonic(0.2)
                                .build(),
                        nec(LoadKind.GENERAL, 10)
                                .id("e")
                                .terminals("6 AWG", "10 AWG")
                                .build()))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        e -> assertThat(e.faults())
                                .extracting(Fault::pointer)
                                .containsExactly(
                                        "/circuits/0/largestLoad",
                                        "/circuits/1/largestLoad",
                                        "/circuits/2/resistorPulse",
                                        "/circuits/3/thirdHarmonic",
                                        "/circuits/4/terminals/largest"));
    }
}
