package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Power;
import java.util.List;

/**
 * All DC buses of the machine together, each in its own repeating cycle; means are over each bus's own cycle, so they add up
 * whatever the periods.
 *
 * @param meanReturnedPower energy the axes return to their buses, over time, what other axes of the same bus take at that
 *     moment deducted
 * @param meanSuppliedPower energy the rectifiers supply, over time: what the cycles cost beyond control power
 * @param meanResistorPower energy into braking resistors, over time: lost, and heat where the resistors stand. Of a bus whose
 *     axes have unrelated periods, the most it can be
 * @param absorbableEnergy energy all buses together take from high line to their trip voltages
 */
public record BrakingTotals(
        Power meanReturnedPower, Power meanSuppliedPower, Power meanResistorPower, Energy absorbableEnergy) {

    static BrakingTotals of(List<GroupStudy> studies) {
        double returned = 0;
        double supplied = 0;
        double burned = 0;
        double absorbable = 0;
        for (GroupStudy study : studies) {
            CaseOutcome cycle = study.run().cycle();
            if (cycle.duration() > 0) {
                returned += cycle.returned() / cycle.duration();
                supplied += cycle.supplied() / cycle.duration();
                burned += cycle.burned() / cycle.duration();
            }
            absorbable += Math.max(0, study.bus().tripEnergy() - study.bus().floorEnergy());
        }
        return new BrakingTotals(new Power(returned), new Power(supplied), new Power(burned), new Energy(absorbable));
    }
}
