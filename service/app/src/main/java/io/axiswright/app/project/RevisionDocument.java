package io.axiswright.app.project;

import io.axiswright.app.catalogues.CatalogueReference;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.study.StudyResult;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Everything a revision is: what was asked and what came of it, together and for ever.
 *
 * @param project its project
 * @param number its number in the project, from 1, without gaps
 * @param branch the branch it was added to
 * @param parent number of the revision it follows; absent for the first of the project
 * @param restores number of the revision it brings back, if it does
 * @param createdAt when it was made
 * @param madeAt when it was made where it was imported from; absent if it was not, or that is not known
 * @param message what changed and why
 * @param author who changed it
 * @param codeBasis the code it is to be built to
 * @param catalogue what it is bought from
 * @param engineVersion version of the engine that studied it
 * @param buildable whether the system may be built
 * @param design the machine
 * @param result what the study worked out
 */
public record RevisionDocument(
        UUID project,
        int number,
        String branch,
        @Nullable Integer parent,
        @Nullable Integer restores,
        Instant createdAt,
        @Nullable Instant madeAt,
        String message,
        String author,
        CodeBasis codeBasis,
        CatalogueReference catalogue,
        String engineVersion,
        boolean buildable,
        Design design,
        StudyResult result) {}
