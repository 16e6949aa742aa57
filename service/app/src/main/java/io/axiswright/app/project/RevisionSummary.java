package io.axiswright.app.project;

import io.axiswright.app.catalogues.CatalogueReference;
import io.axiswright.app.web.EntityTag;
import io.axiswright.app.web.Links;
import io.axiswright.engine.design.CodeBasis;
import java.net.URI;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A revision as lists show it.
 *
 * @param number its number in the project, from 1
 * @param branch the branch it was added to
 * @param parent number of the revision it follows; absent for the first of the project
 * @param restores number of the revision it brings back, if it does
 * @param createdAt when it was made
 * @param madeAt when it was made where it was imported from; absent if it was not, or that is not known
 * @param message what changed and why
 * @param author who changed it
 * @param codeBasis the code it is to be built to
 * @param catalogue what it is bought from
 * @param engineVersion version of the engine that studied it
 * @param buildable whether the system may be built
 * @param labels the words put to it, in the order they were put
 * @param etag its entity tag; also its branch's while it is the latest there
 * @param self address of the whole revision
 */
record RevisionSummary(
        int number,
        String branch,
        @Nullable Integer parent,
        @Nullable Integer restores,
        Instant createdAt,
        @Nullable Instant madeAt,
        String message,
        String author,
        CodeBasis codeBasis,
        CatalogueReference catalogue,
        String engineVersion,
        boolean buildable,
        List<Label> labels,
        String etag,
        URI self) {

    static RevisionSummary of(RevisionEntry entry, List<Label> labels) {
        return new RevisionSummary(
                entry.number(),
                entry.branch(),
                entry.parent(),
                entry.restores(),
                entry.createdAt(),
                entry.madeAt(),
                entry.message(),
                entry.author(),
                entry.codeBasis(),
                new CatalogueReference(entry.catalogueName(), entry.catalogueVersion()),
                entry.engineVersion(),
                entry.buildable(),
                labels,
                new EntityTag(entry.digest()).quoted(),
                Links.to("/v1/projects/{project}/revisions/{number}", entry.project(), entry.number()));
    }
}
