package io.axiswright.app.project;

import io.axiswright.app.idempotency.Answer;
import io.axiswright.app.idempotency.IdempotencyKey;
import io.axiswright.app.idempotency.Once;
import io.axiswright.app.openapi.Fails;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.store.Documents;
import io.axiswright.app.web.Cursor;
import io.axiswright.app.web.Limit;
import io.axiswright.app.web.Page;
import io.axiswright.app.web.ShortName;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** A project's branches over HTTP. */
@RestController
@RequestMapping("/v1/projects/{id}/branches")
class BranchController {

    private static final UUID START = new UUID(0, 0);

    private final Once once;
    private final Branching branching;
    private final Projects projects;
    private final Branches branches;

    BranchController(Once once, Branching branching, Projects projects, Branches branches) {
        this.once = once;
        this.branching = branching;
        this.projects = projects;
        this.branches = branches;
    }

    /** Makes a branch that sets out from a revision. */
    @PostMapping(produces = MediaType.APPLICATION_JSON_VALUE)
    @ApiResponse(responseCode = "200", content = @Content(schema = @Schema(implementation = BranchSummary.class)))
    @Fails({ProblemKind.CONFLICT, ProblemKind.IDEMPOTENCY_KEY_REUSED})
    ResponseEntity<byte[]> makeBranch(
            @PathVariable UUID id,
            @RequestHeader(name = IdempotencyKey.HEADER, required = false) @Nullable IdempotencyKey key,
            @RequestBody NewBranch request) {
        return once.answer(
                        key,
                        Documents.write(request),
                        keeping -> branching.make(id, request, branch -> {
                            BranchSummary made = BranchSummary.of(branch);
                            return keeping.keep(Answer.created(made.self(), made.etag(), made));
                        }))
                .entity();
    }

    /** The branches, in the order they were made. */
    @GetMapping
    ResponseEntity<Page<BranchSummary>> listBranches(
            @PathVariable UUID id,
            @RequestParam(required = false) @Nullable Cursor cursor,
            @RequestParam(defaultValue = Limit.DEFAULT) Limit limit) {
        projects.require(id);
        var rows = branches.after(id, cursor == null ? START : cursor.position(), limit.plusOne());
        return Page.of(rows, limit, branch -> new Cursor(branch.id()), BranchSummary::of)
                .answer();
    }

    /** A branch; its ETag is what the next revision on it names in If-Match. */
    @GetMapping("/{branch}")
    ResponseEntity<BranchSummary> getBranch(@PathVariable UUID id, @PathVariable ShortName branch) {
        BranchSummary found = BranchSummary.of(branching.find(id, branch.value()));
        return ResponseEntity.ok().eTag(found.etag()).body(found);
    }

    /** Removes a branch if If-Match names its present ETag; its revisions stay. */
    @DeleteMapping("/{branch}")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    @ApiResponse(responseCode = "200")
    @Fails({ProblemKind.CONFLICT, ProblemKind.PRECONDITION_FAILED, ProblemKind.PRECONDITION_REQUIRED})
    void removeBranch(
            @PathVariable UUID id,
            @PathVariable ShortName branch,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch) {
        branching.remove(id, branch.value(), ifMatch);
    }
}
