package io.axiswright.app.project;

import io.axiswright.app.store.Attempts;
import io.axiswright.app.store.Documents;
import io.axiswright.app.store.Identifiers;
import io.axiswright.app.web.Texts;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Opens projects. */
@Service
class ProjectWriter {

    private final Projects projects;
    private final EntityManager entities;
    private final Attempts attempts;
    private final Documents documents;
    private final Identifiers identifiers;
    private final Clock clock;

    ProjectWriter(
            Projects projects,
            EntityManager entities,
            Attempts attempts,
            Documents documents,
            Identifiers identifiers,
            Clock clock) {
        this.projects = projects;
        this.entities = entities;
        this.attempts = attempts;
        this.documents = documents;
        this.identifiers = identifiers;
        this.clock = clock;
    }

    /**
     * Opens a project; a request sent again under the same key finds the one it opened the first time.
     *
     * @param key the request's Idempotency-Key, if it has one
     * @throws InvalidDesign if a text cannot be accepted, or the key stands for another request
     */
    Project open(NewProject request, @Nullable String key) {
        new Texts()
                .required("/name", request.name(), 200)
                .optional("/description", request.description(), 2000)
                .optional("", key, 200)
                .check();
        String digest = Documents.digest(documents.write(request));
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
            throw new InvalidDesign(List.of(new Fault(
                    "",
                    FaultCode.INCONSISTENT,
                    "this Idempotency-Key opened another project before",
                    "the same request again, or a new key")));
        }
    }
}
