package io.axiswright.engine.topology;

import org.jspecify.annotations.Nullable;

/**
 * One difference between the kept layout and the new one.
 *
 * @param kind what changed
 * @param subject id of the axis, or of the gateway in the new layout; of a gateway that goes, its place
 * @param from what it was: a place, a type, or the way to the host; absent for what is new
 * @param to what it is now; absent for what goes
 * @param text the same in a sentence
 */
public record LayoutChange(
        LayoutChangeKind kind,
        String subject,
        @Nullable String from,
        @Nullable String to,
        String text) {}
