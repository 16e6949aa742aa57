package io.axiswright.engine.fault;

import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.supply.Feeder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/** What is to be said of the supply and of the study as a whole. */
final class SupplyRemarks {

    /** IEC 60909-0: motors whose rated currents together are below this share of the fault current do not count. */
    private static final double MOTORS_NEGLIGIBLE = 0.01;

    private static final String MOTORS = "IEC 60909-0:2016, asynchronous motors at low voltage (from memory)";

    private SupplyRemarks() {}

    static List<Finding> of(FaultRequest request, List<FaultPoint> points) {
        var findings = new ArrayList<Finding>();
        Mains mains = request.mains();
        findings.add(FindingCode.FAULT_CURRENTS_CALCULATED.at(
                "the machine",
                Feeder.POINTER,
                "common practice, no source",
                mains.prospectiveFaultCurrent(),
                points.stream()
                        .map(point -> point.minimum().smallest())
                        .min(Comparator.comparingDouble(Current::si))
                        .orElse(null)));
        if (mains.minimumFaultCurrent() == null || mains.faultResistanceRatio() == null) {
            findings.add(FindingCode.FAULT_SUPPLY_ASSUMED.at(
                    "the supply", Feeder.POINTER, SupplyCases.METHOD, mains.prospectiveFaultCurrent(), null));
        }
        if (mains.earthing() == SystemEarthing.IT) {
            findings.add(firstFault("the supply", Feeder.POINTER + "/earthing", mains.voltage()));
        }
        request.transformers().stream()
                .filter(transformer -> transformer.earthing() == SystemEarthing.IT && transformer.feeder() != null)
                .map(transformer -> firstFault(
                        "the secondary of transformer " + transformer.id(),
                        "/design/installation/transformers/earthing",
                        transformer.secondary()))
                .forEach(findings::add);
        motors(request, findings);
        return findings;
    }

    private static Finding firstFault(String subject, String pointer, Voltage voltage) {
        return FindingCode.FAULT_FIRST_FAULT_STAYS.at(
                subject, pointer, "IEC 60364-4-41:2005 411.6 (from memory)", voltage, null);
    }

    private static void motors(FaultRequest request, List<Finding> findings) {
        double amperes = request.branches().stream()
                .flatMap(branch -> branch.ends().stream())
                .map(CircuitEnd::motorCurrent)
                .filter(Objects::nonNull)
                .mapToDouble(Current::si)
                .sum();
        var negligible = new Current(
                MOTORS_NEGLIGIBLE * request.mains().prospectiveFaultCurrent().si());
        if (amperes > negligible.si()) {
            findings.add(FindingCode.FAULT_MOTORS_FEED_BACK.at(
                    "the machine", Feeder.POINTER, MOTORS, new Current(amperes), negligible));
        }
    }
}
