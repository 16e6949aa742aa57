package io.axiswright.engine.bill;

/**
 * Like ports of one thing.
 *
 * @param owner what has them ("gateway G1, drive ports")
 * @param ports how many it has
 * @param spare how many of them are said to be left free
 */
public record PortBank(String owner, int ports, int spare) {}
