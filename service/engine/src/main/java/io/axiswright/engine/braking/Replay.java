package io.axiswright.engine.braking;

/**
 * What it takes to follow a case once more.
 *
 * @param power power returned
 * @param start state of the bus at its start
 * @param chopper the chopper at work
 */
record Replay(BusPower power, BusState start, Chopper chopper) {}
