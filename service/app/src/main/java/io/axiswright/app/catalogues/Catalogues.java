package io.axiswright.app.catalogues;

import io.axiswright.app.store.Attempts;
import io.axiswright.app.store.Documents;
import io.axiswright.app.store.Identifiers;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.CatalogueCheck;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;

/** Stores catalogues and finds them again. */
@Service
public class Catalogues {

    private final CatalogueHeads heads;
    private final CatalogueVersions versions;
    private final EntityManager entities;
    private final Attempts attempts;
    private final Identifiers identifiers;
    private final Clock clock;

    Catalogues(
            CatalogueHeads heads,
            CatalogueVersions versions,
            EntityManager entities,
            Attempts attempts,
            Identifiers identifiers,
            Clock clock) {
        this.heads = heads;
        this.versions = versions;
        this.entities = entities;
        this.attempts = attempts;
        this.identifiers = identifiers;
        this.clock = clock;
    }

    /** The catalogue stored under a name and version number. */
    public Optional<Catalogue> find(String name, int version) {
        return versions.find(name, version).map(found -> Documents.read(found.document(), Catalogue.class));
    }

    /**
     * The stored catalogue a request names.
     *
     * @param pointer where the request names it
     * @throws InvalidDesign if there is no such version
     */
    public Catalogue require(CatalogueReference reference, String pointer) {
        return find(reference.name(), reference.version())
                .orElseThrow(() -> new InvalidDesign(List.of(new Fault(
                        pointer,
                        FaultCode.DANGLING_REFERENCE,
                        "Catalogue \"" + reference.name() + "\" has no version " + reference.version() + ".",
                        "the name and version of a stored catalogue"))));
    }

    /**
     * Stores a catalogue as the next version of its name, unless the latest version says the same.
     *
     * @param answer what is told about the version; made in the transaction that stores it
     * @throws InvalidDesign with all its faults if it contradicts itself
     */
    public <T> T store(Catalogue catalogue, Function<StoredVersion, T> answer) {
        var faults = Stream.concat(
                        CatalogueName.faults(catalogue.name()).stream(), CatalogueCheck.faults(catalogue, "").stream())
                .toList();
        if (!faults.isEmpty()) {
            throw new InvalidDesign(faults);
        }
        byte[] document = Documents.write(catalogue);
        String digest = Documents.digest(document);
        return attempts.write(() -> answer.apply(store(catalogue.name(), document, digest)));
    }

    private StoredVersion store(String name, byte[] document, String digest) {
        CatalogueHead head = heads.lock(name).orElseGet(() -> open(name));
        if (head.latestDigest().equals(digest)) {
            return new StoredVersion(versions.entry(name, head.latest()).orElseThrow(), false);
        }
        var entry = new VersionEntry(name, head.advance(digest), clock.instant(), digest);
        entities.persist(new CatalogueVersion(identifiers.next(), entry, document));
        return new StoredVersion(entry, true);
    }

    private CatalogueHead open(String name) {
        var head = new CatalogueHead(identifiers.next(), name);
        entities.persist(head);
        return head;
    }
}
