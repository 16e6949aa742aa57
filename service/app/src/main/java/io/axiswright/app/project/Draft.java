package io.axiswright.app.project;

import org.jspecify.annotations.Nullable;

/**
 * What a revision is to be.
 *
 * @param content what the caller asks for
 * @param restores number of the revision it brings back, if it does
 */
record Draft(NewRevision content, @Nullable Integer restores) {

    /** Something new. */
    static Draft of(NewRevision content) {
        return new Draft(content, null);
    }
}
