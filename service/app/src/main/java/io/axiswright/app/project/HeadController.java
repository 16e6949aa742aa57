package io.axiswright.app.project;

import io.axiswright.app.idempotency.IdempotencyKey;
import io.axiswright.app.openapi.Fails;
import io.axiswright.app.patch.JsonPatch;
import io.axiswright.app.patch.MergePatch;
import io.axiswright.app.problem.Conflict;
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
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Changes the head of a branch over HTTP: what comes of the change is the next revision. */
@RestController
class HeadController {

    private final RevisionAdding adding;
    private final RevisionReader reader;

    HeadController(RevisionAdding adding, RevisionReader reader) {
        this.adding = adding;
        this.reader = reader;
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
        boolean operations = form.isCompatibleWith(MediaType.valueOf(JsonPatch.MEDIA_TYPE));
        return adding.add(key, said(operations, patch), new Addition(id, branch.value(), ifMatch, head -> {
            ObjectNode target = target(head);
            JsonNode patched = operations ? JsonPatch.apply(target, patch) : MergePatch.apply(target, patch);
            return Draft.of(RecordReader.read(patched, NewRevision.class));
        }));
    }

    /** What a patch says, by which a request is known again: the same tree is another patch in the other form. */
    private static byte[] said(boolean operations, JsonNode patch) {
        return Documents.canonical(
                JsonMapper.shared().createObjectNode().set(operations ? "operations" : "merge", patch));
    }

    /** What a revision was made from, without its author and message: those of the next one are its own. */
    private ObjectNode target(Branch head) {
        if (head.headNumber() == 0) {
            throw new Conflict("Branch " + head.name() + " has no revision yet.");
        }
        JsonNode document =
                Documents.tree(reader.find(head.projectId(), head.headNumber()).document());
        ObjectNode target = JsonMapper.shared().createObjectNode();
        for (String member : new String[] {"codeBasis", "catalogue", "design"}) {
            target.set(member, document.required(member));
        }
        return target;
    }
}
