package io.axiswright.engine.mounting;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Torque;
import java.util.SequencedMap;

/**
 * The torque a fastening carries, and how it gives way.
 *
 * @param torque the torque
 * @param mode what gives way first
 * @param formula the formula of that mode
 * @param inputs its inputs
 * @param clause where it stands
 */
record Capacity(
        Torque torque, FasteningMode mode, String formula, SequencedMap<String, Quantity> inputs, String clause) {

    Derivation derivation(String axis) {
        return new Derivation(axis, "T_capacity", formula, inputs, clause, torque);
    }
}
