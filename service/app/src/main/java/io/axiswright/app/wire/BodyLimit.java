package io.axiswright.app.wire;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.util.unit.DataSize;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.servlet.HandlerExceptionResolver;

/**
 * Refuses bodies above a size: at once where the size is announced, while reading where it is not. Batches have a limit of their
 * own, because they are not held as a whole.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 100)
class BodyLimit extends OncePerRequestFilter {

    private static final String BATCH = ":batch";

    private final long single;
    private final long batch;
    private final HandlerExceptionResolver problems;

    BodyLimit(
            @Value("${axiswright.wire.body-limit:4MB}") DataSize single,
            @Value("${axiswright.wire.batch-limit:64MB}") DataSize batch,
            @Qualifier("handlerExceptionResolver") HandlerExceptionResolver problems) {
        this.single = single.toBytes();
        this.batch = batch.toBytes();
        this.problems = problems;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        long limit = request.getServletPath().endsWith(BATCH) ? batch : single;
        if (request.getContentLengthLong() > limit) {
            problems.resolveException(request, response, null, new BodyTooLarge(limit));
            return;
        }
        chain.doFilter(new Limited(request, limit), response);
    }

    private static final class Limited extends HttpServletRequestWrapper {

        private final long limit;
        private @Nullable ServletInputStream stream;

        Limited(HttpServletRequest request, long limit) {
            super(request);
            this.limit = limit;
        }

        @Override
        public ServletInputStream getInputStream() throws IOException {
            ServletInputStream known = stream;
            if (known == null) {
                known = new CountedStream(super.getInputStream(), limit);
                stream = known;
            }
            return known;
        }
    }
}
