package io.axiswright.engine.wiring;

import io.axiswright.engine.catalogue.Cheapest;
import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.catalogue.SupplyDisconnector;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.supply.Disconnect;
import io.axiswright.engine.supply.Feeder;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Chooses what joins the parts of the system. What the catalogue cannot supply is a finding, and the bill lacks it. */
public final class WiringChoice {

    private static final String CLAUSE = "IEC 60204-1:2016 5.3; NFPA 79 5.3 (from memory, not confirmed)";

    /**
     * Chooses links, glands, what cable ends need, and the disconnecting device, each the cheapest that serves; none of the last
     * where the feeder's circuit-breaker does.
     */
    public WiringResult choose(WiringRequest request) {
        var joins = new JoinChoice(request);
        var glands = new GlandChoice(
                request,
                Stream.concat(request.runs().stream(), joins.runs().stream()).toList());
        List<WiringPart> parts = new ArrayList<>(joins.parts());
        List<Finding> findings = new ArrayList<>(joins.findings());
        parts.addAll(glands.parts());
        findings.addAll(glands.findings());
        if (request.disconnect() != null) {
            disconnect(request, request.disconnect(), parts, findings);
        }
        return new WiringResult(parts, joins.joined(), glands.entries(), glands.fieldEnds(), findings);
    }

    private static void disconnect(
            WiringRequest request, Disconnect asked, List<WiringPart> parts, List<Finding> findings) {
        ProtectiveDevice feeder = request.feederDevice();
        if (feeder != null && serves(feeder, asked)) {
            findings.add(FindingCode.BILL_DISCONNECTOR_SPARED.at(
                    feeder.id(), Feeder.POINTER, CLAUSE, feeder.rating(), asked.ratedCurrent()));
            return;
        }
        request.disconnectors().stream()
                .filter(device -> serves(device, asked))
                .min(Cheapest.FIRST)
                .ifPresentOrElse(
                        device -> parts.add(new WiringPart(
                                device.id(),
                                "the machine",
                                "disconnects it from its supply, lockable",
                                Feeder.POINTER,
                                false)),
                        () -> findings.add(FindingCode.BILL_DISCONNECTOR_NONE.at(
                                "the machine",
                                request.source().list("disconnectors", request.disconnectors()),
                                CLAUSE,
                                asked.ratedCurrent(),
                                largest(request.disconnectors()))));
    }

    private static boolean serves(ProtectiveDevice feeder, Disconnect asked) {
        return feeder.disconnects()
                && feeder.poles() >= asked.poles()
                && feeder.ratedVoltage().si() >= asked.voltage().si()
                && feeder.rating().si() >= asked.ratedCurrent().si()
                && feeder.interruptingRating().si() >= asked.breakingCurrent().si();
    }

    private static boolean serves(SupplyDisconnector device, Disconnect asked) {
        return device.poles() >= asked.poles()
                && device.ratedVoltage().si() >= asked.voltage().si()
                && device.ratedCurrent().si() >= asked.ratedCurrent().si()
                && device.breakingCurrent().si() >= asked.breakingCurrent().si();
    }

    private static Current largest(List<SupplyDisconnector> devices) {
        return new Current(devices.stream()
                .mapToDouble(device -> device.ratedCurrent().si())
                .max()
                .orElse(0));
    }
}
