package io.axiswright.app.project;

import io.axiswright.app.store.Documents;
import java.util.List;
import java.util.UUID;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** What a stored revision holds, in figures. */
@RestController
class RevisionOverviewController {

    private final RevisionReader reader;
    private final Labelling labelling;

    RevisionOverviewController(RevisionReader reader, Labelling labelling) {
        this.reader = reader;
        this.labelling = labelling;
    }

    /** The figures of a revision; nothing is studied for them. */
    @GetMapping("/v1/projects/{id}/revisions/{number}/overview")
    RevisionOverview getRevisionOverview(@PathVariable UUID id, @PathVariable int number) {
        Revision found = reader.find(id, number);
        List<Label> labels = labelling.of(id, List.of(number)).getOrDefault(number, List.of());
        return Overviews.of(id, RevisionSummary.of(found.entry(), labels), Documents.tree(found.document()));
    }
}
