package io.axiswright.app.sizing;

import io.axiswright.app.openapi.Fails;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.web.BatchForm;
import io.axiswright.app.wire.LongList;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;

/** Sizes many systems by one request. */
@RestController
class BatchController {

    private final SystemBatches batches;

    BatchController(SystemBatches batches) {
        this.batches = batches;
    }

    /** Answers each request of the batch; reads and writes by itself, because the whole may be too much to hold. */
    @PostMapping(
            path = "/v1/sizing/system:batch",
            consumes = BatchForm.JSON_TYPE,
            produces = {BatchForm.JSON_TYPE, BatchForm.LINES_TYPE})
    @ApiResponse(
            responseCode = "200",
            content = {
                @Content(mediaType = BatchForm.JSON_TYPE, schema = @Schema(implementation = BatchResult.class)),
                @Content(mediaType = BatchForm.LINES_TYPE, schema = @Schema(implementation = BatchItem.class))
            })
    @Fails({
        ProblemKind.MALFORMED_JSON,
        ProblemKind.BODY_TOO_LARGE,
        ProblemKind.UNSUPPORTED_MEDIA_TYPE,
        ProblemKind.INVALID_DESIGN
    })
    void sizeSystems(HttpServletRequest request, HttpServletResponse response)
            throws IOException, InterruptedException {
        try (LongList requests = LongList.of(request.getInputStream(), SystemBatch.REQUESTS, SystemBatch.MOST)) {
            int count = requests.require(SystemBatch.class);
            batches.answer(requests, count, BatchForm.of(request), request.getRequestURI(), response);
        }
    }
}
