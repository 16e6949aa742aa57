package io.axiswright.app.problem;

import io.axiswright.app.wire.RecordWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.tomcat.ConfigurableTomcatWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;

/** What the container refuses before the application sees it (a path with %00) is answered as a problem too. */
@Component
class ContainerRefusals implements WebServerFactoryCustomizer<ConfigurableTomcatWebServerFactory> {

    @Override
    public void customize(ConfigurableTomcatWebServerFactory factory) {
        // added last it stands innermost, and answers before the container's own page of HTML
        factory.addContextCustomizers(
                context -> context.getParent().getPipeline().addValve(new ProblemValve()));
    }

    private static final class ProblemValve extends ErrorReportValve {

        @Override
        protected void report(Request request, Response response, @Nullable Throwable throwable) {
            int status = response.getStatus();
            if (status < 400 || response.getContentWritten() > 0 || !response.setErrorReported()) {
                return;
            }
            ProblemKind kind = ProblemKind.ofStatus(status);
            Problem problem = Problem.of(kind, status, kind.description(), request.getRequestURI(), List.of());
            try {
                response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
                response.setCharacterEncoding(StandardCharsets.UTF_8);
                response.getReporter().write(new String(RecordWriter.write(problem), StandardCharsets.UTF_8));
                response.finishResponse();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
