package io.axiswright.engine.topology;

/** Work that the exact searches for one answer may do together, in the exact solver's deterministic seconds. */
final class WorkBudget {

    private double left;

    WorkBudget(double most) {
        this.left = most;
    }

    /** What a search that would like so much may do. */
    double share(double wanted) {
        return Math.min(wanted, left);
    }

    void spend(double work) {
        left -= work;
    }
}
