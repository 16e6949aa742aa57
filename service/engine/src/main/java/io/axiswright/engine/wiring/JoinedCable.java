package io.axiswright.engine.wiring;

/**
 * A cable chosen for a join.
 *
 * @param item its catalogue id
 * @param from what is at one end
 * @param to what is at the other
 * @param joined whether that is a coupler, from which another cable leads on
 */
public record JoinedCable(String item, String from, String to, boolean joined) {}
