package io.axiswright.engine.duty;

/**
 * What stops begun between two instants return at most, and by how much more than what lies between the stops begun at these
 * two.
 *
 * @param highest the most power any of them returns, losses that go on at rest left out, W
 * @param power by how much more power at any one time since the start of the stop, W
 * @param energy by how much more energy in any part of the stop, J
 */
public record PowerBend(double highest, double power, double energy) {

    static final PowerBend NONE = new PowerBend(0, 0, 0);
}
