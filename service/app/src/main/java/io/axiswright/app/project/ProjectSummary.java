package io.axiswright.app.project;

import io.axiswright.app.web.Links;
import java.net.URI;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A project.
 *
 * @param id its key
 * @param name the caller's name for it
 * @param description what it is about
 * @param createdAt when it was opened
 * @param latest number of its latest revision; absent before the first
 * @param etag its entity tag, which the next revision must name in If-Match
 * @param self its address
 * @param head address of its latest revision; absent before the first
 * @param revisions address of its revisions
 */
record ProjectSummary(
        UUID id,
        String name,
        @Nullable String description,
        Instant createdAt,
        @Nullable Integer latest,
        String etag,
        URI self,
        @Nullable URI head,
        URI revisions) {

    static ProjectSummary of(Project project) {
        int latest = project.headNumber();
        return new ProjectSummary(
                project.id(),
                project.name(),
                project.description(),
                project.createdAt(),
                latest == 0 ? null : latest,
                project.tag().quoted(),
                Links.to("/v1/projects/{id}", project.id()),
                latest == 0 ? null : Links.to("/v1/projects/{id}/revisions/{number}", project.id(), latest),
                Links.to("/v1/projects/{id}/revisions", project.id()));
    }
}
