package io.axiswright.app.project;

import io.axiswright.app.catalogues.Catalogues;
import io.axiswright.app.problem.NotFound;
import io.axiswright.app.problem.PreconditionFailed;
import io.axiswright.app.problem.PreconditionRequired;
import io.axiswright.app.store.Attempts;
import io.axiswright.app.store.Documents;
import io.axiswright.app.store.Identifiers;
import io.axiswright.app.web.EntityTag;
import io.axiswright.engine.finding.InvalidDesign;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/**
 * Adds revisions. The study, which refuses a design without meaning, runs outside any transaction; the write afterwards holds only if the head is still the one
 * the study was made for.
 */
@Service
class RevisionWriter {

    private final Projects projects;
    private final Catalogues catalogues;
    private final RevisionStudy study;
    private final EntityManager entities;
    private final Attempts attempts;
    private final Identifiers identifiers;
    private final Clock clock;

    RevisionWriter(
            Projects projects,
            Catalogues catalogues,
            RevisionStudy study,
            EntityManager entities,
            Attempts attempts,
            Identifiers identifiers,
            Clock clock) {
        this.projects = projects;
        this.catalogues = catalogues;
        this.study = study;
        this.entities = entities;
        this.attempts = attempts;
        this.identifiers = identifiers;
        this.clock = clock;
    }

    /**
     * Studies the design and stores it as the project's next revision.
     *
     * @param ifMatch the request's If-Match, which must name the project's head
     * @param answer what is told about the revision; made in the transaction that stores it
     * @throws NotFound if there is no such project
     * @throws PreconditionRequired if there is no If-Match
     * @throws PreconditionFailed if the head is another one, now or once the study is done
     * @throws InvalidDesign if the request has no meaning
     */
    <T> T add(UUID id, @Nullable String ifMatch, NewRevision request, Function<RevisionEntry, T> answer) {
        Project project = projects.findById(id).orElseThrow(() -> ProjectController.noProject(id));
        project.tag().requireMatch(ifMatch);
        StudyOutcome outcome = study.study(
                request.codeBasis(), catalogues.require(request.catalogue(), "/catalogue"), request.design());
        RevisionDocument content = content(project, request, outcome);
        byte[] document = Documents.write(content);
        String digest = Documents.digest(document);
        return attempts.write(() -> {
            store(project.tag(), content, digest, document);
            return answer.apply(RevisionEntry.of(content, digest));
        });
    }

    private void store(EntityTag seen, RevisionDocument content, String digest, byte[] document) {
        if (projects.moveHead(content.project(), seen.value(), digest) == 0) {
            throw new PreconditionFailed(
                    projects.findById(content.project()).orElseThrow().tag().quoted());
        }
        entities.persist(new Revision(identifiers.next(), content, digest, document));
    }

    private RevisionDocument content(Project project, NewRevision request, StudyOutcome outcome) {
        return new RevisionDocument(
                project.id(),
                project.headNumber() + 1,
                clock.instant(),
                request.message(),
                request.author(),
                request.codeBasis(),
                request.catalogue(),
                outcome.engineVersion(),
                outcome.buildable(),
                request.design(),
                outcome.result());
    }
}
