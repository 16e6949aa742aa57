package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Frequency;

/**
 * A link connector of the controlling computer.
 *
 * @param id its name, unique on the host
 * @param commandRate commands per second it carries
 */
public record HostPort(
        String id, @Bounds(above = 0, max = 10000000) Frequency commandRate) {}
