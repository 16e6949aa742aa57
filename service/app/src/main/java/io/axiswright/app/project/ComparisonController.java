package io.axiswright.app.project;

import io.axiswright.app.openapi.Fails;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.sizing.SizingRequest;
import io.axiswright.app.sizing.StudyRequests;
import io.axiswright.app.web.Cursor;
import io.axiswright.app.web.Limit;
import io.axiswright.app.web.Links;
import io.axiswright.app.web.Page;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.comparison.ComparisonResult;
import io.axiswright.engine.comparison.Consequence;
import io.axiswright.engine.study.EngineVersion;
import io.axiswright.engine.study.StudyRequest;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
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
        int start = cursor == null
                ? 0
                : Math.clamp(cursor.number(), 0, whole.consequences().size());
        if (limit == null) {
            return ResponseEntity.ok(comparison(id, from, to, drift, from(whole, start), null));
        }
        Page<Consequence> page = Page.of(
                IntStream.range(start, whole.consequences().size()).boxed().toList(),
                limit,
                place -> Cursor.at(place + 1),
                place -> whole.consequences().get(place));
        return ResponseEntity.ok()
                .header(HttpHeaders.LINK, page.links())
                .body(comparison(id, from, to, drift, whole.with(page.items()), page.next()));
    }

    private static RevisionComparison comparison(
            UUID id, int from, int to, List<String> drift, ComparisonResult result, @Nullable String next) {
        return new RevisionComparison(id, from, to, EngineVersion.CURRENT, drift.isEmpty(), drift, result, next);
    }

    private static ComparisonResult from(ComparisonResult whole, int start) {
        return start == 0
                ? whole
                : whole.with(
                        whole.consequences().subList(start, whole.consequences().size()));
    }

    /** Compares a revision with a design that is sent along; stores nothing. */
    @PostMapping("/v1/projects/{id}/comparisons")
    ComparisonPreview previewComparison(
            @PathVariable UUID id, @RequestParam int from, @RequestBody SizingRequest request) {
        StoredRevision first = reader.read(id, from);
        StudyRequest sent = requests.of(request);
        // how the catalogue came, and what is to be drawn, are no changes to the machine
        var second = new StudyRequest(sent.codeBasis(), sent.catalogue(), sent.design(), CatalogueSource.STORED);
        return new ComparisonPreview(id, from, EngineVersion.CURRENT, current(first), comparisons.with(first, second));
    }

    private static boolean current(StoredRevision revision) {
        return EngineVersion.CURRENT.equals(
                revision.result().path("engineVersion").asString());
    }
}
