package io.axiswright.app.project;

import io.axiswright.app.catalogues.CatalogueReference;
import io.axiswright.app.web.EntityTag;
import io.axiswright.app.web.Links;
import io.axiswright.engine.design.CodeBasis;
import java.net.URI;
import java.time.Instant;

/**
 * A revision as lists show it.
 *
 * @param number its number in the project, from 1
 * @param createdAt when it was made
 * @param message what changed and why
 * @param author who changed it
 * @param codeBasis the code it is to be built to
 * @param catalogue what it is bought from
 * @param engineVersion version of the engine that studied it
 * @param buildable whether the system may be built
 * @param etag its entity tag; also the project's while it is the latest
 * @param self address of the whole revision
 */
record RevisionSummary(
        int number,
        Instant createdAt,
        String message,
        String author,
        CodeBasis codeBasis,
        CatalogueReference catalogue,
        String engineVersion,
        boolean buildable,
        String etag,
        URI self) {

    static RevisionSummary of(RevisionEntry entry) {
        return new RevisionSummary(
                entry.number(),
                entry.createdAt(),
                entry.message(),
                entry.author(),
                entry.codeBasis(),
                new CatalogueReference(entry.catalogueName(), entry.catalogueVersion()),
                entry.engineVersion(),
                entry.buildable(),
                new EntityTag(entry.digest()).quoted(),
                Links.to("/v1/projects/{project}/revisions/{number}", entry.project(), entry.number()));
    }
}
