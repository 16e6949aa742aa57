package io.axiswright.engine.catalogue;

/**
 * What leads on from a cable that does not reach by itself.
 *
 * @param coupler catalogue id of what joins the two
 * @param cable catalogue id of the second cable
 */
public record CableExtension(String coupler, String cable) {}
