package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Speed;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * What demands the stop of a zone when somebody comes near, and so has to be far enough away.
 *
 * <p>By the edition of 2010 all is known of every kind, and neither reachingDistance nor supplement exists. By that of 2024 the
 * reaching distance is known of a parallel field, of a two-hand control and of an interlocked guard, whose opening has it; the
 * approach speed of a parallel field, of a light curtain and of an interlocked guard; the others have to be stated, from the
 * standard itself.
 *
 * @param id the caller's own name for it, unique in its zone
 * @param standard the edition by which its distance is worked out
 * @param detection how it notices somebody
 * @param responseTime from when it could notice to its demand of a stop
 * @param approachSpeed how fast somebody approaches; that of the standard if absent
 * @param reachingDistance how far one reaches before being noticed, D_DS of the edition of 2024; that of the standard if absent
 * @param supplement supplemental distance factor Z of the edition of 2024; none if absent
 * @param distance where it stands or shall stand, from the hazard; not checked if absent
 */
public record Safeguard(
        String id,
        SafeguardStandard standard,
        Detection detection,
        @Bounds(min = 0, max = 10) Time responseTime,
        @Bounds(above = 0, max = 10) @Nullable Speed approachSpeed,
        @Bounds(min = 0, max = 10) @Nullable Length reachingDistance,
        @Bounds(min = 0, max = 10) @Nullable Length supplement,
        @Bounds(min = 0, max = 100) @Nullable Length distance) {}
