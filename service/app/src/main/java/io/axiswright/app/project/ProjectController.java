package io.axiswright.app.project;

import io.axiswright.app.idempotency.Answer;
import io.axiswright.app.idempotency.IdempotencyKey;
import io.axiswright.app.idempotency.Once;
import io.axiswright.app.openapi.Fails;
import io.axiswright.app.problem.NotFound;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.store.Documents;
import io.axiswright.app.web.Cursor;
import io.axiswright.app.web.Limit;
import io.axiswright.app.web.Page;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Projects over HTTP. */
@RestController
@RequestMapping("/v1/projects")
class ProjectController {

    private static final UUID START = new UUID(0, 0);

    private final Once once;
    private final ProjectWriter writer;
    private final Projects projects;

    ProjectController(Once once, ProjectWriter writer, Projects projects) {
        this.once = once;
        this.writer = writer;
        this.projects = projects;
    }

    /** Opens a project. */
    @PostMapping(produces = MediaType.APPLICATION_JSON_VALUE)
    @ApiResponse(responseCode = "200", content = @Content(schema = @Schema(implementation = ProjectSummary.class)))
    @Fails({ProblemKind.CONFLICT, ProblemKind.IDEMPOTENCY_KEY_REUSED})
    ResponseEntity<byte[]> openProject(
            @RequestBody NewProject request,
            @RequestHeader(name = IdempotencyKey.HEADER, required = false) @Nullable IdempotencyKey key) {
        return once.answer(
                        key,
                        Documents.write(request),
                        keeping -> writer.open(request, project -> {
                            ProjectSummary opened = ProjectSummary.of(project);
                            return keeping.keep(Answer.created(opened.self(), opened.etag(), opened));
                        }))
                .entity();
    }

    /** All projects, in the order they were opened. */
    @GetMapping
    ResponseEntity<Page<ProjectSummary>> listProjects(
            @RequestParam(required = false) @Nullable Cursor cursor,
            @RequestParam(defaultValue = Limit.DEFAULT) Limit limit) {
        var rows = projects.after(cursor == null ? START : cursor.position(), limit.plusOne());
        return Page.of(rows, limit, entry -> new Cursor(entry.project().id()), ProjectSummary::of)
                .answer();
    }

    /** A project; its ETag is what the next revision names in If-Match. */
    @GetMapping("/{id}")
    ResponseEntity<ProjectSummary> getProject(@PathVariable UUID id) {
        ProjectSummary found = projects.find(id).map(ProjectSummary::of).orElseThrow(() -> noProject(id));
        return ResponseEntity.ok().eTag(found.etag()).body(found);
    }

    static NotFound noProject(UUID id) {
        return new NotFound("project", id);
    }
}
