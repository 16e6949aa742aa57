package io.axiswright.app.project;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The stored labels. */
interface RevisionLabels extends Repository<RevisionLabel, RevisionLabel.Key> {

    /** The labels of some revisions of a project, in the order they were put. */
    @Query("""
            select l from RevisionLabel l where l.projectId = :project and l.number in :numbers
            order by l.setAt, l.name""")
    List<RevisionLabel> of(UUID project, Collection<Integer> numbers);

    /** Locks a revision's labels until the transaction ends; empty if there is no such revision. */
    @Query(
            value = "select number from revision where project_id = :project and number = :number for update",
            nativeQuery = true)
    Optional<Integer> lock(UUID project, int number);

    /** Numbers of the revisions added to a branch, whose labels are locked until the transaction ends. */
    @Query(value = """
                    select number from revision where project_id = :project and branch = :branch
                    order by number for update""", nativeQuery = true)
    List<Integer> lockAll(UUID project, String branch);

    @Modifying
    @Query("delete from RevisionLabel l where l.projectId = :project and l.number = :number and l.name = :name")
    void remove(UUID project, int number, String name);
}
