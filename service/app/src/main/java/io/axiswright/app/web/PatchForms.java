package io.axiswright.app.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpServletResponseWrapper;
import java.io.IOException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Leaves {@code Accept-Patch} out of answers to OPTIONS where there is nothing to patch: Spring sends it empty, and wherever it
 * stands it says that PATCH is allowed (RFC 5789, 3.1).
 */
@Component
class PatchForms extends OncePerRequestFilter {

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return !HttpMethod.OPTIONS.matches(request.getMethod());
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        chain.doFilter(request, new HttpServletResponseWrapper(response) {
            @Override
            public void addHeader(String name, String value) {
                if (!name.equalsIgnoreCase(HttpHeaders.ACCEPT_PATCH) || !value.isBlank()) {
                    super.addHeader(name, value);
                }
            }
        });
    }
}
