package io.axiswright.app.project;

import com.fasterxml.jackson.annotation.JsonTypeInfo;

/** What makes the next revision of a branch from its latest one. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
public sealed interface HeadChange permits WholeRevision, MergePatchOfHead, JsonPatchOfHead, RestoredRevision {

    /** The member it has beside its kind. */
    String member();
}
