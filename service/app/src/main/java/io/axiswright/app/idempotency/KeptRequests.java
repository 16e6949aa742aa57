package io.axiswright.app.idempotency;

import io.axiswright.app.problem.Failure;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.store.Attempts;
import java.net.URI;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.http.HttpHeaders;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The requests with keys: those being worked on, and the answers of those that are done. */
@Component
class KeptRequests {

    /** How long an answer is kept; stated in the API document. */
    private static final Duration KEPT = Duration.ofHours(24);

    private final JdbcClient database;
    private final Attempts attempts;
    private final Clock clock;
    private final Duration patience;

    /**
     * @param patience how long a request may be worked on before another of its key may take over; the first, should it
     *     still come to its end, then has no effect
     */
    KeptRequests(
            JdbcClient database,
            Attempts attempts,
            Clock clock,
            @Value("${axiswright.idempotency.patience:60s}") Duration patience) {
        this.database = database;
        this.attempts = attempts;
        this.clock = clock;
        this.patience = patience;
    }

    /** A row as stored; without an answer while the request is being worked on. */
    private record Row(String fingerprint, @Nullable Answer answer) {

        static Row of(ResultSet row, int number) throws SQLException {
            int status = row.getInt("status");
            Answer answer = row.wasNull()
                    ? null
                    : new Answer(
                            status, URI.create(row.getString("location")), row.getString("etag"), row.getBytes("body"));
            return new Row(row.getString("fingerprint"), answer);
        }
    }

    /**
     * Claims a key for a request that is about to be worked on.
     *
     * @return the answer if the request was done before; empty if the key is claimed now
     * @throws Failure if the key belongs to another request, or the request is being worked on
     */
    Optional<Answer> claim(IdempotencyKey key, String fingerprint, UUID claim) {
        if (attempts.write(() -> insert(key, fingerprint, claim))) {
            return Optional.empty();
        }
        // gone again means that the other one failed this moment
        Row row = find(key).orElseThrow(this::inProgress);
        if (!row.fingerprint().equals(fingerprint)) {
            throw new Failure(
                    ProblemKind.IDEMPOTENCY_KEY_REUSED, "This Idempotency-Key came with another request before.");
        }
        if (row.answer() == null) {
            throw inProgress();
        }
        return Optional.of(row.answer());
    }

    private boolean insert(IdempotencyKey key, String fingerprint, UUID claim) {
        Instant now = clock.instant();
        database.sql("delete from idempotent_request where expires_at <= :now")
                .param("now", now.atOffset(ZoneOffset.UTC))
                .update();
        return database.sql("""
                                insert into idempotent_request (key, fingerprint, claim, expires_at)
                                values (:key, :fingerprint, :claim, :expiry) on conflict (key) do nothing""")
                        .param("key", key.value())
                        .param("fingerprint", fingerprint)
                        .param("claim", claim)
                        .param("expiry", now.plus(patience).atOffset(ZoneOffset.UTC))
                        .update()
                == 1;
    }

    private Optional<Row> find(IdempotencyKey key) {
        return database.sql("select * from idempotent_request where key = :key")
                .param("key", key.value())
                .query(Row::of)
                .optional();
    }

    /**
     * Keeps the answer of a claimed request; joins the transaction of its effect.
     *
     * @throws Failure if another request has taken over, so that this one must have no effect
     */
    Answer keep(IdempotencyKey key, UUID claim, Answer answer) {
        int kept = database.sql("""
                        update idempotent_request
                        set status = :status, location = :location, etag = :etag, body = :body, expires_at = :expiry
                        where key = :key and claim = :claim""")
                .param("status", answer.status())
                .param("location", answer.location().toString())
                .param("etag", answer.etag())
                .param("body", answer.body())
                .param("expiry", clock.instant().plus(KEPT).atOffset(ZoneOffset.UTC))
                .param("key", key.value())
                .param("claim", claim)
                .update();
        if (kept == 0) {
            throw inProgress();
        }
        return answer;
    }

    /** Gives up a claim that led to nothing; one that did, though the caller could not be told, stays. */
    void release(IdempotencyKey key, UUID claim) {
        database.sql("delete from idempotent_request where key = :key and claim = :claim and status is null")
                .param("key", key.value())
                .param("claim", claim)
                .update();
    }

    private Failure inProgress() {
        var failure = new Failure(
                ProblemKind.REQUEST_IN_PROGRESS, "The request with this Idempotency-Key is still being worked on.");
        failure.headers().set(HttpHeaders.RETRY_AFTER, "1");
        return failure;
    }
}
