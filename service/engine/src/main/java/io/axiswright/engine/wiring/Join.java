package io.axiswright.engine.wiring;

import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Two things that want a cable of fixed length between them.
 *
 * @param use what the cable joins
 * @param asker who asks, in the caller's words ("DC bus gantry")
 * @param reason what it joins to what
 * @param from what is at one end
 * @param to what is at the other
 * @param route length of the way; the shortest cable there is serves if absent
 * @param longest longest cable allowed; no limit if absent
 * @param voltage highest voltage on it; not examined if absent
 * @param current highest current it has to carry for long; not examined if absent
 * @param enclosures the enclosures it enters
 * @param pointer JSON Pointer, in the request, to what asks
 */
public record Join(
        CableUse use,
        String asker,
        String reason,
        String from,
        String to,
        @Nullable Length route,
        @Nullable Length longest,
        @Nullable Voltage voltage,
        @Nullable Current current,
        List<String> enclosures,
        String pointer) {}
