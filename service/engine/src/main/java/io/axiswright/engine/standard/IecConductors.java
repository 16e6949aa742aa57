package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.LineResistance;
import java.util.List;
import java.util.Optional;

/** Electrical data of metric copper conductors. */
public final class IecConductors {

    private static final double OHM_PER_KM = 1e-3;
    private static final List<TableRow> ROWS = TableFile.rows("iec-60228");
    private static final SizeTable<LineResistance> CLASS_2 = column("class_2");
    private static final SizeTable<LineResistance> CLASS_5 = column("class_5");
    private static final Sourced<LineResistance> REACTANCE = TableFile.rows("iec-60364-5-52-annex-g").stream()
            .map(r -> r.sourced(new LineResistance(r.number("value"))))
            .toList()
            .getFirst();

    private static final Sourced<Double> TEMPERATURE_COEFFICIENT = TableFile.rows("copper").stream()
            .map(r -> r.sourced(r.number("value")))
            .toList()
            .getFirst();

    private IecConductors() {}

    /** The sizes of IEC 60228 from 0.5 to 120 mm², thinnest first. */
    public static List<ConductorSize> sizes() {
        return CLASS_2.sizes();
    }

    /** Highest DC resistance at 20 °C (IEC 60228 Tables 2 and 3). */
    public static Optional<Sourced<LineResistance>> resistanceAt20(ConductorSize size, ConductorClass construction) {
        return switch (construction) {
            case CLASS_2 -> CLASS_2.at(size);
            case CLASS_5 -> CLASS_5.at(size);
        };
    }

    /** Reactance of one conductor where nothing better is known (IEC 60364-5-52 Annex G). */
    public static Sourced<LineResistance> reactance() {
        return REACTANCE;
    }

    /** Temperature coefficient of copper's resistance referred to 20 °C, in 1/K. */
    public static Sourced<Double> temperatureCoefficientAt20() {
        return TEMPERATURE_COEFFICIENT;
    }

    private static SizeTable<LineResistance> column(String name) {
        return SizeTable.of(ROWS, r -> true, r -> Optional.of(new LineResistance(r.number(name) * OHM_PER_KM)));
    }
}
