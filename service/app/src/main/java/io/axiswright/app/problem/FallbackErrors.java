package io.axiswright.app.problem;

import io.swagger.v3.oas.annotations.Hidden;
import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Failures that happen outside the handlers (filters, the container) come here as an error dispatch. */
@Hidden
@RestController
class FallbackErrors implements ErrorController {

    private static final Logger LOG = LoggerFactory.getLogger(FallbackErrors.class);

    @RequestMapping("${spring.web.error.path:/error}")
    ResponseEntity<Problem> problem(HttpServletRequest request) {
        // asked for directly, the path is as unknown as any other
        int status = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE) instanceof Integer code ? code : 404;
        ProblemKind kind = ProblemKind.ofStatus(status);
        String path =
                Objects.toString(request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI), request.getRequestURI());
        Problem problem = Problem.of(kind, status, kind.description(), path, List.of());
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(status >= 500 ? traced(problem, request) : problem);
    }

    private static Problem traced(Problem problem, HttpServletRequest request) {
        String id = UUID.randomUUID().toString();
        Object cause = request.getAttribute(RequestDispatcher.ERROR_EXCEPTION);
        LOG.error("{} failed, trace {}", problem.instance(), id, cause instanceof Throwable t ? t : null);
        return problem.traced(id);
    }
}
