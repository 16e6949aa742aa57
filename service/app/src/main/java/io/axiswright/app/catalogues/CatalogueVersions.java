package io.axiswright.app.catalogues;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The stored versions. */
interface CatalogueVersions extends Repository<CatalogueVersion, UUID> {

    @Query("select v from CatalogueVersion v where v.name = :name and v.version = :version")
    Optional<CatalogueVersion> find(String name, int version);

    @Query("""
            select new io.axiswright.app.catalogues.VersionEntry(v.name, v.version, v.createdAt, v.digest)
            from CatalogueVersion v where v.name = :name and v.version = :version""")
    Optional<VersionEntry> entry(String name, int version);

    /** Versions below the given number, newest first. */
    @Query("""
            select new io.axiswright.app.catalogues.VersionEntry(v.name, v.version, v.createdAt, v.digest)
            from CatalogueVersion v where v.name = :name and v.version < :before order by v.version desc""")
    List<VersionEntry> before(String name, int before, Limit limit);
}
