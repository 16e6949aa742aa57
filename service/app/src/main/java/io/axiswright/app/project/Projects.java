package io.axiswright.app.project;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The stored projects. */
interface Projects extends Repository<Project, UUID> {

    Optional<Project> findById(UUID id);

    boolean existsById(UUID id);

    /** Projects in the order they were opened, after the given key. */
    @Query("select p from Project p where p.id > :after order by p.id")
    List<Project> after(UUID after, Limit limit);

    /**
     * Moves the head to the next revision if it still is where the caller saw it.
     *
     * @return 1, or 0 if somebody else moved it first
     */
    @Modifying
    @Query("""
            update Project p set p.headNumber = p.headNumber + 1, p.headDigest = :next
            where p.id = :id and p.headDigest = :seen""")
    int moveHead(UUID id, String seen, String next);
}
