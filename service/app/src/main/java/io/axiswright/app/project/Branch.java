package io.axiswright.app.project;

import io.axiswright.app.web.EntityTag;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A line of revisions and its head. The head only ever moves by {@link Branches#moveHead}; its digest is the branch's entity
 * tag, and that of the main branch also the project's.
 */
@Entity
class Branch {

    /** The branch every project has. */
    static final String MAIN = "main";

    @Id
    private UUID id = new UUID(0, 0);

    private UUID projectId = new UUID(0, 0);
    private String name = "";
    private Instant createdAt = Instant.EPOCH;
    private @Nullable Integer start;
    private int headNumber;
    private String headDigest = "";

    /** For Hibernate. */
    protected Branch() {}

    /** The main branch of a new project, without a revision. */
    static Branch main(UUID id, Project project) {
        var branch = new Branch();
        branch.id = id;
        branch.projectId = project.id();
        branch.name = MAIN;
        branch.createdAt = project.createdAt();
        // keys are unique, so this is a tag no other state of any project has
        branch.headDigest = project.id().toString();
        return branch;
    }

    /** A branch that sets out from a revision. */
    static Branch from(UUID id, String name, RevisionEntry start, Instant createdAt) {
        var branch = new Branch();
        branch.id = id;
        branch.projectId = start.project();
        branch.name = name;
        branch.createdAt = createdAt;
        branch.start = start.number();
        branch.headNumber = start.number();
        branch.headDigest = start.digest();
        return branch;
    }

    UUID id() {
        return id;
    }

    UUID projectId() {
        return projectId;
    }

    String name() {
        return name;
    }

    Instant createdAt() {
        return createdAt;
    }

    /** Number of the revision it set out from; null for the main branch. */
    @Nullable
    Integer start() {
        return start;
    }

    /** Number of its latest revision; 0 before the first of a project. */
    int headNumber() {
        return headNumber;
    }

    EntityTag tag() {
        return new EntityTag(headDigest);
    }
}
