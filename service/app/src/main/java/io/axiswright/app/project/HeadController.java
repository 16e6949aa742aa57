package io.axiswright.app.project;

import io.axiswright.app.idempotency.IdempotencyKey;
import io.axiswright.app.openapi.Fails;
import io.axiswright.app.patch.JsonPatch;
import io.axiswright.app.patch.MergePatch;
import io.axiswright.app.problem.NotFound;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.store.Documents;
import io.axiswright.app.web.Links;
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
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PatchMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.JsonNode;

/** The head of a branch over HTTP: read, and changed, by which comes the next revision. */
@RestController
class HeadController {

    private final RevisionAdding adding;
    private final Branching branching;
    private final RevisionReader reader;

    HeadController(RevisionAdding adding, Branching branching, RevisionReader reader) {
        this.adding = adding;
        this.branching = branching;
        this.reader = reader;
    }

    /** The branch's latest revision; its ETag is the branch's. */
    @GetMapping(path = "/v1/projects/{id}/branches/{branch}/latest", produces = MediaType.APPLICATION_JSON_VALUE)
    @ApiResponse(responseCode = "200", content = @Content(schema = @Schema(implementation = RevisionDocument.class)))
    ResponseEntity<byte[]> getHead(@PathVariable UUID id, @PathVariable ShortName branch) {
        Branch head = branching.find(id, branch.value());
        if (head.headNumber() == 0) {
            throw new NotFound("revision", "of branch " + head.name() + " yet");
        }
        Revision latest = reader.find(id, head.headNumber());
        return ResponseEntity.ok()
                .eTag(head.tag().quoted())
                .header(
                        HttpHeaders.CONTENT_LOCATION,
                        Links.to("/v1/projects/{id}/revisions/{number}", id, latest.number())
                                .toString())
                .contentType(MediaType.APPLICATION_JSON)
                .body(latest.document());
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
