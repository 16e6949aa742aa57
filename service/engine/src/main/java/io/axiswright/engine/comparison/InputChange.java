package io.axiswright.engine.comparison;

import org.jspecify.annotations.Nullable;

/**
 * Something the caller changed.
 *
 * @param id "change-1", "change-2" … in the order of the document
 * @param pointer where, as a JSON Pointer in which list elements are named by their id
 * @param kind whether it was added, removed or changed
 * @param before how it was; absent if added
 * @param after how it is; absent if removed
 */
public record InputChange(
        String id,
        String pointer,
        ChangeKind kind,
        @Nullable Object before,
        @Nullable Object after) {}
