package io.axiswright.app.project;

import io.axiswright.app.problem.Conflict;
import io.axiswright.app.problem.NotFound;
import io.axiswright.app.problem.PreconditionFailed;
import io.axiswright.app.problem.PreconditionRequired;
import io.axiswright.app.store.Attempts;
import io.axiswright.app.store.Identifiers;
import io.axiswright.app.web.ShortName;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Makes branches, finds and removes them. */
@Service
class Branching {

    private final Projects projects;
    private final Branches branches;
    private final Revisions revisions;
    private final RevisionLabels labels;
    private final EntityManager entities;
    private final Attempts attempts;
    private final Identifiers identifiers;
    private final Clock clock;

    Branching(
            Projects projects,
            Branches branches,
            Revisions revisions,
            RevisionLabels labels,
            EntityManager entities,
            Attempts attempts,
            Identifiers identifiers,
            Clock clock) {
        this.projects = projects;
        this.branches = branches;
        this.revisions = revisions;
        this.labels = labels;
        this.entities = entities;
        this.attempts = attempts;
        this.identifiers = identifiers;
        this.clock = clock;
    }

    /**
     * A project's branch.
     *
     * @throws NotFound if there is no such project or branch
     */
    Branch find(UUID project, String name) {
        return branches.find(project, name).orElseThrow(() -> missing(project, name));
    }

    private NotFound missing(UUID project, String name) {
        return projects.existsById(project)
                ? new NotFound("branch", name + " of project " + project)
                : ProjectController.noProject(project);
    }

    /**
     * Makes a branch.
     *
     * @param answer what is told about it; made in the transaction that makes it
     * @throws NotFound if there is no such project
     * @throws InvalidDesign if the name cannot be one, or there is no revision to set out from
     * @throws Conflict if there is a branch of that name, or was one to which revisions were added
     */
    <T> T make(UUID project, NewBranch request, Function<Branch, T> answer) {
        projects.require(project);
        if (!ShortName.isOne(request.name())) {
            throw new InvalidDesign(List.of(new Fault(
                    "/name",
                    FaultCode.UNKNOWN_VALUE,
                    "\"" + request.name() + "\" cannot stand in an address.",
                    ShortName.ACCEPTED)));
        }
        return attempts.write(() -> {
            RevisionEntry start = revisions
                    .entry(project, request.start())
                    .orElseThrow(() -> RevisionReader.noSuch("/start", request.start()));
            if (branches.find(project, request.name()).isPresent()) {
                throw new Conflict("The project has a branch " + request.name() + " already.");
            }
            if (revisions.anyOf(project, request.name())) {
                throw new Conflict("The project has revisions of a branch " + request.name() + " that was removed.");
            }
            Branch branch = Branch.from(identifiers.next(), request.name(), start, clock.instant());
            entities.persist(branch);
            return answer.apply(branch);
        });
    }

    /**
     * Removes a branch; the revisions added to it stay in the project.
     *
     * @param ifMatch the request's If-Match, which must name the branch's head
     * @throws NotFound if there is no such project or branch
     * @throws PreconditionRequired if there is no If-Match
     * @throws PreconditionFailed if the head is another one
     * @throws Conflict if it is the main branch, or a revision added to it bears a label
     */
    void remove(UUID project, String name, @Nullable String ifMatch) {
        attempts.write(() -> {
            Branch branch = find(project, name);
            branch.tag().requireMatch(ifMatch);
            requireRemovable(branch);
            if (branches.remove(project, name, branch.tag().value()) == 0) {
                throw new PreconditionFailed(find(project, name).tag().quoted());
            }
            return branch;
        });
    }

    private void requireRemovable(Branch branch) {
        if (branch.name().equals(Branch.MAIN)) {
            throw new Conflict("The branch main stays as long as its project.");
        }
        List<Integer> numbers = labels.lockAll(branch.projectId(), branch.name());
        List<RevisionLabel> present = numbers.isEmpty() ? List.of() : labels.of(branch.projectId(), numbers);
        if (!present.isEmpty()) {
            String which = present.stream()
                    .map(label -> label.number() + " (" + label.label().name() + ")")
                    .collect(Collectors.joining(", "));
            throw new Conflict("Revisions of branch " + branch.name() + " bear labels: " + which + ".");
        }
    }
}
