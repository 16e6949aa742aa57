package io.axiswright.engine.conductor.checker;

import io.axiswright.engine.conductor.Circuit;
import io.axiswright.engine.conductor.Limit;
import java.util.ArrayList;
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

    /** Whether the correction tables reach the circuit's conditions, with so many conductors in parallel. */
    boolean covered(Circuit circuit, int parallel);

    /** The device given, else the one the code asks for, in A; not a number beyond the standard ratings. */
    double device(Circuit circuit);

    /** The least and the most the load allows its device to be rated, in A; infinite where it sets no most. */
    double[] deviceRange(Circuit circuit);

    /** Corrected ampacity in A. */
    double ampacity(Circuit circuit, Line line);

    /** Voltage drop in V. */
    double drop(Circuit circuit, Line line);

    /** Every limit the line breaks. */
    Set<Limit> broken(Circuit circuit, Line line, double device);

    /** The protective conductor beside {@code chosen} where the current alone needs {@code needed}. */
    String protective(Circuit circuit, Line chosen, Line needed, double device);

    /** Everything a line may be made of, in the order in which it is preferred. */
    default List<Line> lines(Circuit circuit) {
        var lines = new ArrayList<Line>();
        int most = circuit.parallelLimit() == null ? 1 : circuit.parallelLimit();
        for (int n = 1; n <= most && covered(circuit, n); n++) {
            for (String size : sizes(circuit)) {
                lines.add(new Line(n, size));
            }
        }
        return lines;
    }
}
