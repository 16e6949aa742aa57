package io.axiswright.engine.controlpower;

import java.util.BitSet;

/**
 * Loads that are on at the same moment.
 *
 * @param mode what they do
 * @param pullingIn terminals whose brakes pull in
 */
record LoadCase(ControlMode mode, BitSet pullingIn) {

    static LoadCase of(ControlMode mode) {
        return new LoadCase(mode, new BitSet());
    }
}
