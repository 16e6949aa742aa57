package io.axiswright.app.project;

import io.axiswright.app.problem.NotFound;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The stored projects. */
interface Projects extends Repository<Project, UUID> {

    boolean existsById(UUID id);

    /**
     * Goes on only if there is such a project.
     *
     * @throws NotFound if there is none
     */
    default void require(UUID id) {
        if (!existsById(id)) {
            throw ProjectController.noProject(id);
        }
    }

    /** A project with its main branch. */
    @Query("""
            select new io.axiswright.app.project.ProjectEntry(p, b)
            from Project p join Branch b on b.projectId = p.id and b.name = 'main' where p.id = :id""")
    Optional<ProjectEntry> find(UUID id);

    /** Projects in the order they were opened, after the given key. */
    @Query("""
            select new io.axiswright.app.project.ProjectEntry(p, b)
            from Project p join Branch b on b.projectId = p.id and b.name = 'main'
            where p.id > :after order by p.id""")
    List<ProjectEntry> after(UUID after, Limit limit);

    /**
     * The number of the project's next revision. Nobody else gets one until the transaction ends, and it is free again if
     * that fails: so there are no gaps.
     */
    @Query(
            value = "update project set last_number = last_number + 1 where id = :id returning last_number",
            nativeQuery = true)
    int takeNumber(UUID id);
}
