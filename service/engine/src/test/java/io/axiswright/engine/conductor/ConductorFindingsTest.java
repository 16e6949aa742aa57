package io.axiswright.engine.conductor;

import static io.axiswright.engine.conductor.CircuitBuilder.iec;
import static io.axiswright.engine.conductor.CircuitBuilder.nec;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.List;
import org.junit.jupiter.api.Test;

class ConductorFindingsTest {

    private static List<Finding> findings(CodeBasis basis, CircuitBuilder circuit) {
        return Sizing.run(basis, circuit.build()).findings();
    }

    private static Finding only(List<Finding> findings, FindingCode code) {
        assertThat(findings).extracting(Finding::code).contains(code);
        return findings.stream().filter(f -> f.code() == code).findFirst().orElseThrow();
    }

    @Test
    void noSizeServesNamesTheLimit() {
        var circuit = nec(LoadKind.GENERAL, 100).run(24, 500, 0.03).kind(CircuitKind.DC);
        var result = Sizing.run(CodeBasis.NFPA_79, circuit.build());
        var finding = only(result.findings(), FindingCode.CONDUCTOR_NONE_FITS);
        assertThat(finding.text()).contains("c1 (voltage drop)").contains("0.72 V");
        assertThat(finding.pointer()).isEqualTo("/circuits/0");
        var answer = result.circuits().getFirst();
        assertThat(answer.conductor()).isNull();
        assertThat(answer.decidingLimit()).isEqualTo(Limit.VOLTAGE_DROP);
        assertThat(answer.tried())
                .hasSizeGreaterThan(15)
                .allSatisfy(t -> assertThat(t.failed()).isNotNull());
    }

    @Test
    void ambientBeyondTheTables() {
        var finding = only(findings(CodeBasis.IEC_60204_1, iec(10).ambient(61)), FindingCode.CONDUCTOR_TABLE_EXCEEDED);
        assertThat(finding.pointer()).isEqualTo("/circuits/0/ambient");
        assertThat(finding.text()).contains("61").contains("60");
        only(
                findings(
                        CodeBasis.NFPA_79,
                        nec(LoadKind.GENERAL, 10).insulation(Insulation.NEC_60).ambient(56)),
                FindingCode.CONDUCTOR_TABLE_EXCEEDED);
    }

    @Test
    void groupingAndDeviceBeyondTheTables() {
        assertThat(only(findings(CodeBasis.IEC_60204_1, iec(10).grouped(21)), FindingCode.CONDUCTOR_TABLE_EXCEEDED)
                        .pointer())
                .isEqualTo("/circuits/0/groupedCircuits");
        assertThat(only(
                                findings(CodeBasis.IEC_60204_1, iec(1300).device(DeviceKind.FUSE, null)),
                                FindingCode.CONDUCTOR_TABLE_EXCEEDED)
                        .pointer())
                .isEqualTo("/circuits/0/designCurrent");
        assertThat(only(
                                findings(CodeBasis.IEC_60204_1, iec(10).device(DeviceKind.FUSE, 1300.0)),
                                FindingCode.CONDUCTOR_TABLE_EXCEEDED)
                        .pointer())
                .isEqualTo("/circuits/0/deviceRating");
        only(findings(CodeBasis.NFPA_79, nec(LoadKind.GENERAL_CONTINUOUS, 5000)), FindingCode.CONDUCTOR_TABLE_EXCEEDED);
    }

    @Test
    void deviceTooSmallForTheLoad() {
        var finding = only(
                findings(CodeBasis.NFPA_79, nec(LoadKind.GENERAL_CONTINUOUS, 16).device(DeviceKind.BREAKER, 15.0)),
                FindingCode.CONDUCTOR_DEVICE_TOO_SMALL);
        assertThat(finding.text()).contains("15 A").contains("20 A");
    }

    @Test
    void deviceTooLargeForTheMotor() {
        var circuit = nec(LoadKind.MOTOR_OR_DRIVE, 10).device(DeviceKind.BREAKER, 100.0);
        var finding = only(findings(CodeBasis.NFPA_79, circuit), FindingCode.CONDUCTOR_DEVICE_TOO_LARGE);
        assertThat(finding.text()).contains("100 A").contains("25 A");
    }

    @Test
    void remarksOnTheWholeAreMadeOnce() {
        var result = Sizing.run(
                CodeBasis.NFPA_79,
                nec(LoadKind.MOTOR_OR_DRIVE, 10).id("m1").fault(5000.0, 0.01).build(),
                nec(LoadKind.MOTOR_OR_DRIVE, 10).id("m2").build(),
                nec(LoadKind.GENERAL, 10).id("h1").build());
        assertThat(only(result.findings(), FindingCode.CONDUCTOR_DEVICE_BY_MOTOR_RULE)
                        .text())
                .startsWith("2 of 3");
        var fault = only(result.findings(), FindingCode.CONDUCTOR_FAULT_UNCHECKED);
        assertThat(fault.text()).contains("2 of 3").contains("m2");
        assertThat(fault.pointer()).isEqualTo("/circuits/1");
        assertThat(only(result.findings(), FindingCode.CONDUCTOR_TABLE_FROM_MEMORY)
                        .text())
                .contains("NFPA 79:2021 Table 8.2.2.3");
        assertThat(only(result.findings(), FindingCode.CONDUCTOR_HAZARDOUS_VOLTAGE)
                        .text())
                .contains("480 V");
        assertThat(result.findings()).hasSize(4);
    }

    @Test
    void lowVoltageIsNotCalledDangerous() {
        var circuit = iec(2).control().kind(CircuitKind.DC).run(24, 2, 0.05);
        assertThat(findings(CodeBasis.IEC_60204_1, circuit))
                .extracting(Finding::code)
                .doesNotContain(FindingCode.CONDUCTOR_HAZARDOUS_VOLTAGE);
    }

    @Test
    void everyFaultOfARequestAtOnce() {
        assertThatThrownBy(() -> Sizing.run(
                        CodeBasis.IEC_60204_1,
                        iec(10).build(),
                        iec(10).build(),
                        iec(10).id("c2").insulation(Insulation.NEC_60).build(),
                        iec(10).id("c3").kind(CircuitKind.DC).powerFactor(0.8).build(),
                        iec(10).id("c4").fault(1000.0, null).build(),
                        iec(10).id("c5").fault(null, 0.1).build()))
                .isInstanceOfSatisfying(InvalidDesign.class, e -> {
                    assertThat(e.faults())
                            .extracting(Fault::pointer)
                            .containsExactly(
                                    "/circuits/1/id",
                                    "/circuits/2/insulation",
                                    "/circuits/3/powerFactor",
                                    "/circuits/4/clearingTime",
                                    "/circuits/5/prospectiveFaultCurrent");
                    assertThat(e.faults())
                            .extracting(Fault::code)
                            .containsExactly(
                                    FaultCode.DUPLICATE_ID,
                                    FaultCode.INCONSISTENT,
                                    FaultCode.INCONSISTENT,
                                    FaultCode.MISSING,
                                    FaultCode.MISSING);
                });
    }
}
