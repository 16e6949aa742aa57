package io.axiswright.engine.standard;

import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.LineResistance;
import java.util.List;
import java.util.Optional;

/** Electrical data of metric conductors. */
public final class IecConductors {

    private static final double OHM_PER_KM = 1e-3;
    private static final List<TableRow> ROWS = TableFile.rows("iec-60228");
    private static final SizeTable<LineResistance> CLASS_2 = column(ROWS, "class_2");
    private static final SizeTable<LineResistance> CLASS_5 = column(ROWS, "class_5");
    private static final SizeTable<LineResistance> ALUMINIUM = column(TableFile.rows("iec-60228-aluminium"), "class_2");
    private static final Sourced<LineResistance> REACTANCE = TableFile.rows("iec-60364-5-52-annex-g").stream()
            .map(r -> r.sourced(new LineResistance(r.number("value"))))
            .toList()
            .getFirst();

    private static final Sourced<Double> OF_COPPER = coefficient("copper");
    private static final Sourced<Double> OF_ALUMINIUM = coefficient("aluminium");

    private IecConductors() {}

    /** The sizes of IEC 60228, thinnest first: copper from 0.5 to 300 mm², aluminium from 10 to 120 mm². */
    public static List<ConductorSize> sizes(ConductorMaterial material) {
        return switch (material) {
            case COPPER -> CLASS_2.sizes();
            case ALUMINIUM -> ALUMINIUM.sizes();
        };
    }

    /** Highest DC resistance at 20 °C (IEC 60228 Tables 2 and 3); of aluminium there is no flexible class. */
    public static Optional<Sourced<LineResistance>> resistanceAt20(
            ConductorMaterial material, ConductorSize size, ConductorClass construction) {
        return switch (material) {
            case COPPER -> (construction == ConductorClass.CLASS_2 ? CLASS_2 : CLASS_5).at(size);
            case ALUMINIUM -> ALUMINIUM.at(size);
        };
    }

    /** Reactance of one conductor where nothing better is known (IEC 60364-5-52 Annex G). */
    public static Sourced<LineResistance> reactance() {
        return REACTANCE;
    }

    /** Temperature coefficient of the resistance referred to 20 °C, in 1/K. */
    public static Sourced<Double> temperatureCoefficientAt20(ConductorMaterial material) {
        return switch (material) {
            case COPPER -> OF_COPPER;
            case ALUMINIUM -> OF_ALUMINIUM;
        };
    }

    private static Sourced<Double> coefficient(String file) {
        return TableFile.rows(file).stream()
                .map(r -> r.sourced(r.number("value")))
                .toList()
                .getFirst();
    }

    private static SizeTable<LineResistance> column(List<TableRow> rows, String name) {
        return SizeTable.of(rows, r -> true, r -> Optional.of(new LineResistance(r.number(name) * OHM_PER_KM)));
    }
}
