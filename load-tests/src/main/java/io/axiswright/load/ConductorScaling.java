package io.axiswright.load;

import io.axiswright.engine.conductor.ConductorRequest;
import io.axiswright.engine.conductor.ConductorSizing;
import io.axiswright.engine.design.CodeBasis;

/** Whether a thousand circuits in one request cost no more each than a few of them do, side by side in one run. */
final class ConductorScaling {

    private static final int FEW = 125;
    private static final int MANY = 1000;
    private static final int ROUNDS = 600;

    /** Above proportion: what lists and caches may cost. */
    private static final double SLACK = 1.25;

    private ConductorScaling() {}

    static boolean holds() {
        boolean holds = true;
        for (CodeBasis basis : CodeBasis.values()) {
            holds &= holds(basis);
        }
        return holds;
    }

    @SuppressWarnings("SystemOut") // a report for the terminal
    private static boolean holds(CodeBasis basis) {
        ConductorRequest few = Circuits.request(basis, FEW);
        ConductorRequest many = Circuits.request(basis, MANY);
        double timeOfFew = Double.POSITIVE_INFINITY;
        double timeOfMany = Double.POSITIVE_INFINITY;
        for (int round = 0; round < ROUNDS; round++) {
            timeOfFew = Math.min(timeOfFew, milliseconds(few));
            timeOfMany = Math.min(timeOfMany, milliseconds(many));
        }
        double grown = timeOfMany / timeOfFew;
        double allowed = SLACK * MANY / FEW;
        System.out.printf(
                "conductors, %s: %d circuits %.2f ms, %d circuits %.2f ms: %.1f times, at most %.1f%n",
                basis, FEW, timeOfFew, MANY, timeOfMany, grown, allowed);
        return grown <= allowed;
    }

    private static double milliseconds(ConductorRequest request) {
        long start = System.nanoTime();
        int sized = new ConductorSizing().size(request).circuits().size();
        double time = (System.nanoTime() - start) / 1e6;
        if (sized != request.circuits().size()) {
            throw new IllegalStateException("not every circuit is answered");
        }
        return time;
    }
}
