package io.axiswright.engine.fault;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A transformer at the mains panel, its primary between the lines of the mains; if it has three phases, in delta.
 *
 * @param id what it is called
 * @param feed phases of its secondary
 * @param secondary its secondary voltage
 * @param power its rating
 * @param impedance its impedance (short-circuit voltage) as a fraction of its rated voltage
 * @param earthing how its secondary is earthed: TN or IT
 * @param feeder the conductors from its secondary terminals to the panel behind it; nothing further is studied if absent
 * @param branches the branch circuits from that panel
 */
public record FaultTransformer(
        String id,
        Feed feed,
        Voltage secondary,
        ApparentPower power,
        double impedance,
        SystemEarthing earthing,
        @Nullable FaultCircuit feeder,
        List<FaultCircuit> branches) {

    /** Keeps the list from being changed afterwards. */
    public FaultTransformer {
        branches = List.copyOf(branches);
    }

    /** A transformer with an unearthed secondary, of which no more than the terminals matters. */
    public FaultTransformer(String id, Feed feed, Voltage secondary, ApparentPower power, double impedance) {
        this(id, feed, secondary, power, impedance, SystemEarthing.IT, null, List.of());
    }
}
