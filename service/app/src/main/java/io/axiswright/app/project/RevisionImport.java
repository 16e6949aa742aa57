package io.axiswright.app.project;

import io.axiswright.engine.quantity.Count;
import java.util.List;

/**
 * A history kept elsewhere.
 *
 * @param revisions its revisions, oldest first
 */
record RevisionImport(@Count(min = 1, max = MOST) List<ImportedRevision> revisions) {

    /** So many revisions an import may have. */
    static final int MOST = 100;
}
