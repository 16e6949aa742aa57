package io.axiswright.app.sizing;

import io.axiswright.app.wire.RecordReader;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpHeaders;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
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

    /** Answers each request of the batch; writes by itself, because the whole may be too much to hold. */
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
    void sizeSystems(@RequestBody byte[] body, HttpServletRequest request, HttpServletResponse response)
            throws InterruptedException {
        SystemBatch batch = RecordReader.read(body, SystemBatch.class);
        String accept = request.getHeader(HttpHeaders.ACCEPT);
        BatchForm form = accept != null && accept.contains(LINES) ? BatchForm.LINES : BatchForm.JSON;
        response.setContentType(form.mediaType());
        try {
            batches.write(batch, form, request.getRequestURI(), response.getOutputStream());
        } catch (IOException e) {
            LOG.debug("the caller of a batch has gone", e);
        }
    }
}
