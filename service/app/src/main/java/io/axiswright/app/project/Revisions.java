package io.axiswright.app.project;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The stored revisions. */
interface Revisions extends Repository<Revision, UUID> {

    @Query("select r from Revision r where r.projectId = :project and r.number = :number")
    Optional<Revision> find(UUID project, int number);

    /** Revisions below the given number, newest first, without their documents. */
    @Query("""
            select new io.axiswright.app.project.RevisionEntry(
                r.projectId, r.number, r.createdAt, r.message, r.author, r.codeBasis,
                r.catalogueName, r.catalogueVersion, r.engineVersion, r.buildable, r.digest)
            from Revision r where r.projectId = :project and r.number < :before order by r.number desc""")
    List<RevisionEntry> before(UUID project, int before, Limit limit);
}
