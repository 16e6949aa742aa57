package io.axiswright.app.project;

import io.axiswright.app.web.Links;
import java.net.URI;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A branch: a variant of the machine, with a head of its own.
 *
 * @param name its name
 * @param createdAt when it was made
 * @param start number of the revision it set out from; absent for {@code main}
 * @param latest number of its latest revision; absent before the first of the project
 * @param etag its entity tag, which the next revision on it must name in If-Match
 * @param self its address
 * @param head address of its latest revision; absent before the first of the project
 * @param revisions address of the revisions added to it
 */
record BranchSummary(
        String name,
        Instant createdAt,
        @Nullable Integer start,
        @Nullable Integer latest,
        String etag,
        URI self,
        @Nullable URI head,
        URI revisions) {

    static BranchSummary of(Branch branch) {
        int latest = branch.headNumber();
        return new BranchSummary(
                branch.name(),
                branch.createdAt(),
                branch.start(),
                latest == 0 ? null : latest,
                branch.tag().quoted(),
                Links.to("/v1/projects/{id}/branches/{branch}", branch.projectId(), branch.name()),
                latest == 0 ? null : Links.to("/v1/projects/{id}/revisions/{number}", branch.projectId(), latest),
                Links.toQuery("/v1/projects/{id}/revisions", "branch", branch.name(), branch.projectId()));
    }
}
