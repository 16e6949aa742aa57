package io.axiswright.engine.conductor;

import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.standard.LineImpedance;
import io.axiswright.engine.standard.NecAmpacity;
import io.axiswright.engine.standard.NecConductors;
import io.axiswright.engine.standard.Raceway;
import io.axiswright.engine.standard.SmallConductorRule;
import io.axiswright.engine.standard.Sourced;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Everything the North American tables say of one size, joined once: a request may try a hundred thousand sizes.
 *
 * @param size the size
 * @param area cross-section in m²
 * @param circularMils nominal area
 * @param ampacity by temperature column
 * @param direct impedance for direct current
 * @param alternating impedance for alternating current, by raceway
 * @param maxDevice highest device by the small-conductor rule, if it sets one
 * @param maxContinuousLoad highest continuous load by it, if it sets one
 */
record NecSize(
        ConductorSize size,
        double area,
        long circularMils,
        Map<Insulation, Sourced<Current>> ampacity,
        Impedance direct,
        Map<Raceway, Impedance> alternating,
        @Nullable Sourced<Current> maxDevice,
        @Nullable Sourced<Current> maxContinuousLoad) {

    private static final List<NecSize> COPPER = all(ConductorMaterial.COPPER);
    private static final List<NecSize> ALUMINIUM = all(ConductorMaterial.ALUMINIUM);

    /** The sizes with data in every table needed, thinnest first: copper from 18 AWG, aluminium from 12 AWG, to 500 kcmil. */
    static List<NecSize> of(ConductorMaterial material) {
        return switch (material) {
            case COPPER -> COPPER;
            case ALUMINIUM -> ALUMINIUM;
        };
    }

    private static List<NecSize> all(ConductorMaterial material) {
        return NecAmpacity.sizes(material).stream()
                .filter(s -> NecConductors.circularMils(s).isPresent())
                .map(s -> of(material, s))
                .toList();
    }

    private static NecSize of(ConductorMaterial material, ConductorSize size) {
        var ampacity = new EnumMap<Insulation, Sourced<Current>>(Insulation.class);
        for (Insulation column : List.of(Insulation.NEC_60, Insulation.NEC_75, Insulation.NEC_90)) {
            NecAmpacity.of(material, size, column).ifPresent(a -> ampacity.put(column, a));
        }
        var resistance = NecConductors.directCurrentResistance(material, size).orElseThrow();
        var direct = new Impedance(resistance.value().si(), 0, resistance.source());
        var alternating = new EnumMap<Raceway, Impedance>(Raceway.class);
        for (Raceway raceway : Raceway.values()) {
            // Table 9 starts at 14 AWG; in thinner wires resistance is all that counts, and it is that of Table 8.
            alternating.put(
                    raceway,
                    NecConductors.impedance(material, size, raceway)
                            .map(NecSize::impedance)
                            .orElse(direct));
        }
        return new NecSize(
                size,
                size.area().si(),
                NecConductors.circularMils(size).orElseThrow().value(),
                ampacity,
                direct,
                alternating,
                SmallConductorRule.maxDevice(material, size).orElse(null),
                SmallConductorRule.maxContinuousLoad(material, size).orElse(null));
    }

    private static Impedance impedance(Sourced<LineImpedance> row) {
        LineImpedance line = row.value();
        return new Impedance(line.resistance().si(), line.reactance().si(), row.source());
    }
}
