package io.axiswright.app.project;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The stored branches. */
interface Branches extends Repository<Branch, UUID> {

    @Query("select b from Branch b where b.projectId = :project and b.name = :name")
    Optional<Branch> find(UUID project, String name);

    /** A project's branches in the order they were made, after the given key. */
    @Query("select b from Branch b where b.projectId = :project and b.id > :after order by b.id")
    List<Branch> after(UUID project, UUID after, Limit limit);

    /**
     * Moves a head to the next revision if it still is where the caller saw it.
     *
     * @return 1, or 0 if somebody else moved it first
     */
    @Modifying
    @Query("""
            update Branch b set b.headNumber = :number, b.headDigest = :next
            where b.projectId = :project and b.name = :name and b.headDigest = :seen""")
    int moveHead(UUID project, String name, String seen, int number, String next);

    /**
     * Removes a branch if its head still is where the caller saw it.
     *
     * @return 1, or 0 if it was moved or removed first
     */
    @Modifying
    @Query("delete from Branch b where b.projectId = :project and b.name = :name and b.headDigest = :seen")
    int remove(UUID project, String name, String seen);
}
