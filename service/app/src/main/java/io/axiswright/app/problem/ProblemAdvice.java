package io.axiswright.app.problem;

import io.axiswright.engine.finding.InvalidDesign;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.HttpMediaTypeNotAcceptableException;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.context.request.ServletWebRequest;
import org.springframework.web.context.request.WebRequest;
import org.springframework.web.servlet.mvc.method.annotation.ResponseEntityExceptionHandler;

/** Turns whatever a request ends in into a {@link Problem}. */
@RestControllerAdvice
class ProblemAdvice extends ResponseEntityExceptionHandler {

    @ExceptionHandler
    ResponseEntity<Problem> invalidDesign(InvalidDesign e, ServletWebRequest request) {
        return answer(e, HttpHeaders.EMPTY, request);
    }

    @ExceptionHandler
    ResponseEntity<Problem> failure(Failure e, ServletWebRequest request) {
        return answer(e, e.headers(), request);
    }

    @ExceptionHandler
    ResponseEntity<Problem> unforeseen(Exception e, ServletWebRequest request) {
        return answer(e, HttpHeaders.EMPTY, request);
    }

    /** Spring's own failures come through here, with status and headers already chosen. */
    @Override
    protected @Nullable ResponseEntity<Object> handleExceptionInternal(
            Exception e, @Nullable Object body, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        var web = (ServletWebRequest) request;
        if (web.getResponse() != null && web.getResponse().isCommitted()) {
            return null;
        }
        if (status.value() == 500) {
            return untyped(answer(e, HttpHeaders.EMPTY, web));
        }
        SpringFailure failure = SpringFailure.of(e, status);
        var problem =
                Problem.of(failure.kind(), failure.kind().status(), failure.detail(), path(web), failure.errors());
        return untyped(answer(problem, headers(e, headers), web));
    }

    /** What Spring would send along; Accept speaks of requests, so a refused answer has none (RFC 9110, 12.5.1). */
    private static HttpHeaders headers(Exception e, HttpHeaders headers) {
        return switch (e) {
            case HttpMediaTypeNotAcceptableException _ -> HttpHeaders.EMPTY;
            case HttpRequestMethodNotSupportedException method -> allowed(method.getSupportedHttpMethods());
            default -> headers;
        };
    }

    /** With the methods that are served wherever there is anything (RFC 9110, 10.2.1). */
    private static HttpHeaders allowed(@Nullable Set<HttpMethod> stated) {
        Set<HttpMethod> methods = new TreeSet<>(stated == null ? Set.of() : stated);
        if (methods.contains(HttpMethod.GET)) {
            methods.add(HttpMethod.HEAD);
        }
        methods.add(HttpMethod.OPTIONS);
        var headers = new HttpHeaders();
        headers.setAllow(methods);
        return headers;
    }

    private static ResponseEntity<Problem> answer(Exception e, HttpHeaders headers, ServletWebRequest request) {
        return answer(Problems.of(e, String.valueOf(request.getHttpMethod()), path(request)), headers, request);
    }

    private static ResponseEntity<Problem> answer(Problem problem, HttpHeaders headers, ServletWebRequest request) {
        if (request.getResponse() != null && !request.getResponse().isCommitted()) {
            // what was said already was said of an answer that is not given: its tag, its place
            request.getResponse().reset();
        }
        return ResponseEntity.status(problem.status())
                .headers(headers)
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(problem);
    }

    private static String path(ServletWebRequest request) {
        return request.getRequest().getRequestURI();
    }

    private static ResponseEntity<Object> untyped(ResponseEntity<Problem> answer) {
        return new ResponseEntity<>(answer.getBody(), answer.getHeaders(), answer.getStatusCode());
    }
}
