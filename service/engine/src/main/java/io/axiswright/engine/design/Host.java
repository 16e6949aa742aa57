package io.axiswright.engine.design;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Count;
import java.util.List;

/**
 * The controlling computer.
 *
 * @param position where it stands
 * @param ports its link connectors
 */
public record Host(
        Position position,
        @AnyOrder @Count(min = 1, max = 64) List<HostPort> ports) {}
