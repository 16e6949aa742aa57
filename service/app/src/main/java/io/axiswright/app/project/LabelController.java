package io.axiswright.app.project;

import io.axiswright.app.openapi.Fails;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.web.ShortName;
import java.util.UUID;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The labels of revisions over HTTP. */
@RestController
@RequestMapping("/v1/projects/{id}/revisions/{number}/labels/{label}")
class LabelController {

    private final Labelling labelling;

    LabelController(Labelling labelling) {
        this.labelling = labelling;
    }

    /** Puts a label to a revision. */
    @PutMapping
    @Fails(ProblemKind.CONFLICT)
    RevisionSummary putLabel(
            @PathVariable UUID id,
            @PathVariable int number,
            @PathVariable ShortName label,
            @RequestBody NewLabel request) {
        return labelling.put(id, number, label.value(), request);
    }

    /** Takes a label away. */
    @DeleteMapping
    @Fails(ProblemKind.CONFLICT)
    RevisionSummary takeLabel(@PathVariable UUID id, @PathVariable int number, @PathVariable ShortName label) {
        return labelling.take(id, number, label.value());
    }
}
