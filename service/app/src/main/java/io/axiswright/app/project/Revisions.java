package io.axiswright.app.project;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The stored revisions. */
interface Revisions extends Repository<Revision, UUID> {

    /** Without the documents, which are large. */
    String ENTRY = """
            select new io.axiswright.app.project.RevisionEntry(
                r.projectId, r.number, r.branch, r.parent, r.restores, r.createdAt, r.madeAt, r.message, r.author, r.codeBasis,
                r.catalogueName, r.catalogueVersion, r.engineVersion, r.buildable, r.digest)
            from Revision r
            """;

    @Query("select r from Revision r where r.projectId = :project and r.number = :number")
    Optional<Revision> find(UUID project, int number);

    @Query(ENTRY + "where r.projectId = :project and r.number = :number")
    Optional<RevisionEntry> entry(UUID project, int number);

    /** Revisions below the given number, newest first; only those added to a branch, and those with a label, if one is named. */
    @Query(ENTRY + """
            where r.projectId = :project and r.number < :before
                and (:branch is null or r.branch = :branch)
                and (:label is null or exists (select 1 from RevisionLabel l
                    where l.projectId = r.projectId and l.number = r.number and l.name = :label))
            order by r.number desc""")
    List<RevisionEntry> before(UUID project, int before, @Nullable String branch, @Nullable String label, Limit limit);

    /** Whether any revision was added to a branch of that name. */
    @Query("select count(r) > 0 from Revision r where r.projectId = :project and r.branch = :branch")
    boolean anyOf(UUID project, String branch);
}
