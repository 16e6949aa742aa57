package io.axiswright.app.project;

import io.axiswright.app.catalogues.Catalogues;
import io.axiswright.app.openapi.Fails;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.sizing.SizingRequest;
import io.axiswright.app.sizing.StudyRequests;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.comparison.Comparison;
import io.axiswright.engine.comparison.ComparisonRequest;
import io.axiswright.engine.study.EngineVersion;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.topology.SearchGate;
import java.util.UUID;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Compares revisions over HTTP. */
@RestController
class ComparisonController {

    /** Enough for 60 changes; what is beyond it the answer names. */
    private static final int STUDY_BUDGET = 120;

    private final RevisionReader reader;
    private final Catalogues catalogues;
    private final StudyRequests requests;
    private final Comparison comparison;

    ComparisonController(RevisionReader reader, Catalogues catalogues, StudyRequests requests, SearchGate gate) {
        this.requests = requests;
        this.comparison = new Comparison(gate);
        this.reader = reader;
        this.catalogues = catalogues;
    }

    @Fails(ProblemKind.INVALID_DESIGN)
    @GetMapping("/v1/projects/{id}/comparisons")
    RevisionComparison compareRevisions(@PathVariable UUID id, @RequestParam int from, @RequestParam int to) {
        StoredRevision first = reader.read(id, from);
        StoredRevision second = reader.read(id, to);
        var request = new ComparisonRequest(request(first), request(second), STUDY_BUDGET);
        boolean same = current(first) && current(second);
        return new RevisionComparison(id, from, to, EngineVersion.CURRENT, same, comparison.compare(request));
    }

    /** Compares a revision with a design that is sent along; stores nothing. */
    @PostMapping("/v1/projects/{id}/comparisons")
    ComparisonPreview previewComparison(
            @PathVariable UUID id, @RequestParam int from, @RequestBody SizingRequest request) {
        StoredRevision first = reader.read(id, from);
        StudyRequest sent = requests.of(request);
        // how the catalogue came, and what is to be drawn, are no changes to the machine
        var second = new StudyRequest(sent.codeBasis(), sent.catalogue(), sent.design(), CatalogueSource.STORED);
        var result = comparison.compare(new ComparisonRequest(request(first), second, STUDY_BUDGET));
        return new ComparisonPreview(id, from, EngineVersion.CURRENT, current(first), result);
    }

    private StudyRequest request(StoredRevision revision) {
        return new StudyRequest(
                revision.codeBasis(),
                catalogues.require(revision.catalogue(), "/catalogue"),
                revision.design(),
                CatalogueSource.STORED);
    }

    private static boolean current(StoredRevision revision) {
        return EngineVersion.CURRENT.equals(
                revision.result().path("engineVersion").asString());
    }
}
