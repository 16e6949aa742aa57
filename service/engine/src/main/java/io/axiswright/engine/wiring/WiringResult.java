package io.axiswright.engine.wiring;

import io.axiswright.engine.finding.Finding;
import java.util.List;

/**
 * The wiring as chosen.
 *
 * @param parts what has to be bought for it, one piece each
 * @param joined the cables that were chosen for joins
 * @param entries every cable where it enters an enclosure
 * @param fieldEnds the connectors to be made on the machine
 * @param findings what the catalogue lacks, and remarks
 */
public record WiringResult(
        List<WiringPart> parts,
        List<JoinedCable> joined,
        List<CableEntry> entries,
        List<FieldEnd> fieldEnds,
        List<Finding> findings) {

    /** Keeps the lists from being changed. */
    public WiringResult {
        parts = List.copyOf(parts);
        joined = List.copyOf(joined);
        entries = List.copyOf(entries);
        fieldEnds = List.copyOf(fieldEnds);
        findings = List.copyOf(findings);
    }
}
