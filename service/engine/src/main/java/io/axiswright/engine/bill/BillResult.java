package io.axiswright.engine.bill;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.wiring.CableEntry;
import io.axiswright.engine.wiring.FieldEnd;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The bill of materials.
 *
 * @param currency ISO 4217 code of all its prices
 * @param required what must be bought, the conditional lines that hold among it
 * @param optional what may be bought beside it; not part of the required total. What an optional item needs is
 *     optional with it, at its price, so that the total is never too low
 * @param customerSupplied what the customer brings; priced at nothing
 * @param noCharge what comes along without charge; priced at nothing
 * @param spares spare parts by the design's rules; not part of the required total, and orders of their own
 * @param withoutPrice ids of the items whose price has to be asked for
 * @param leadTime when all that is required can be there; absent if no lead time is known
 * @param cableEntries every cable where it enters an enclosure, with its gland
 * @param fieldEnds the cable ends to be made on the machine
 * @param cutLists how the lines of cable sold by whole reels are cut from them, in the order of the lines
 * @param closing the proof that every demand is met by a line and every line by a demand
 * @param connections the proof that every port is used or spare and every cable has both its ends
 * @param findings remarks; before its own those of other parts of the study that whoever buys by the bill must know: what forbids
 *     building the system, and what has to be bought beside the bill
 * @param derivations how the rounded quantities came about
 */
public record BillResult(
        String currency,
        BillSection required,
        BillSection optional,
        BillSection customerSupplied,
        BillSection noCharge,
        BillSection spares,
        List<String> withoutPrice,
        @Nullable LeadTime leadTime,
        List<CableEntry> cableEntries,
        List<FieldEnd> fieldEnds,
        List<CutList> cutLists,
        ClosingCheck closing,
        ConnectionCheck connections,
        List<Finding> findings,
        List<Derivation> derivations) {

    /** The same bill, with these remarks before its own. */
    public BillResult after(List<Finding> remarks) {
        return remarks.isEmpty()
                ? this
                : new BillResult(
                        currency,
                        required,
                        optional,
                        customerSupplied,
                        noCharge,
                        spares,
                        withoutPrice,
                        leadTime,
                        cableEntries,
                        fieldEnds,
                        cutLists,
                        closing,
                        connections,
                        Stream.concat(remarks.stream(), findings.stream()).toList(),
                        derivations);
    }
}
