package io.axiswright.app.sizing;

import io.axiswright.app.openapi.Fails;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.wire.LongList;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Collections;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;

/** Sizes many systems by one request. */
@RestController
class BatchController {

    private static final Logger LOG = LoggerFactory.getLogger(BatchController.class);

    private static final String JSON = "application/json";
    private static final String LINES = "application/x-ndjson";

    private final SystemBatches batches;

    BatchController(SystemBatches batches) {
        this.batches = batches;
    }

    /** Answers each request of the batch; reads and writes by itself, because the whole may be too much to hold. */
    @PostMapping(
            path = "/v1/sizing/system:batch",
            consumes = JSON,
            produces = {JSON, LINES})
    @ApiResponse(
            responseCode = "200",
            content = {
                @Content(mediaType = JSON, schema = @Schema(implementation = BatchResult.class)),
                @Content(mediaType = LINES, schema = @Schema(implementation = BatchItem.class))
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
            answer(requests, requests.require(SystemBatch.class), request, response);
        }
    }

    private void answer(LongList requests, int count, HttpServletRequest request, HttpServletResponse response)
            throws InterruptedException {
        BatchForm form =
                BatchForm.of(MediaType.parseMediaTypes(Collections.list(request.getHeaders(HttpHeaders.ACCEPT))));
        response.setContentType(form.mediaType());
        try {
            batches.write(requests, count, form, request.getRequestURI(), response.getOutputStream());
        } catch (IOException e) {
            LOG.debug("the caller of a batch has gone", e);
        }
    }
}
