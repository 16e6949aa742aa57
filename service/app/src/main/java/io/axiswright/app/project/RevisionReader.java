package io.axiswright.app.project;

import io.axiswright.app.catalogues.CatalogueReference;
import io.axiswright.app.problem.NotFound;
import io.axiswright.app.store.Documents;
import io.axiswright.app.web.EntityTag;
import io.axiswright.app.wire.RecordReader;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Service;
import tools.jackson.databind.JsonNode;

/** Reads stored revisions back for whoever works on with them, such as a comparison. */
@Service
public class RevisionReader {

    private final Revisions revisions;

    RevisionReader(Revisions revisions) {
        this.revisions = revisions;
    }

    /**
     * A project's revision.
     *
     * @throws NotFound if there is no such project or revision
     */
    public StoredRevision read(UUID project, int number) {
        return stored(find(project, number));
    }

    /** A project's revision; empty if there is none. */
    Optional<StoredRevision> lookUp(UUID project, int number) {
        return revisions.find(project, number).map(RevisionReader::stored);
    }

    private static StoredRevision stored(Revision found) {
        JsonNode document = Documents.tree(found.document());
        return new StoredRevision(
                found.number(),
                new EntityTag(found.digest()).quoted(),
                Instant.parse(document.required("createdAt").asString()),
                CodeBasis.valueOf(document.required("codeBasis").asString()),
                RecordReader.read(document.required("catalogue"), CatalogueReference.class),
                RecordReader.read(document.required("design"), Design.class),
                document.required("result"));
    }

    Revision find(UUID project, int number) {
        return revisions.find(project, number).orElseThrow(() -> noRevision(project, number));
    }

    /** A request names a revision that the project has not. */
    static InvalidDesign noSuch(String pointer, int number) {
        return new InvalidDesign(List.of(new Fault(
                pointer,
                FaultCode.DANGLING_REFERENCE,
                "The project has no revision " + number + ".",
                "the number of a revision of the project")));
    }

    static NotFound noRevision(UUID project, int number) {
        return new NotFound("revision", number + " of project " + project);
    }
}
