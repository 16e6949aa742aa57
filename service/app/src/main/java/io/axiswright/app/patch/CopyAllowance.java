package io.axiswright.app.patch;

import tools.jackson.databind.JsonNode;

/**
 * How much the operations of one patch may copy together. What they say themselves is bounded by the size of the body; what they
 * copy is not, because each copy may double the document.
 */
final class CopyAllowance {

    /** Our choice: a large machine states some 100,000 values, objects and lists included. */
    static final int MOST = 200_000;

    private int left = MOST;

    /** Whether a value may be copied; takes what it has from the allowance. */
    boolean take(JsonNode value) {
        return take(value, Operation.DEEPEST);
    }

    private boolean take(JsonNode value, int deeper) {
        left--;
        return left >= 0 && deeper >= 0 && value.valueStream().allMatch(inside -> take(inside, deeper - 1));
    }
}
