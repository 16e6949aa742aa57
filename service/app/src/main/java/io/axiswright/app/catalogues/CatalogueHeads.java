package io.axiswright.app.catalogues;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The catalogues' names and latest versions. */
interface CatalogueHeads extends Repository<CatalogueHead, UUID> {

    /** The head, locked until the transaction ends. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select h from CatalogueHead h where h.name = :name")
    Optional<CatalogueHead> lock(String name);

    @Query("select h from CatalogueHead h where h.name = :name")
    Optional<CatalogueHead> find(String name);

    /** Heads in the order they were made, after the given key. */
    @Query("select h from CatalogueHead h where h.id > :after order by h.id")
    List<CatalogueHead> after(UUID after, Limit limit);
}
