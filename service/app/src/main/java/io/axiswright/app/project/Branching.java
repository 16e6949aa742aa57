package io.axiswright.app.project;

import io.axiswright.app.problem.Conflict;
import io.axiswright.app.problem.NotFound;
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
import org.springframework.stereotype.Service;

/** Makes branches and finds them. */
@Service
class Branching {

    private final Projects projects;
    private final Branches branches;
    private final Revisions revisions;
    private final EntityManager entities;
    private final Attempts attempts;
    private final Identifiers identifiers;
    private final Clock clock;

    Branching(
            Projects projects,
            Branches branches,
            Revisions revisions,
            EntityManager entities,
            Attempts attempts,
            Identifiers identifiers,
            Clock clock) {
        this.projects = projects;
        this.branches = branches;
        this.revisions = revisions;
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
     * @throws Conflict if there is a branch of that name
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
            Branch branch = Branch.from(identifiers.next(), request.name(), start, clock.instant());
            entities.persist(branch);
            return answer.apply(branch);
        });
    }
}
