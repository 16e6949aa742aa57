package io.axiswright.engine.conductor.checker;

import io.axiswright.engine.conductor.Circuit;
import io.axiswright.engine.conductor.Limit;
import java.util.List;
import java.util.Set;

/**
 * A second reading of one code, from the raw tables. It uses the records that state circuits and answers, and no class that
 * selects.
 */
public interface Checker {

    /** Where a table has no answer. */
    String NONE = "none";

    /** All sizes the tables have for the circuit, thinnest first. */
    List<String> sizes(Circuit circuit);

    /** Whether the correction tables reach the circuit's conditions. */
    boolean covered(Circuit circuit);

    /** The device given, else the one the code asks for, in A; not a number beyond the standard ratings. */
    double device(Circuit circuit);

    /** The least and the most the load allows its device to be rated, in A; infinite where it sets no most. */
    double[] deviceRange(Circuit circuit);

    /** Corrected ampacity in A. */
    double ampacity(Circuit circuit, String size);

    /** Voltage drop in V. */
    double drop(Circuit circuit, String size);

    /** Every limit the size breaks. */
    Set<Limit> broken(Circuit circuit, String size, double device);

    /** The protective conductor beside {@code chosen} where the current alone needs {@code needed}. */
    String protective(Circuit circuit, String chosen, String needed, double device);
}
