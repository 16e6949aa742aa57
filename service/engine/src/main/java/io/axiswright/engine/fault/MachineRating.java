package io.axiswright.engine.fault;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.supply.Feeder;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The short-circuit current rating a machine bears on its nameplate: that of its weakest part. Supplement SB of UL 508A
 * gives credit to current-limiting parts ahead, by tests and tables that are not open; none is given here. What stands behind a
 * transformer is held against the fault current of its own place instead.
 */
final class MachineRating {

    private static final String NAMEPLATE = "NFPA 70 409.110, 670.5; UL 508A SB4.4 (from memory)";

    private final FaultRequest request;
    private final List<String> unrated = new ArrayList<>();
    private @Nullable String firstUnratedPointer;
    private @Nullable Current lowest;
    private @Nullable String weakest;
    private String weakestPointer = Feeder.POINTER;

    MachineRating(FaultRequest request) {
        this.request = request;
        circuit(request.feeder());
        request.branches().forEach(this::circuit);
    }

    private void circuit(FaultCircuit circuit) {
        var device = circuit.device();
        if (device != null) {
            take("protective device of " + circuit.id(), circuit.pointer(), device.interruptingRating());
        }
        if (circuit != request.feeder()) {
            circuit.ends().stream()
                    .filter(CircuitEnd::ratingAsked)
                    .forEach(end -> take(end.id(), end.pointer(), end.shortCircuitRating()));
        }
    }

    private void take(String part, String pointer, @Nullable Current rating) {
        if (rating == null) {
            firstUnratedPointer = firstUnratedPointer == null ? pointer : firstUnratedPointer;
            unrated.add(part);
        } else if (lowest == null || rating.si() < lowest.si()) {
            lowest = rating;
            weakest = part;
            weakestPointer = pointer;
        }
    }

    @Nullable
    Current lowest() {
        return lowest;
    }

    @Nullable
    String weakestLink() {
        return weakest;
    }

    List<String> unrated() {
        return List.copyOf(unrated);
    }

    List<Finding> findings() {
        var findings = new ArrayList<Finding>();
        Current available = request.mains().prospectiveFaultCurrent();
        if (request.codeBasis() == CodeBasis.NFPA_79
                && lowest != null
                && weakest != null
                && !Limits.within(available.si(), lowest.si())) {
            findings.add(
                    FindingCode.FAULT_MACHINE_RATING_LOW.at(weakest, weakestPointer, NAMEPLATE, available, lowest));
        }
        if (firstUnratedPointer != null) {
            findings.add(FindingCode.FAULT_RATING_UNSTATED.at(
                    String.join(", ", unrated), firstUnratedPointer, NAMEPLATE, new Ratio(unrated.size()), null));
        }
        return findings;
    }
}
