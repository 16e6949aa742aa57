package io.axiswright.app.project;

import io.axiswright.app.catalogues.Catalogues;
import io.axiswright.app.problem.NotFound;
import io.axiswright.app.problem.PreconditionFailed;
import io.axiswright.app.problem.PreconditionRequired;
import io.axiswright.app.store.Attempts;
import io.axiswright.app.store.Documents;
import io.axiswright.app.store.Identifiers;
import io.axiswright.app.wire.Faults;
import io.axiswright.engine.finding.InvalidDesign;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
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

    /** A revision that is studied, but not stored yet. */
    private record Studied(Draft draft, StudyOutcome outcome) {}

    /**
     * Studies designs and stores them as the project's next revisions, each following the one before; all or none.
     *
     * @param named the head the first is to follow
     * @param drafts what they are to be, at least one; asked for once the head is found and is the one named
     * @param answer what is told about the revisions; made in the transaction that stores them
     * @throws NotFound if there is no such project or branch
     * @throws PreconditionRequired if there is no If-Match
     * @throws PreconditionFailed if the head is another one, now or once the study is done
     * @throws InvalidDesign if the request has no meaning; with the faults of all its designs
     */
    <T> T add(NamedHead named, Function<Branch, List<Draft>> drafts, Function<List<RevisionEntry>, T> answer) {
        Branch head = branching.find(named.project(), named.branch());
        head.tag().requireMatch(named.ifMatch());
        List<Studied> studied = study(drafts.apply(head));
        return attempts.write(() -> answer.apply(store(head, studied)));
    }

    private List<Studied> study(List<Draft> drafts) {
        List<Studied> studied = new ArrayList<>();
        var faults = new Faults();
        for (Draft draft : drafts) {
            try {
                studied.add(new Studied(draft, outcome(draft.content())));
            } catch (InvalidDesign e) {
                faults.addAll(draft.place(), e);
            }
        }
        faults.throwIfAny();
        return studied;
    }

    private StudyOutcome outcome(NewRevision content) {
        return study.study(
                content.codeBasis(), catalogues.require(content.catalogue(), "/catalogue"), content.design());
    }

    private List<RevisionEntry> store(Branch head, List<Studied> studied) {
        List<RevisionEntry> entries = new ArrayList<>();
        Link last = new Link(
                head.headNumber() == 0 ? null : head.headNumber(), head.tag().value());
        for (Studied next : studied) {
            RevisionEntry entry = store(head, last, next);
            entries.add(entry);
            last = new Link(entry.number(), entry.digest());
        }
        return entries;
    }

    /** What a revision follows: a number, null if it is the first of its project, and the head's digest. */
    private record Link(@Nullable Integer number, String digest) {}

    private RevisionEntry store(Branch branch, Link parent, Studied studied) {
        int number = projects.takeNumber(branch.projectId());
        RevisionDocument content = content(branch, parent.number(), number, studied);
        byte[] document = Documents.write(content);
        String digest = Documents.digest(document);
        if (branches.moveHead(branch.projectId(), branch.name(), parent.digest(), number, digest) == 0) {
            throw new PreconditionFailed(
                    branching.find(branch.projectId(), branch.name()).tag().quoted());
        }
        entities.persist(new Revision(identifiers.next(), content, digest, document));
        return RevisionEntry.of(content, digest);
    }

    private RevisionDocument content(Branch branch, @Nullable Integer parent, int number, Studied studied) {
        Draft draft = studied.draft();
        NewRevision asked = draft.content();
        StudyOutcome outcome = studied.outcome();
        return new RevisionDocument(
                branch.projectId(),
                number,
                branch.name(),
                parent,
                draft.restores(),
                clock.instant(),
                draft.madeAt(),
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
