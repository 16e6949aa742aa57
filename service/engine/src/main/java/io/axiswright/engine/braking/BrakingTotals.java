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

    /** Those of one bus. */
    static BrakingTotals of(GroupStudy study) {
        CaseOutcome cycle = study.run().cycle();
        boolean moves = cycle.duration() > 0;
        return of(
                moves ? cycle.returned() / cycle.duration() : 0,
                moves ? cycle.supplied() / cycle.duration() : 0,
                moves ? cycle.burned() / cycle.duration() : 0,
                Math.max(0, study.bus().tripEnergy() - study.bus().floorEnergy()));
    }

    /** Those of several buses together. */
    static BrakingTotals sum(List<BrakingTotals> buses) {
        double returned = 0;
        double supplied = 0;
        double burned = 0;
        double absorbable = 0;
        for (BrakingTotals bus : buses) {
            returned += bus.meanReturnedPower().si();
            supplied += bus.meanSuppliedPower().si();
            burned += bus.meanResistorPower().si();
            absorbable += bus.absorbableEnergy().si();
        }
        return of(returned, supplied, burned, absorbable);
    }

    private static BrakingTotals of(double returned, double supplied, double burned, double absorbable) {
        return new BrakingTotals(new Power(returned), new Power(supplied), new Power(burned), new Energy(absorbable));
    }
}
