package io.axiswright.engine.conductor;

import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.standard.Source;
import io.axiswright.engine.standard.Sourced;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How one code judges the conductor sizes of one circuit; sizes are numbered from the thinnest. */
sealed interface Judge extends Outlook permits NecJudge, IecJudge {

    /** How many sizes the tables have. */
    int count();

    /** The size of that number. */
    ConductorSize size(int k);

    /** Its cross-section in m². */
    double area(int k);

    /** The first limit the size fails; null if it meets all. */
    @Nullable
    Breach breach(int k);

    /** Ampacity of the size after corrections. */
    Ampacity ampacity(int k);

    /** Resistance and reactance of the size, hot. */
    Impedance impedance(int k);

    /** The protective device. */
    Device device();

    /** What several loads on the circuit ask for, where the code has a rule for that. */
    @Nullable
    NecLoad severalLoads();

    /** Conductors in parallel on each line; size and area are those of one, ampacity and impedance those of all. */
    int parallel();

    /**
     * The protective conductor beside the chosen size; nothing beyond the table.
     *
     * @param chosen the chosen size
     * @param needed the thinnest line that its current alone needs
     */
    Optional<Sourced<ConductorSize>> protectiveConductor(int chosen, Needed needed);

    /** Sources of the rules and tables behind the limits, beside ampacity, impedance and device. */
    List<Source> rules(int k);
}
