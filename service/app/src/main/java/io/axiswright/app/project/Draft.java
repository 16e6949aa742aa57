package io.axiswright.app.project;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What a revision is to be.
 *
 * @param content what the caller asks for
 * @param restores number of the revision it brings back, if it does
 * @param madeAt when it was made where it is imported from, if it is
 * @param place where the content stands in the request, as a JSON Pointer; faults of the content stand in it
 */
record Draft(
        NewRevision content,
        @Nullable Integer restores,
        @Nullable Instant madeAt,
        String place) {

    /** Something new. */
    static Draft of(NewRevision content, String place) {
        return new Draft(content, null, null, place);
    }
}
