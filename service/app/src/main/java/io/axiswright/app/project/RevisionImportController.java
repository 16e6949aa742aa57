package io.axiswright.app.project;

import io.axiswright.app.idempotency.IdempotencyKey;
import io.axiswright.app.openapi.Fails;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.store.Documents;
import io.axiswright.app.web.ShortName;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Takes in histories that were kept elsewhere, over HTTP. */
@RestController
class RevisionImportController {

    private final RevisionAdding adding;
    private final Clock clock;

    RevisionImportController(RevisionAdding adding, Clock clock) {
        this.adding = adding;
        this.clock = clock;
    }

    /** Adds the revisions of a history to a branch one after the other, if If-Match names the branch's present ETag. */
    @PostMapping(path = "/v1/projects/{id}/revisions:import", produces = MediaType.APPLICATION_JSON_VALUE)
    @ApiResponse(responseCode = "200", content = @Content(schema = @Schema(implementation = ImportedRevisions.class)))
    @Fails({ProblemKind.CONFLICT, ProblemKind.PRECONDITION_FAILED, ProblemKind.PRECONDITION_REQUIRED})
    ResponseEntity<byte[]> importRevisions(
            @PathVariable UUID id,
            @RequestParam(defaultValue = Branch.MAIN) ShortName branch,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestHeader(name = IdempotencyKey.HEADER, required = false) @Nullable IdempotencyKey key,
            @RequestBody RevisionImport request) {
        requirePast(request.revisions());
        List<Draft> history = IntStream.range(0, request.revisions().size())
                .mapToObj(k -> request.revisions().get(k).draft("/revisions/" + k))
                .toList();
        return adding.add(key, Documents.write(request), new NamedHead(id, branch.value(), ifMatch), history)
                .entity();
    }

    private void requirePast(List<ImportedRevision> revisions) {
        Instant now = clock.instant();
        List<Fault> faults = IntStream.range(0, revisions.size())
                .filter(k -> !isPast(revisions.get(k).madeAt(), now))
                .mapToObj(k -> new Fault(
                        "/revisions/" + k + "/madeAt",
                        FaultCode.OUT_OF_RANGE,
                        revisions.get(k).madeAt() + " is not the time a revision was made at.",
                        "a time stamp of RFC 3339 from 1970 until now"))
                .toList();
        if (!faults.isEmpty()) {
            throw new InvalidDesign(faults);
        }
    }

    private static boolean isPast(@Nullable Instant time, Instant now) {
        return time == null || !time.isBefore(Instant.EPOCH) && !time.isAfter(now);
    }
}
