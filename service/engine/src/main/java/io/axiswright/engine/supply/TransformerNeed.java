package io.axiswright.engine.supply;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A transformer that feeds loads by decision of the design, or because the mains do not have their voltage. It stands at the mains
 * panel. The loads are rectifiers for the most part: it must be made for harmonic currents.
 *
 * @param id "T1" …: circuits name it
 * @param feed phases of its secondary
 * @param system wires of its secondary
 * @param earthing how its secondary is earthed
 * @param secondary its secondary voltage
 * @param power what its loads ask of it: North America by their rated currents, IEC by what heats over the cycles but never
 *     below the largest
 * @param secondaryCurrent current of its loads, by their ratings
 * @param primaryCurrent current they draw from the mains through it, losses left out
 * @param designCurrent what its secondary device and conductors must carry, by the code's rule for several loads
 * @param rating the standard rating that serves, with its devices; absent if none of the series does
 * @param faultCurrent no fault at its secondary terminals draws more: what the mains pass on without its own impedance, or what
 *     its impedance passes on of mains without any, whichever is less. Devices behind it are chosen by it
 * @param regulation how far its secondary voltage falls at the design load, as a fraction of rated voltage; absent where not all
 *     is stated of its short-circuit voltage
 * @param loss what it loses on the mean over the cycles of its loads: at no load and by the current that heats; absent where not
 *     all is stated of its losses
 * @param primaryCircuit id of the circuit that feeds it; absent if no standard rating serves
 * @param feeder conductors and device between its secondary terminals and the circuits behind it; absent if no standard rating
 *     serves
 * @param loads ids of the loads it feeds
 */
public record TransformerNeed(
        String id,
        Feed feed,
        SupplySystem system,
        SystemEarthing earthing,
        Voltage secondary,
        ApparentPower power,
        Current secondaryCurrent,
        Current primaryCurrent,
        Current designCurrent,
        @Nullable TransformerRating rating,
        Current faultCurrent,
        @Nullable Double regulation,
        @Nullable Power loss,
        @Nullable String primaryCircuit,
        @Nullable Feeder feeder,
        List<String> loads) {

    /** The same with the feeder behind it. */
    TransformerNeed feeding(Feeder behind) {
        return with(primaryCircuit, behind);
    }

    /** The same with the circuit that feeds it, one of these. */
    TransformerNeed fedBy(List<BranchCircuit> ofMains) {
        return with(
                ofMains.stream()
                        .filter(circuit -> circuit.use() == LoadUse.TRANSFORMER
                                && circuit.loads().contains(id))
                        .map(BranchCircuit::id)
                        .findFirst()
                        .orElse(null),
                feeder);
    }

    private TransformerNeed with(@Nullable String primary, @Nullable Feeder behind) {
        return new TransformerNeed(
                id,
                feed,
                system,
                earthing,
                secondary,
                power,
                secondaryCurrent,
                primaryCurrent,
                designCurrent,
                rating,
                faultCurrent,
                regulation,
                loss,
                primary,
                behind,
                loads);
    }
}
