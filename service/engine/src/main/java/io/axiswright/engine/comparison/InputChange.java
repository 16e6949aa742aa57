package io.axiswright.engine.comparison;

import org.jspecify.annotations.Nullable;

/**
 * Something the caller changed.
 *
 * @param id "change-1", "change-2" … in the order of the document
 * @param path where in codeBasis, catalogue and design; written like a JSON Pointer but none, for list elements are named by
 *     their id, because their positions move between revisions
 * @param kind whether it was added, removed or changed
 * @param before how it was; absent if added
 * @param after how it is; absent if removed
 */
public record InputChange(
        String id,
        String path,
        ChangeKind kind,
        @Nullable Object before,
        @Nullable Object after) {}
