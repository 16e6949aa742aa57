package io.axiswright.app.project;

import io.axiswright.app.idempotency.IdempotencyKey;
import io.axiswright.app.openapi.Fails;
import io.axiswright.app.patch.JsonPatch;
import io.axiswright.app.patch.MergePatch;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.store.Documents;
import io.axiswright.app.web.ShortName;
import io.axiswright.app.wire.RecordReader;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PatchMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.JsonNode;

/** Changes the head of a branch over HTTP: what comes of the change is the next revision. */
@RestController
class HeadController {

    private final RevisionAdding adding;

    HeadController(RevisionAdding adding) {
        this.adding = adding;
    }

    /** Adds what the patch makes of the branch's latest revision as its next one. */
    @PatchMapping(
            path = "/v1/projects/{id}/branches/{branch}/latest",
            consumes = {MergePatch.MEDIA_TYPE, JsonPatch.MEDIA_TYPE},
            produces = MediaType.APPLICATION_JSON_VALUE)
    @ApiResponse(responseCode = "200", content = @Content(schema = @Schema(implementation = RevisionSummary.class)))
    @Fails({ProblemKind.CONFLICT, ProblemKind.PRECONDITION_FAILED, ProblemKind.PRECONDITION_REQUIRED})
    ResponseEntity<byte[]> patchHead(
            @PathVariable UUID id,
            @PathVariable ShortName branch,
            @Parameter(hidden = true) @RequestHeader(HttpHeaders.CONTENT_TYPE) MediaType form,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestHeader(name = IdempotencyKey.HEADER, required = false) @Nullable IdempotencyKey key,
            @RequestBody byte[] body) {
        JsonNode patch = RecordReader.read(body, JsonNode.class);
        HeadChange change = form.isCompatibleWith(MediaType.valueOf(JsonPatch.MEDIA_TYPE))
                ? new JsonPatchOfHead(patch)
                : new MergePatchOfHead(patch);
        return adding.add(key, Documents.canonical(change), new NamedHead(id, branch.value(), ifMatch), change, "")
                .entity();
    }
}
