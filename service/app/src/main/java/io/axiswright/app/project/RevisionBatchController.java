package io.axiswright.app.project;

import io.axiswright.app.idempotency.Answer;
import io.axiswright.app.idempotency.IdempotencyKey;
import io.axiswright.app.openapi.Fails;
import io.axiswright.app.problem.Problem;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.problem.Problems;
import io.axiswright.app.store.Documents;
import io.axiswright.app.web.BatchForm;
import io.axiswright.app.wire.LongList;
import io.axiswright.app.wire.RecordReader;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.http.HttpHeaders;
import org.springframework.util.unit.DataSize;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RestController;

/** Adds revisions to many projects by one request, each as if it were asked for by itself. */
@RestController
class RevisionBatchController {

    private final RevisionAdding adding;
    private final long limit;

    /**
     * @param limit most bytes of one revision, as if it were sent alone
     */
    RevisionBatchController(RevisionAdding adding, @Value("${axiswright.wire.body-limit:4MB}") DataSize limit) {
        this.adding = adding;
        this.limit = limit.toBytes();
    }

    /** Adds each revision of the batch in turn, so that a later one may build on what an earlier one has left. */
    @PostMapping(
            path = "/v1/revisions:batch",
            consumes = BatchForm.JSON_TYPE,
            produces = {BatchForm.JSON_TYPE, BatchForm.LINES_TYPE})
    @RequestBody(
            required = true,
            content = @Content(mediaType = BatchForm.JSON_TYPE, schema = @Schema(implementation = RevisionBatch.class)))
    @ApiResponse(
            responseCode = "200",
            content = {
                @Content(mediaType = BatchForm.JSON_TYPE, schema = @Schema(implementation = RevisionBatchResult.class)),
                @Content(mediaType = BatchForm.LINES_TYPE, schema = @Schema(implementation = RevisionBatchItem.class))
            })
    @Fails(ProblemKind.IDEMPOTENCY_KEY_REUSED)
    void addRevisions(
            @RequestHeader(name = IdempotencyKey.HEADER, required = false) @Nullable IdempotencyKey key,
            HttpServletRequest request,
            HttpServletResponse response)
            throws IOException, InterruptedException {
        try (LongList batch = LongList.of(request.getInputStream(), RevisionBatch.REVISIONS, RevisionBatch.MOST)) {
            int count = batch.require(RevisionBatch.Frame.class);
            BatchForm.of(request).answer(response, count, index -> {
                IdempotencyKey part = key == null ? null : key.part(index);
                return Documents.write(item(index, part, batch, request.getRequestURI()));
            });
        }
    }

    private RevisionBatchItem item(int index, @Nullable IdempotencyKey key, LongList batch, String path) {
        try {
            var asked = RecordReader.read(batch.element(index, limit), BatchedRevision.class);
            Answer answer = adding.add(
                    key,
                    Documents.canonical(asked.ofAnyState()),
                    asked.head(),
                    asked.change(),
                    "/change/" + asked.change().member());
            return new RevisionBatchItem(
                    index, answer.status(), Documents.read(answer.body(), RevisionSummary.class), null);
        } catch (RuntimeException e) {
            Problem problem = Problems.of(e, "POST", path).withHeaderAt(HttpHeaders.IF_MATCH, "/ifMatch");
            return new RevisionBatchItem(index, problem.status(), null, problem);
        }
    }
}
