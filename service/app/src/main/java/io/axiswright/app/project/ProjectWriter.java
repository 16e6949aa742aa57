package io.axiswright.app.project;

import io.axiswright.app.problem.Failure;
import io.axiswright.app.problem.ProblemError;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.store.Attempts;
import io.axiswright.app.store.Documents;
import io.axiswright.app.store.Identifiers;
import io.axiswright.engine.finding.FaultCode;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Opens projects. */
@Service
class ProjectWriter {

    private static final int LONGEST_KEY = 200;

    private final Projects projects;
    private final EntityManager entities;
    private final Attempts attempts;
    private final Identifiers identifiers;
    private final Clock clock;

    ProjectWriter(Projects projects, EntityManager entities, Attempts attempts, Identifiers identifiers, Clock clock) {
        this.projects = projects;
        this.entities = entities;
        this.attempts = attempts;
        this.identifiers = identifiers;
        this.clock = clock;
    }

    /**
     * Opens a project; a request sent again under the same key finds the one it opened the first time.
     *
     * @param key the request's Idempotency-Key, if it has one
     * @throws Failure if the key stands for another request or is too long
     */
    Project open(NewProject request, @Nullable String key) {
        if (key != null && key.length() > LONGEST_KEY) {
            throw longKey(key);
        }
        String digest = Documents.digest(Documents.write(request));
        return attempts.write(() -> {
            Project project = key == null
                    ? create(request, null, digest)
                    : projects.findByKey(key).orElseGet(() -> create(request, key, digest));
            requireSameRequest(project, digest);
            return project;
        });
    }

    private Project create(NewProject request, @Nullable String key, String digest) {
        var project = new Project(identifiers.next(), request, clock.instant(), key, digest);
        entities.persist(project);
        return project;
    }

    private static void requireSameRequest(Project project, String digest) {
        if (!project.requestDigest().equals(digest)) {
            throw new Failure(
                    ProblemKind.IDEMPOTENCY_KEY_REUSED, "This Idempotency-Key opened another project before.");
        }
    }

    private static Failure longKey(String key) {
        return new Failure(
                ProblemKind.INVALID_PARAMETER,
                "The Idempotency-Key is too long.",
                List.of(ProblemError.ofHeader(
                        "Idempotency-Key",
                        FaultCode.WRONG_COUNT.name(),
                        "The key has " + key.length() + " characters.",
                        "at most " + LONGEST_KEY + " characters")));
    }
}
