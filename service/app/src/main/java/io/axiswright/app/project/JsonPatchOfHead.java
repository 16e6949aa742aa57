package io.axiswright.app.project;

import com.fasterxml.jackson.annotation.JsonTypeName;
import tools.jackson.databind.JsonNode;

/**
 * A JSON Patch (RFC 6902) of the latest revision.
 *
 * @param patch its operations; they add {@code message} and {@code author} of the next revision
 */
@JsonTypeName("JSON_PATCH")
record JsonPatchOfHead(JsonNode patch) implements HeadChange {

    @Override
    public String member() {
        return "patch";
    }
}
