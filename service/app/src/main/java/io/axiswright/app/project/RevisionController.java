package io.axiswright.app.project;

import io.axiswright.app.idempotency.IdempotencyKey;
import io.axiswright.app.openapi.Fails;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.store.Documents;
import io.axiswright.app.web.Cursor;
import io.axiswright.app.web.EntityTag;
import io.axiswright.app.web.Limit;
import io.axiswright.app.web.Page;
import io.axiswright.app.web.ShortName;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** A project's revisions over HTTP. */
@RestController
@RequestMapping("/v1/projects/{id}/revisions")
class RevisionController {

    private final RevisionAdding adding;
    private final RevisionReader reader;
    private final Projects projects;
    private final Revisions revisions;
    private final Labelling labelling;

    RevisionController(
            RevisionAdding adding, RevisionReader reader, Projects projects, Revisions revisions, Labelling labelling) {
        this.adding = adding;
        this.reader = reader;
        this.projects = projects;
        this.revisions = revisions;
        this.labelling = labelling;
    }

    /** Studies the design and adds it as the next revision, if If-Match names the branch's present ETag. */
    @PostMapping(produces = MediaType.APPLICATION_JSON_VALUE)
    @ApiResponse(responseCode = "200", content = @Content(schema = @Schema(implementation = RevisionSummary.class)))
    @Fails({ProblemKind.CONFLICT, ProblemKind.PRECONDITION_FAILED, ProblemKind.PRECONDITION_REQUIRED})
    ResponseEntity<byte[]> addRevision(
            @PathVariable UUID id,
            @RequestParam(defaultValue = Branch.MAIN) ShortName branch,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestHeader(name = IdempotencyKey.HEADER, required = false) @Nullable IdempotencyKey key,
            @RequestBody NewRevision request) {
        return adding.add(
                        key,
                        Documents.write(request),
                        new NamedHead(id, branch.value(), ifMatch),
                        new WholeRevision(request),
                        "")
                .entity();
    }

    /** The revisions, newest first. */
    @GetMapping
    ResponseEntity<Page<RevisionSummary>> listRevisions(
            @PathVariable UUID id,
            @RequestParam(required = false) @Nullable ShortName branch,
            @RequestParam(required = false) @Nullable ShortName label,
            @RequestParam(required = false) @Nullable Cursor cursor,
            @RequestParam(defaultValue = Limit.DEFAULT) Limit limit) {
        projects.require(id);
        var rows = revisions.before(
                id,
                cursor == null ? Integer.MAX_VALUE : cursor.number(),
                branch == null ? null : branch.value(),
                label == null ? null : label.value(),
                limit.plusOne());
        var labels = labelling.of(id, rows.stream().map(RevisionEntry::number).toList());
        return Page.of(rows, limit, entry -> Cursor.at(entry.number()), entry -> summary(entry, labels))
                .answer();
    }

    private static RevisionSummary summary(RevisionEntry entry, Map<Integer, List<Label>> labels) {
        return RevisionSummary.of(entry, labels.getOrDefault(entry.number(), List.of()));
    }

    /** A revision with its design and result, byte for byte as stored. */
    @GetMapping(path = "/{number}", produces = MediaType.APPLICATION_JSON_VALUE)
    @ApiResponse(responseCode = "200", content = @Content(schema = @Schema(implementation = RevisionDocument.class)))
    ResponseEntity<byte[]> getRevision(@PathVariable UUID id, @PathVariable int number) {
        Revision found = reader.find(id, number);
        return ResponseEntity.ok()
                .eTag(new EntityTag(found.digest()).quoted())
                .cacheControl(
                        CacheControl.maxAge(Duration.ofDays(365)).cachePrivate().immutable())
                .contentType(MediaType.APPLICATION_JSON)
                .body(found.document());
    }
}
