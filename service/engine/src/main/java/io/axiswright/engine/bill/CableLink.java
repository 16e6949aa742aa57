package io.axiswright.engine.bill;

/**
 * A cable of fixed length with what is at its two ends.
 *
 * @param item catalogue id of the cable
 * @param from owner of the ports, or the terminal, at one end
 * @param to owner of the ports, or the terminal, at the other
 */
public record CableLink(String item, String from, String to) {}
