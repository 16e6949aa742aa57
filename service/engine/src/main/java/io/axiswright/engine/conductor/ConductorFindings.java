package io.axiswright.engine.conductor;

import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Remarks on the conductors of a request: what fails circuit by circuit, and once for all what to look at. */
final class ConductorFindings {

    /** IEC 60204-1 6.4.1 (PELV, dry): 25 V AC; the same figure from memory for NFPA 79 would be 30 V. */
    private static final double LOW_VOLTAGE_AC = 25;

    /** IEC 60204-1 6.4.1 (PELV, dry): 60 V ripple-free DC. */
    private static final double LOW_VOLTAGE_DC = 60;

    private ConductorFindings() {}

    static List<Finding> of(ConductorRequest request, List<Sized> sized, Set<Source> sources) {
        var findings = new ArrayList<Finding>();
        for (int i = 0; i < sized.size(); i++) {
            ofCircuit(sized.get(i), "/circuits/" + i, findings);
        }
        InsulationFindings.add(request, sized, findings);
        motorRule(sized, findings);
        aluminium(sized, findings);
        faultUnchecked(sized, findings);
        Source.fromMemory(sources, FindingCode.CONDUCTOR_TABLE_FROM_MEMORY).ifPresent(findings::add);
        hazardousVoltage(sized, findings);
        return List.copyOf(findings);
    }

    private static void ofCircuit(Sized sized, String pointer, List<Finding> findings) {
        String id = sized.circuit().id();
        Gap gap = sized.gap();
        if (gap != null) {
            findings.add(FindingCode.CONDUCTOR_TABLE_EXCEEDED.at(
                    id, pointer + "/" + gap.member(), gap.clause(), gap.value(), gap.end()));
        }
        Breach misfit = sized.misfit();
        if (misfit != null) {
            findings.add(FindingCode.CONDUCTOR_NONE_FITS.at(
                    id + " (" + misfit.limit().words() + ")",
                    pointer,
                    misfit.clause(),
                    misfit.value(),
                    misfit.bound()));
        }
        Device device = sized.device();
        if (device != null && device.tooSmall()) {
            findings.add(FindingCode.CONDUCTOR_DEVICE_TOO_SMALL.at(
                    id,
                    pointer + "/deviceRating",
                    "NFPA 70 210.20(A), IEC 60364-4-43 433.1",
                    device.rating(),
                    device.range().least()));
        }
        if (device != null && device.tooLarge()) {
            findings.add(FindingCode.CONDUCTOR_DEVICE_TOO_LARGE.at(
                    id,
                    pointer + "/deviceRating",
                    "NFPA 70:2023 430.52(C)(1)",
                    device.rating(),
                    device.range().most()));
        }
        ConstructionFindings.add(sized, pointer, findings);
    }

    private static void motorRule(List<Sized> sized, List<Finding> findings) {
        count(sized, FindingCode.CONDUCTOR_DEVICE_BY_MOTOR_RULE, "NFPA 70:2023 430.52(C)(1), 430.130", findings, s -> {
            Device device = s.device();
            return device != null && device.chosen() && device.range().most() != null;
        });
    }

    /** Once for all circuits of it: its terminals, and that machine codes speak of copper. */
    private static void aluminium(List<Sized> sized, List<Finding> findings) {
        count(
                sized,
                FindingCode.CONDUCTOR_ALUMINIUM,
                "NFPA 70:2023 110.14, NFPA 79:2021 12.2, IEC 60204-1:2016 12.2 (from memory)",
                findings,
                s -> s.circuit().material() == ConductorMaterial.ALUMINIUM);
    }

    private static void faultUnchecked(List<Sized> sized, List<Finding> findings) {
        count(
                sized,
                FindingCode.CONDUCTOR_FAULT_UNCHECKED,
                FaultWithstand.CLAUSE,
                findings,
                s -> s.circuit().prospectiveFaultCurrent() == null);
    }

    /** One finding for all circuits of a kind, at the first of them. */
    private static void count(
            List<Sized> sized, FindingCode code, String clause, List<Finding> findings, Predicate<Sized> which) {
        int first = -1;
        int number = 0;
        for (int i = 0; i < sized.size(); i++) {
            if (which.test(sized.get(i))) {
                first = number == 0 ? i : first;
                number++;
            }
        }
        if (number > 0) {
            findings.add(code.at(
                    sized.get(first).circuit().id(),
                    "/circuits/" + first,
                    clause,
                    new Ratio(number),
                    new Ratio(sized.size())));
        }
    }

    private static void hazardousVoltage(List<Sized> sized, List<Finding> findings) {
        for (int i = 0; i < sized.size(); i++) {
            Circuit circuit = sized.get(i).circuit();
            double low = circuit.kind() == CircuitKind.DC ? LOW_VOLTAGE_DC : LOW_VOLTAGE_AC;
            if (circuit.voltage().si() > low) {
                findings.add(FindingCode.CONDUCTOR_HAZARDOUS_VOLTAGE.at(
                        circuit.id(),
                        "/circuits/" + i + "/voltage",
                        "IEC 60204-1:2016 6.4.1",
                        circuit.voltage(),
                        new Voltage(low)));
                return;
            }
        }
    }
}
