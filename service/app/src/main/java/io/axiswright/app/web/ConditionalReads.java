package io.axiswright.app.web;

import io.axiswright.app.store.Documents;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Collections;
import java.util.Objects;
import java.util.Set;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.util.ContentCachingResponseWrapper;

/**
 * Gives every answer to a GET, and so to a HEAD, an entity tag, and answers 304 to whom holds one already (RFC 9110, 9.3.2 and
 * 13.1.2). Where a handler has set a tag it stands; the others are a digest of the answer's bytes. What no handler lets be kept is
 * asked for again before it is used.
 */
@Component
class ConditionalReads extends OncePerRequestFilter {

    private static final Set<String> READS = Set.of(HttpMethod.GET.name(), HttpMethod.HEAD.name());

    /** Spring finds out by itself that a tag set by a handler is held. */
    private static final Set<Integer> ANSWERED = Set.of(HttpServletResponse.SC_OK, HttpServletResponse.SC_NOT_MODIFIED);

    /** So that no cache shows a list without what has been added since (RFC 9111, 5.2.2.4). */
    private static final String REVALIDATED =
            Objects.requireNonNull(CacheControl.noCache().cachePrivate().getHeaderValue());

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        boolean ours = path.startsWith("/v1/")
                || path.equals("/problems")
                || path.startsWith("/problems/")
                || path.equals("/openapi.json");
        return !ours || !READS.contains(request.getMethod());
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        var held = new ContentCachingResponseWrapper(response);
        chain.doFilter(request, held);
        if (ANSWERED.contains(held.getStatus()) && held.getHeader(HttpHeaders.CACHE_CONTROL) == null) {
            held.setHeader(HttpHeaders.CACHE_CONTROL, REVALIDATED);
        }
        if (held.getStatus() == HttpServletResponse.SC_OK) {
            EntityTag tag = tag(held);
            held.setHeader(HttpHeaders.ETAG, tag.quoted());
            if (tag.isHeldBy(Collections.list(request.getHeaders(HttpHeaders.IF_NONE_MATCH)))) {
                held.setStatus(HttpServletResponse.SC_NOT_MODIFIED);
                return;
            }
        }
        held.copyBodyToResponse();
    }

    private static EntityTag tag(ContentCachingResponseWrapper answer) {
        String own = answer.getHeader(HttpHeaders.ETAG);
        return own == null ? new EntityTag(Documents.digest(answer.getContentAsByteArray())) : EntityTag.ofQuoted(own);
    }
}
