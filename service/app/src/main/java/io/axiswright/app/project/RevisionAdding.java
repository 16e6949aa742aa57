package io.axiswright.app.project;

import io.axiswright.app.idempotency.Answer;
import io.axiswright.app.idempotency.IdempotencyKey;
import io.axiswright.app.idempotency.Once;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;

/** The one way by which requests add revisions, whatever they are made from. */
@Component
class RevisionAdding {

    private final Once once;
    private final RevisionWriter writer;

    RevisionAdding(Once once, RevisionWriter writer) {
        this.once = once;
        this.writer = writer;
    }

    /**
     * Adds a revision and answers with it.
     *
     * @param body the request's body, in a form that is the same for what means the same
     */
    ResponseEntity<byte[]> add(@Nullable IdempotencyKey key, byte[] body, Addition addition) {
        return once.answer(key, body, keeping -> writer.add(addition, entry -> keeping.keep(answer(entry))));
    }

    private static Answer answer(RevisionEntry entry) {
        RevisionSummary added = RevisionSummary.of(entry, List.of());
        return Answer.created(added.self(), added.etag(), added);
    }
}
