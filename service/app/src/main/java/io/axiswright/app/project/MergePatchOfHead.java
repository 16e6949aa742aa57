package io.axiswright.app.project;

import com.fasterxml.jackson.annotation.JsonTypeName;
import tools.jackson.databind.JsonNode;

/**
 * A JSON Merge Patch (RFC 7396) of the latest revision.
 *
 * @param patch the members that are to be replaced, with {@code message} and {@code author} of the next revision
 */
@JsonTypeName("MERGE_PATCH")
record MergePatchOfHead(JsonNode patch) implements HeadChange {

    @Override
    public String member() {
        return "patch";
    }
}
