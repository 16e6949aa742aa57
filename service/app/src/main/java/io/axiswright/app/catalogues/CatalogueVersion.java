package io.axiswright.app.catalogues;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** One version of a catalogue; never changes. */
@Entity
@Immutable
class CatalogueVersion {

    @Id
    private UUID id = new UUID(0, 0);

    private String name = "";
    private int version;
    private Instant createdAt = Instant.EPOCH;
    private String digest = "";
    private byte[] document = {};

    /** For Hibernate. */
    protected CatalogueVersion() {}

    CatalogueVersion(UUID id, VersionEntry entry, byte[] document) {
        this.id = id;
        this.name = entry.name();
        this.version = entry.version();
        this.createdAt = entry.createdAt();
        this.digest = entry.digest();
        this.document = document;
    }

    String digest() {
        return digest;
    }

    byte[] document() {
        return document;
    }
}
