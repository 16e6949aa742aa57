package io.axiswright.app.project;

import io.axiswright.engine.design.CodeBasis;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** One revision as stored: what lists show, in columns, and the whole of it as the bytes that are served. */
@Entity
@Immutable
class Revision {

    @Id
    private UUID id = new UUID(0, 0);

    private UUID projectId = new UUID(0, 0);
    private int number;
    private String branch = Branch.MAIN;
    private @Nullable Integer parent;
    private @Nullable Integer restores;
    private Instant createdAt = Instant.EPOCH;
    private @Nullable Instant madeAt;
    private String message = "";
    private String author = "";

    @Enumerated(EnumType.STRING)
    private CodeBasis codeBasis = CodeBasis.NFPA_79;

    private String catalogueName = "";
    private int catalogueVersion;
    private String engineVersion = "";
    private boolean buildable;
    private String digest = "";
    private byte[] document = {};

    /** For Hibernate. */
    protected Revision() {}

    Revision(UUID id, RevisionDocument content, String digest, byte[] document) {
        this.id = id;
        this.projectId = content.project();
        this.number = content.number();
        this.branch = content.branch();
        this.parent = content.parent();
        this.restores = content.restores();
        this.createdAt = content.createdAt();
        this.madeAt = content.madeAt();
        this.message = content.message();
        this.author = content.author();
        this.codeBasis = content.codeBasis();
        this.catalogueName = content.catalogue().name();
        this.catalogueVersion = content.catalogue().version();
        this.engineVersion = content.engineVersion();
        this.buildable = content.buildable();
        this.digest = digest;
        this.document = document;
    }

    int number() {
        return number;
    }

    /** What lists show. */
    RevisionEntry entry() {
        return new RevisionEntry(
                projectId,
                number,
                branch,
                parent,
                restores,
                createdAt,
                madeAt,
                message,
                author,
                codeBasis,
                catalogueName,
                catalogueVersion,
                engineVersion,
                buildable,
                digest);
    }

    String digest() {
        return digest;
    }

    byte[] document() {
        return document;
    }
}
