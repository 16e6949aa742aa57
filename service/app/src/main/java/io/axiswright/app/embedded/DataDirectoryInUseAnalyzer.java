package io.axiswright.app.embedded;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says at start-up what to do about a data directory in use, instead of a stack trace. */
final class DataDirectoryInUseAnalyzer extends AbstractFailureAnalyzer<DataDirectoryInUse> {

    @Override
    protected FailureAnalysis analyze(Throwable rootFailure, DataDirectoryInUse cause) {
        return new FailureAnalysis(
                cause.getMessage(),
                "Stop the other service, or give this one a directory of its own with --axiswright.data-directory=<path>,"
                        + " or a database with --spring.datasource.url=jdbc:postgresql://<host>/<database>.",
                cause);
    }
}
