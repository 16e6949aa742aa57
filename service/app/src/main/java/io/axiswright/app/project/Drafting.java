package io.axiswright.app.project;

import io.axiswright.app.patch.JsonPatch;
import io.axiswright.app.patch.MergePatch;
import io.axiswright.app.problem.Conflict;
import io.axiswright.app.store.Documents;
import io.axiswright.app.wire.RecordReader;
import io.axiswright.engine.finding.InvalidDesign;
import org.springframework.stereotype.Component;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Works out what the next revision of a branch is to be. */
@Component
class Drafting {

    private final RevisionReader reader;

    Drafting(RevisionReader reader) {
        this.reader = reader;
    }

    /**
     * What a change makes of a branch's latest revision.
     *
     * @param place where what the change consists of stands in the request, as a JSON Pointer; faults of what came of a patch
     *     point into that, because they stand nowhere in the request
     * @throws InvalidDesign if the change has no meaning
     * @throws Conflict if there is nothing to patch, or a test of a patch fails
     */
    Draft draft(Branch head, HeadChange change, String place) {
        return switch (change) {
            case WholeRevision whole -> Draft.of(whole.revision(), place);
            case MergePatchOfHead merge -> patched(MergePatch.apply(latest(head), merge.patch()));
            case JsonPatchOfHead operations -> patched(patch(latest(head), operations.patch(), place));
            case RestoredRevision restored -> restored(head, restored.restoration(), place);
        };
    }

    private static JsonNode patch(ObjectNode target, JsonNode operations, String place) {
        try {
            return JsonPatch.apply(target, operations);
        } catch (InvalidDesign e) {
            throw e.under(place);
        }
    }

    private static Draft patched(JsonNode result) {
        return Draft.of(RecordReader.read(result, NewRevision.class), "");
    }

    /** What the latest revision was made from, without its author and message: those of the next one are its own. */
    private ObjectNode latest(Branch head) {
        if (head.headNumber() == 0) {
            throw new Conflict("Branch " + head.name() + " has no revision yet.");
        }
        JsonNode document =
                Documents.tree(reader.find(head.projectId(), head.headNumber()).document());
        ObjectNode target = JsonMapper.shared().createObjectNode();
        for (String member : new String[] {"codeBasis", "catalogue", "design"}) {
            target.set(member, document.required(member));
        }
        return target;
    }

    private Draft restored(Branch head, Restoration asked, String place) {
        StoredRevision old = reader.lookUp(head.projectId(), asked.number())
                .orElseThrow(() -> RevisionReader.noSuch(place + "/number", asked.number()));
        var content = new NewRevision(asked.message(), asked.author(), old.codeBasis(), old.catalogue(), old.design());
        return new Draft(content, old.number(), null, place);
    }
}
