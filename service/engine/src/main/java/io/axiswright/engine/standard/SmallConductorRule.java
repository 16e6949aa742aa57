package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import java.util.List;
import java.util.Optional;

/** The small-conductor rule, NFPA 70 240.4(D); motor circuits are released from it by 240.4(G). */
public final class SmallConductorRule {

    private static final List<TableRow> ROWS = TableFile.rows("nec-240-4-d");
    private static final SizeTable<Current> DEVICE =
            SizeTable.of(ROWS, r -> true, r -> Optional.of(new Current(r.number("max_device"))));
    private static final SizeTable<Current> CONTINUOUS_LOAD = SizeTable.of(
            ROWS,
            r -> r.optionalNumber("max_continuous_load").isPresent(),
            r -> Optional.of(new Current(r.number("max_continuous_load"))));

    private SmallConductorRule() {}

    /** Highest rating of the device ahead of the conductor; nothing where the rule sets no limit. */
    public static Optional<Sourced<Current>> maxDevice(ConductorSize size) {
        return DEVICE.at(size);
    }

    /** Highest continuous load of the conductor; nothing where the rule sets no limit. */
    public static Optional<Sourced<Current>> maxContinuousLoad(ConductorSize size) {
        return CONTINUOUS_LOAD.at(size);
    }
}
