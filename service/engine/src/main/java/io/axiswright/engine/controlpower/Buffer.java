package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.BufferUnit;

/**
 * Some buffer units of a kind on one output.
 *
 * @param unit the unit
 * @param count how many
 */
record Buffer(BufferUnit unit, int count) {

    /** Energy it gives at the end of its life, J. */
    double energy() {
        return unit.storedEnergy().si() * unit.usableShare() * count;
    }

    double ratedCurrent() {
        return unit.ratedCurrent().si() * count;
    }

    Price price() {
        return Price.of(unit).times(count);
    }

    ChosenBuffer chosen() {
        return new ChosenBuffer(unit.id(), count);
    }
}
