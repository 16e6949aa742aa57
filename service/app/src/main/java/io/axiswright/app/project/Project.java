package io.axiswright.app.project;

import io.axiswright.app.web.EntityTag;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A project and its head. The head only ever moves by {@link Projects#moveHead}, which is what numbers the revisions
 * without gaps; its digest is the project's entity tag.
 */
@Entity
class Project {

    @Id
    private UUID id = new UUID(0, 0);

    private String name = "";
    private @Nullable String description;
    private Instant createdAt = Instant.EPOCH;
    private int headNumber;
    private String headDigest = "";

    /** For Hibernate. */
    protected Project() {}

    Project(UUID id, NewProject opened, Instant createdAt) {
        this.id = id;
        this.name = opened.name();
        this.description = opened.description();
        this.createdAt = createdAt;
        // keys are unique, so this is a tag no other state of any project has
        this.headDigest = id.toString();
    }

    UUID id() {
        return id;
    }

    String name() {
        return name;
    }

    @Nullable
    String description() {
        return description;
    }

    Instant createdAt() {
        return createdAt;
    }

    /** Number of the latest revision; 0 before the first. */
    int headNumber() {
        return headNumber;
    }

    EntityTag tag() {
        return new EntityTag(headDigest);
    }
}
