package io.axiswright.app.project;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** A label as stored; it comes and goes, but never changes. */
@Entity
@Immutable
@IdClass(RevisionLabel.Key.class)
class RevisionLabel {

    /** Which label of which revision. */
    record Key(UUID projectId, int number, String name) {}

    @Id
    private UUID projectId = new UUID(0, 0);

    @Id
    private int number;

    @Id
    private String name = "";

    private String author = "";
    private Instant setAt = Instant.EPOCH;

    /** For Hibernate. */
    protected RevisionLabel() {}

    RevisionLabel(UUID projectId, int number, Label label) {
        this.projectId = projectId;
        this.number = number;
        this.name = label.name();
        this.author = label.author();
        this.setAt = label.setAt();
    }

    int number() {
        return number;
    }

    Label label() {
        return new Label(name, author, setAt);
    }
}
