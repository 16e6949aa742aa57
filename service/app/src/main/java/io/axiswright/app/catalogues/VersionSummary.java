package io.axiswright.app.catalogues;

import io.axiswright.app.web.EntityTag;
import io.axiswright.app.web.Links;
import java.net.URI;
import java.time.Instant;

/**
 * A catalogue version as lists show it.
 *
 * @param name the catalogue's name
 * @param version its number, from 1
 * @param createdAt when it was stored
 * @param etag entity tag of its document
 * @param self address of its document
 */
record VersionSummary(String name, int version, Instant createdAt, String etag, URI self) {

    static VersionSummary of(VersionEntry entry) {
        return new VersionSummary(
                entry.name(),
                entry.version(),
                entry.createdAt(),
                new EntityTag(entry.digest()).quoted(),
                Links.to("/v1/catalogues/{name}/versions/{version}", entry.name(), entry.version()));
    }
}
