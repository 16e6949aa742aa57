package io.axiswright.app.project;

import io.axiswright.engine.design.CodeBasis;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A revision without its document; components as in {@link RevisionDocument}. */
record RevisionEntry(
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
        String catalogueName,
        int catalogueVersion,
        String engineVersion,
        boolean buildable,
        String digest) {

    static RevisionEntry of(RevisionDocument content, String digest) {
        return new RevisionEntry(
                content.project(),
                content.number(),
                content.branch(),
                content.parent(),
                content.restores(),
                content.createdAt(),
                content.madeAt(),
                content.message(),
                content.author(),
                content.codeBasis(),
                content.catalogue().name(),
                content.catalogue().version(),
                content.engineVersion(),
                content.buildable(),
                digest);
    }
}
