package io.axiswright.app.catalogues;

import io.axiswright.app.web.EntityTag;
import io.axiswright.app.web.Links;
import java.net.URI;

/**
 * A catalogue as lists show it.
 *
 * @param name its name
 * @param latest number of its latest version
 * @param etag entity tag of that version's document
 * @param self address of the catalogue and its versions
 */
record CatalogueSummary(String name, int latest, String etag, URI self) {

    static CatalogueSummary of(CatalogueHead head) {
        return new CatalogueSummary(
                head.name(),
                head.latest(),
                new EntityTag(head.latestDigest()).quoted(),
                Links.to("/v1/catalogues/{name}", head.name()));
    }
}
