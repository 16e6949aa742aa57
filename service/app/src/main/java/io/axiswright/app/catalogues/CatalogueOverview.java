package io.axiswright.app.catalogues;

import io.axiswright.app.web.Page;

/**
 * A catalogue with its versions.
 *
 * @param latest its latest version
 * @param versions all of them, newest first, a page at a time
 */
record CatalogueOverview(VersionSummary latest, Page<VersionSummary> versions) {}
