package io.axiswright.app.web;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.HttpMethod;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.ShallowEtagHeaderFilter;

/**
 * Gives every answer to a GET an entity tag, and answers 304 to whom holds it already (RFC 9110, 13.1.2). Where a handler has
 * set a tag it stands; the others are a digest of the answer's bytes.
 */
@Component
class ConditionalReads extends ShallowEtagHeaderFilter {

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        boolean ours = path.startsWith("/v1/")
                || path.equals("/problems")
                || path.startsWith("/problems/")
                || path.equals("/openapi.json");
        return !ours || !HttpMethod.GET.matches(request.getMethod());
    }
}
