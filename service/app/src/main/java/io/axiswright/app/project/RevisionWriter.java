package io.axiswright.app.project;

import io.axiswright.app.catalogues.Catalogues;
import io.axiswright.app.problem.NotFound;
import io.axiswright.app.problem.PreconditionFailed;
import io.axiswright.app.problem.PreconditionRequired;
import io.axiswright.app.store.Attempts;
import io.axiswright.app.store.Documents;
import io.axiswright.app.store.Identifiers;
import io.axiswright.engine.finding.InvalidDesign;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/**
 * Adds revisions. The study, which refuses a design without meaning, runs outside any transaction; the write afterwards
 * holds only if the branch's head is still the one the study was made for.
 */
@Service
class RevisionWriter {

    private final Branching branching;
    private final Projects projects;
    private final Branches branches;
    private final Catalogues catalogues;
    private final RevisionStudy study;
    private final EntityManager entities;
    private final Attempts attempts;
    private final Identifiers identifiers;
    private final Clock clock;

    RevisionWriter(
            Branching branching,
            Projects projects,
            Branches branches,
            Catalogues catalogues,
            RevisionStudy study,
            EntityManager entities,
            Attempts attempts,
            Identifiers identifiers,
            Clock clock) {
        this.branching = branching;
        this.projects = projects;
        this.branches = branches;
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
     * @param answer what is told about the revision; made in the transaction that stores it
     * @throws NotFound if there is no such project or branch
     * @throws PreconditionRequired if there is no If-Match
     * @throws PreconditionFailed if the head is another one, now or once the study is done
     * @throws InvalidDesign if the request has no meaning
     */
    <T> T add(Addition addition, Function<RevisionEntry, T> answer) {
        Branch branch = branching.find(addition.project(), addition.branch());
        branch.tag().requireMatch(addition.ifMatch());
        Draft draft = addition.draft().apply(branch);
        NewRevision content = draft.content();
        StudyOutcome outcome = study.study(
                content.codeBasis(), catalogues.require(content.catalogue(), "/catalogue"), content.design());
        return attempts.write(() -> answer.apply(store(branch, draft, outcome)));
    }

    private RevisionEntry store(Branch seen, Draft draft, StudyOutcome outcome) {
        int number = projects.takeNumber(seen.projectId());
        RevisionDocument content = content(seen, draft, number, outcome);
        byte[] document = Documents.write(content);
        String digest = Documents.digest(document);
        if (branches.moveHead(seen.projectId(), seen.name(), seen.tag().value(), number, digest) == 0) {
            throw new PreconditionFailed(
                    branching.find(seen.projectId(), seen.name()).tag().quoted());
        }
        entities.persist(new Revision(identifiers.next(), content, digest, document));
        return RevisionEntry.of(content, digest);
    }

    private RevisionDocument content(Branch seen, Draft draft, int number, StudyOutcome outcome) {
        NewRevision asked = draft.content();
        @Nullable Integer parent = seen.headNumber() == 0 ? null : seen.headNumber();
        return new RevisionDocument(
                seen.projectId(),
                number,
                seen.name(),
                parent,
                draft.restores(),
                clock.instant(),
                asked.message(),
                asked.author(),
                asked.codeBasis(),
                asked.catalogue(),
                outcome.engineVersion(),
                outcome.buildable(),
                asked.design(),
                outcome.result());
    }
}
