package io.axiswright.app.project;

import io.axiswright.app.openapi.Fails;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.sizing.SizingRequest;
import io.axiswright.app.sizing.StudyRequests;
import io.axiswright.app.store.Documents;
import io.axiswright.app.web.Cursor;
import io.axiswright.app.web.Limit;
import io.axiswright.app.web.Links;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.comparison.ComparisonResult;
import io.axiswright.engine.study.EngineVersion;
import io.axiswright.engine.study.StudyRequest;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Compares revisions over HTTP. */
@RestController
class ComparisonController {

    private final RevisionReader reader;
    private final StudyRequests requests;
    private final Comparisons comparisons;

    ComparisonController(RevisionReader reader, StudyRequests requests, Comparisons comparisons) {
        this.reader = reader;
        this.requests = requests;
        this.comparisons = comparisons;
    }

    @Fails(ProblemKind.INVALID_DESIGN)
    @GetMapping("/v1/projects/{id}/comparisons")
    ResponseEntity<RevisionComparison> compareRevisions(
            @PathVariable UUID id,
            @RequestParam int from,
            @RequestParam int to,
            @RequestParam(required = false) @Nullable Cursor cursor,
            @RequestParam(required = false) @Nullable Limit limit) {
        StoredRevision first = reader.read(id, from);
        StoredRevision second = reader.read(id, to);
        ComparisonResult whole = comparisons.of(id, first, second);
        List<String> drift = Stream.of(first, second)
                .filter(revision -> !current(revision))
                .map(revision -> Links.to("/v1/projects/{id}/revisions/{number}/drift", id, revision.number())
                        .toString())
                .distinct()
                .toList();
        ComparisonPage page = ComparisonPage.of(whole, cursor, limit);
        return page.answer(new RevisionComparison(
                id, from, to, EngineVersion.CURRENT, drift.isEmpty(), drift, page.comparison(), page.next()));
    }

    /** Compares a revision with a design that is sent along; stores nothing. */
    @PostMapping("/v1/projects/{id}/comparisons")
    ResponseEntity<ComparisonPreview> previewComparison(
            @PathVariable UUID id,
            @RequestParam int from,
            @RequestParam(required = false) @Nullable Cursor cursor,
            @RequestParam(required = false) @Nullable Limit limit,
            @RequestBody SizingRequest request) {
        StoredRevision first = reader.read(id, from);
        StudyRequest sent = requests.of(request);
        // how the catalogue came, and what is to be drawn, are no changes to the machine
        var second = new StudyRequest(sent.codeBasis(), sent.catalogue(), sent.design(), CatalogueSource.STORED);
        String digest = Documents.digest(Documents.write(request));
        ComparisonPage page = ComparisonPage.of(comparisons.with(id, first, second, digest), cursor, limit);
        return page.answer(
                new ComparisonPreview(id, from, EngineVersion.CURRENT, current(first), page.comparison(), page.next()));
    }

    private static boolean current(StoredRevision revision) {
        return EngineVersion.CURRENT.equals(
                revision.result().path("engineVersion").asString());
    }
}
