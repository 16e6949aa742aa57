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
 * @param latest number of the latest revision of its main branch; absent before the first
 * @param etag its entity tag, that of its main branch, which the next revision there must name in If-Match
 * @param self its address
 * @param head address of that revision; absent before the first
 * @param revisions address of its revisions
 * @param branches address of its branches
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
        URI revisions,
        URI branches) {

    static ProjectSummary of(ProjectEntry entry) {
        Project project = entry.project();
        int latest = entry.main().headNumber();
        return new ProjectSummary(
                project.id(),
                project.name(),
                project.description(),
                project.createdAt(),
                latest == 0 ? null : latest,
                entry.main().tag().quoted(),
                Links.to("/v1/projects/{id}", project.id()),
                latest == 0 ? null : Links.to("/v1/projects/{id}/revisions/{number}", project.id(), latest),
                Links.to("/v1/projects/{id}/revisions", project.id()),
                Links.to("/v1/projects/{id}/branches", project.id()));
    }
}
