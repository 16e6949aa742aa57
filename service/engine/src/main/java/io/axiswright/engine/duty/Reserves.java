package io.axiswright.engine.duty;

/**
 * The most an axis can do with the drive unit it has: its ventilation kit and holding brake stay as they are, and every limit
 * of {@link DutyLimit} holds. Each answer is searched from the asked state outward in steps until the first change between
 * holding and breaking, which is then halved in to a millionth of itself or closer: it is the edge of the range of states
 * that hold next to the asked one, whether or not the limits are monotone beyond. What the motor gives in a stop and the
 * inertia ratio are not among them, nor what is not stated of the mechanism, which findings name.
 *
 * @param cycleRate the fastest cycle: all times of the cycle, standstills too, are scaled by one factor
 * @param moveTime the fastest moves: the times of all that moves are scaled by one factor, standstills keep theirs
 * @param payload the largest payload
 */
public record Reserves(TimeReserve cycleRate, TimeReserve moveTime, PayloadReserve payload) {}
