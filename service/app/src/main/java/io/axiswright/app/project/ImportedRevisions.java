package io.axiswright.app.project;

import java.util.List;

/**
 * What became of an imported history.
 *
 * @param revisions the revisions it was stored as, oldest first
 */
record ImportedRevisions(List<RevisionSummary> revisions) {}
