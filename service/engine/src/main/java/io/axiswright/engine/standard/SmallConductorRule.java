package io.axiswright.engine.standard;

import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The small-conductor rule, NFPA 70 240.4(D); motor circuits are released from it by 240.4(G). */
public final class SmallConductorRule {

    private static final Map<ConductorMaterial, SmallConductorRule> RULES = Map.of(
            ConductorMaterial.COPPER, new SmallConductorRule("nec-240-4-d"),
            ConductorMaterial.ALUMINIUM, new SmallConductorRule("nec-240-4-d-aluminium"));

    private final SizeTable<Current> device;
    private final SizeTable<Current> continuousLoad;

    private SmallConductorRule(String file) {
        List<TableRow> rows = TableFile.rows(file);
        device = SizeTable.of(rows, r -> true, r -> Optional.of(new Current(r.number("max_device"))));
        continuousLoad = SizeTable.of(
                rows,
                r -> r.optionalNumber("max_continuous_load").isPresent(),
                r -> Optional.of(new Current(r.number("max_continuous_load"))));
    }

    private static SmallConductorRule of(ConductorMaterial material) {
        return Objects.requireNonNull(RULES.get(material));
    }

    /** Highest rating of the device ahead of the conductor; nothing where the rule sets no limit. */
    public static Optional<Sourced<Current>> maxDevice(ConductorMaterial material, ConductorSize size) {
        return of(material).device.at(size);
    }

    /** Highest continuous load of the conductor; nothing where the rule sets no limit. */
    public static Optional<Sourced<Current>> maxContinuousLoad(ConductorMaterial material, ConductorSize size) {
        return of(material).continuousLoad.at(size);
    }
}
