package io.axiswright.app.project;

import io.axiswright.app.problem.NotFound;
import io.axiswright.app.report.BillFormats;
import io.axiswright.app.report.DatedBill;
import io.axiswright.app.wire.RecordReader;
import io.axiswright.engine.bill.BillResult;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.JsonNode;

/** The bill of a stored revision, in each of its forms. */
@RestController
class RevisionBillController {

    private final RevisionReader reader;

    RevisionBillController(RevisionReader reader) {
        this.reader = reader;
    }

    /**
     * The bill as it was worked out when the revision was made, dated by that day; its entity tag is that of the form. As CSV its column
     * {@code section} says what a row is: a line of that section, or, after all lines, a {@code finding}, which has no item, quantity and price.
     */
    @GetMapping(
            path = "/v1/projects/{id}/revisions/{number}/bill-of-materials",
            produces = {MediaType.APPLICATION_JSON_VALUE, BillFormats.CSV, BillFormats.XLSX, BillFormats.XML})
    @ApiResponse(responseCode = "200", content = @Content(schema = @Schema(implementation = BillResult.class)))
    ResponseEntity<DatedBill> getRevisionBill(@PathVariable UUID id, @PathVariable int number) {
        StoredRevision found = reader.read(id, number);
        @Nullable JsonNode bill = found.result().get("billOfMaterials");
        if (bill == null) {
            throw new NotFound("bill of materials", "of revision " + number + " of project " + id);
        }
        return ResponseEntity.ok()
                .header(HttpHeaders.VARY, HttpHeaders.ACCEPT)
                .body(new DatedBill(
                        RecordReader.read(bill, BillResult.class),
                        LocalDate.ofInstant(found.createdAt(), ZoneOffset.UTC)));
    }
}
