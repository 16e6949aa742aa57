package io.axiswright.engine.standard;

/**
 * Where a value comes from.
 *
 * @param clause standard, edition and clause or table
 * @param confidence how well the value is known
 */
public record Source(String clause, Confidence confidence) {

    /** The clause, marked where its value was not confirmed from an open copy. */
    public String told() {
        return confidence == Confidence.FROM_MEMORY ? clause + " (from memory)" : clause;
    }
}
