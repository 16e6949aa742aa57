package io.axiswright.app.project;

import io.axiswright.app.catalogues.CatalogueReference;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import java.time.Instant;
import tools.jackson.databind.JsonNode;

/**
 * A revision read back: what was asked, to be studied again, and what came of it.
 *
 * @param number its number in the project
 * @param etag its entity tag, with its quotes
 * @param createdAt when it was made
 * @param codeBasis the code it is to be built to
 * @param catalogue what it is bought from
 * @param design the machine
 * @param result what the study worked out then
 */
public record StoredRevision(
        int number,
        String etag,
        Instant createdAt,
        CodeBasis codeBasis,
        CatalogueReference catalogue,
        Design design,
        JsonNode result) {}
