package io.axiswright.engine.duty;

/**
 * By how much stops begun between two instants return more than what lies between the stops begun at these two, at most.
 *
 * @param power at any one time since the start of the stop, W
 * @param energy in any part of the stop, J
 */
public record PowerBend(double power, double energy) {

    static final PowerBend NONE = new PowerBend(0, 0);
}
