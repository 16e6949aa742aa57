package io.axiswright.app.project;

import io.axiswright.app.catalogues.Catalogues;
import io.axiswright.app.openapi.Fails;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.store.Documents;
import java.util.Set;
import java.util.UUID;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.JsonNode;

/** Tells over HTTP what became of a revision's numbers under the engine of today. */
@RestController
class DriftController {

    private static final String ENGINE_VERSION = "engineVersion";

    private final RevisionReader reader;
    private final Catalogues catalogues;
    private final RevisionStudy study;

    DriftController(RevisionReader reader, Catalogues catalogues, RevisionStudy study) {
        this.reader = reader;
        this.catalogues = catalogues;
        this.study = study;
    }

    /** Studies a revision again with its own catalogue; the stored result stays as it is. */
    @Fails(ProblemKind.INVALID_DESIGN)
    @GetMapping("/v1/projects/{id}/revisions/{number}/drift")
    DriftReport getDrift(@PathVariable UUID id, @PathVariable int number) {
        StoredRevision stored = reader.read(id, number);
        StudyOutcome today =
                study.study(stored.codeBasis(), catalogues.require(stored.catalogue(), "/catalogue"), stored.design());
        JsonNode result = Documents.tree(Documents.write(today.result()));
        var drift = new ResultDrift(stored.result(), result, Set.of(ENGINE_VERSION));
        return new DriftReport(
                id,
                number,
                stored.result().path(ENGINE_VERSION).asString(),
                today.engineVersion(),
                drift.compared(),
                drift.moved());
    }
}
