package io.axiswright.app.web;

import io.axiswright.app.problem.Failure;
import io.axiswright.app.problem.ProblemError;
import io.axiswright.app.problem.ProblemKind;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.lang.annotation.Annotation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.springframework.core.MethodParameter;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.util.UriComponentsBuilder;

/**
 * Refuses parameters of paths and queries that an operation does not declare, and parameters and headers given more than once: a misspelt
 * {@code brunch=trial} left unread would store on the main branch what was meant for another.
 */
final class DeclaredParameters implements HandlerInterceptor {

    private static final String OURS = "io.axiswright.";

    @Override
    public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
        if (handler instanceof HandlerMethod method
                && method.getBeanType().getName().startsWith(OURS)) {
            List<ProblemError> errors = new ArrayList<>(pathParameters(request));
            errors.addAll(parameters(request, method));
            errors.addAll(headers(request, method));
            if (!errors.isEmpty()) {
                throw new Failure(
                        ProblemKind.INVALID_PARAMETER, errors.getFirst().detail(), errors);
            }
        }
        return true;
    }

    /** Of what stands behind a semicolon in a path (RFC 3986, 3.3) nothing is read. */
    private static List<ProblemError> pathParameters(HttpServletRequest request) {
        String path = request.getRequestURI();
        int start = path.indexOf(';');
        if (start < 0) {
            return List.of();
        }
        String name = path.substring(start + 1).split("[=;/]", 2)[0];
        return List.of(ProblemError.ofParameter(
                name, "UNKNOWN", "Paths here have no parameter " + name + ".", "a path without semicolons"));
    }

    private static List<ProblemError> parameters(HttpServletRequest request, HandlerMethod method) {
        String query = request.getQueryString();
        if (query == null || query.isEmpty()) {
            return List.of();
        }
        var declared = new TreeSet<String>();
        declared(method, RequestParam.class).map(DeclaredParameters::name).forEach(declared::add);
        String accepted = declared.isEmpty() ? "no query parameter" : String.join(", ", declared);
        MultiValueMap<String, String> sent =
                UriComponentsBuilder.newInstance().query(query).build().getQueryParams();
        return sent.entrySet().stream()
                .<ProblemError>mapMulti((entry, errors) -> {
                    String name = entry.getKey();
                    if (!declared.contains(name)) {
                        errors.accept(ProblemError.ofParameter(
                                name, "UNKNOWN", "This operation has no parameter " + name + ".", accepted));
                    } else if (entry.getValue().size() > 1) {
                        errors.accept(ProblemError.ofParameter(
                                name, "REPEATED", "There is more than one " + name + ".", "one"));
                    }
                })
                .toList();
    }

    /** A header that is read as a text may come in several fields, which are one list (RFC 9110, 5.3). */
    private static List<ProblemError> headers(HttpServletRequest request, HandlerMethod method) {
        return declared(method, RequestHeader.class)
                .filter(parameter -> parameter.getParameterType() != String.class)
                .map(parameter -> Objects.requireNonNull(parameter.getParameterAnnotation(RequestHeader.class))
                        .name())
                .filter(name -> Collections.list(request.getHeaders(name)).size() > 1)
                .map(name -> ProblemError.ofHeader(name, "REPEATED", "There is more than one " + name + ".", "one"))
                .toList();
    }

    private static Stream<MethodParameter> declared(HandlerMethod method, Class<? extends Annotation> annotation) {
        return Arrays.stream(method.getMethodParameters()).filter(p -> p.hasParameterAnnotation(annotation));
    }

    private static String name(MethodParameter parameter) {
        return parameter.getParameter().getName();
    }
}
