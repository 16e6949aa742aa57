package io.axiswright.app.catalogues;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.UUID;

/** A catalogue's name and which version is its latest; its row is the lock under which versions are numbered. */
@Entity
@Table(name = "catalogue")
class CatalogueHead {

    @Id
    private UUID id = new UUID(0, 0);

    private String name = "";
    private int latest;
    private String latestDigest = "";

    /** For Hibernate. */
    protected CatalogueHead() {}

    CatalogueHead(UUID id, String name) {
        this.id = id;
        this.name = name;
    }

    UUID id() {
        return id;
    }

    String name() {
        return name;
    }

    int latest() {
        return latest;
    }

    String latestDigest() {
        return latestDigest;
    }

    /** Makes room for one more version and returns its number. */
    int advance(String digest) {
        latestDigest = digest;
        return ++latest;
    }
}
