package io.axiswright.app.project;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A project; numbers the revisions of all its branches, by {@link Projects#takeNumber}. */
@Entity
class Project {

    @Id
    private UUID id = new UUID(0, 0);

    private String name = "";
    private @Nullable String description;
    private Instant createdAt = Instant.EPOCH;
    private int lastNumber;

    /** For Hibernate. */
    protected Project() {}

    Project(UUID id, NewProject opened, Instant createdAt) {
        this.id = id;
        this.name = opened.name();
        this.description = opened.description();
        this.createdAt = createdAt;
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

    /** Number of its latest revision, of whatever branch; 0 before the first. */
    int lastNumber() {
        return lastNumber;
    }
}
