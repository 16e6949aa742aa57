package io.axiswright.app.web;

import io.axiswright.app.problem.Failure;
import io.axiswright.app.problem.ProblemError;
import io.axiswright.app.problem.ProblemKind;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Collections;
import java.util.List;
import org.springframework.http.HttpHeaders;
import org.springframework.web.servlet.HandlerInterceptor;

/** Refuses bodies in a content coding, which nobody here undoes (RFC 9110, 8.4 and 15.5.16). */
final class ContentCodings implements HandlerInterceptor {

    private static final String NONE = "identity";

    @Override
    public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
        String codings = String.join(", ", Collections.list(request.getHeaders(HttpHeaders.CONTENT_ENCODING)));
        if (codings.isEmpty() || codings.equalsIgnoreCase(NONE)) {
            return true;
        }
        String detail = "Bodies are read as they are, not in the coding " + codings + ".";
        var error = ProblemError.ofHeader(HttpHeaders.CONTENT_ENCODING, "UNKNOWN", detail, NONE);
        var failure = new Failure(ProblemKind.UNSUPPORTED_MEDIA_TYPE, detail, List.of(error));
        failure.headers().set(HttpHeaders.ACCEPT_ENCODING, NONE);
        throw failure;
    }
}
