package io.axiswright.engine.bill;

import org.jspecify.annotations.Nullable;

/**
 * A cable of fixed length, or a direct coupling, with what is at its two ends.
 *
 * @param item catalogue id of the cable; absent where the two are coupled without one
 * @param from owner of the ports, or the terminal, at one end
 * @param to owner of the ports, or the terminal, at the other
 */
public record CableLink(@Nullable String item, String from, String to) {}
