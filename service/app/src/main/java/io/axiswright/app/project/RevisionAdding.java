package io.axiswright.app.project;

import io.axiswright.app.idempotency.Answer;
import io.axiswright.app.idempotency.IdempotencyKey;
import io.axiswright.app.idempotency.Once;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * The one way by which requests add revisions, by themselves, in a batch or as an imported history: here their preconditions
 * and idempotency keys are judged.
 */
@Component
class RevisionAdding {

    private final Once once;
    private final RevisionWriter writer;
    private final Drafting drafting;

    RevisionAdding(Once once, RevisionWriter writer, Drafting drafting) {
        this.once = once;
        this.writer = writer;
        this.drafting = drafting;
    }

    /**
     * Adds what a change makes of a branch's latest revision, and answers with it.
     *
     * @param body what was asked, in a form that is the same for what means the same
     * @param place where what the change consists of stands in the request, as a JSON Pointer
     */
    Answer add(@Nullable IdempotencyKey key, byte[] body, NamedHead head, HeadChange change, String place) {
        return add(key, body, head, present -> List.of(drafting.draft(present, change, place)), List::getFirst);
    }

    /** Adds revisions that follow each other, all or none, and answers with all of them; {@code body} as above. */
    Answer add(@Nullable IdempotencyKey key, byte[] body, NamedHead head, List<Draft> history) {
        return add(key, body, head, _ -> history, ImportedRevisions::new);
    }

    private Answer add(
            @Nullable IdempotencyKey key,
            byte[] body,
            NamedHead head,
            Function<Branch, List<Draft>> drafts,
            Function<List<RevisionSummary>, Object> told) {
        return once.answer(
                key,
                body,
                keeping -> writer.add(head, drafts, entries -> {
                    List<RevisionSummary> added = entries.stream()
                            .map(entry -> RevisionSummary.of(entry, List.of()))
                            .toList();
                    RevisionSummary latest = added.getLast();
                    return keeping.keep(Answer.created(latest.self(), latest.etag(), told.apply(added)));
                }));
    }
}
