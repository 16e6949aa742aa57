package io.axiswright.engine.controlpower;

/**
 * A working point of a feeder tree.
 *
 * @param voltages voltage at every node, V
 * @param currents current through the link into every node, A
 * @param sourceCurrent current out of the source, A
 */
record OperatingPoint(double[] voltages, double[] currents, double sourceCurrent) {}
