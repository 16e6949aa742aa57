package io.axiswright.app.project;

import io.axiswright.app.store.Attempts;
import io.axiswright.app.store.Identifiers;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.function.Function;
import org.springframework.stereotype.Service;

/** Opens projects, each with its main branch. */
@Service
class ProjectWriter {

    private final EntityManager entities;
    private final Attempts attempts;
    private final Identifiers identifiers;
    private final Clock clock;

    ProjectWriter(EntityManager entities, Attempts attempts, Identifiers identifiers, Clock clock) {
        this.entities = entities;
        this.attempts = attempts;
        this.identifiers = identifiers;
        this.clock = clock;
    }

    /**
     * Opens a project.
     *
     * @param answer what is told about it; made in the transaction that opens it
     */
    <T> T open(NewProject request, Function<ProjectEntry, T> answer) {
        return attempts.write(() -> {
            var project = new Project(identifiers.next(), request, clock.instant());
            Branch main = Branch.main(identifiers.next(), project);
            entities.persist(project);
            entities.persist(main);
            return answer.apply(new ProjectEntry(project, main));
        });
    }
}
