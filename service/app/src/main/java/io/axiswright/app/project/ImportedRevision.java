package io.axiswright.app.project;

import io.axiswright.app.catalogues.CatalogueReference;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/**
 * A revision of a history kept elsewhere.
 *
 * @param message what changed and why, 1 to 2000 characters
 * @param author who changed it, 1 to 200 characters
 * @param madeAt when it was made there, from 1970 until now, kept to the microsecond; unknown if absent
 * @param codeBasis the code it is to be built to
 * @param catalogue what it is bought from
 * @param design the machine
 */
record ImportedRevision(
        String message,
        String author,
        @Nullable Instant madeAt,
        CodeBasis codeBasis,
        CatalogueReference catalogue,
        Design design) {

    /** What it is to be here. */
    Draft draft(String place) {
        // as times are kept: what is answered now is what is answered later
        Instant kept = madeAt == null ? null : madeAt.truncatedTo(ChronoUnit.MICROS);
        return new Draft(new NewRevision(message, author, codeBasis, catalogue, design), null, kept, place);
    }
}
