/** Lengths, torques, currents … as typed values: SI inside, units of the trade only at the edge. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.quantity;
