package io.axiswright.app.embedded;

import java.nio.file.Path;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Conditional;
import org.springframework.context.annotation.Configuration;

/**
 * Starts a PostgreSQL server of our own and points the connection pool at it. The pool hangs on the connection details
 * and these on the server, so that Spring stops the server last, when no request needs it any more.
 */
@Configuration(proxyBeanMethods = false)
@Conditional(NoDatabaseConfigured.class)
class EmbeddedDatabaseConfiguration {

    @Bean(destroyMethod = "close")
    EmbeddedServer embeddedServer(
            @Value("${axiswright.data-directory}") Path directory,
            @Value("${axiswright.binaries-directory}") Path binaries) {
        return EmbeddedServer.start(directory, binaries);
    }

    @Bean
    JdbcConnectionDetails embeddedConnectionDetails(EmbeddedServer server) {
        return new EmbeddedConnectionDetails(server.jdbcUrl());
    }

    /** Where the server listens; it trusts whoever reaches it, and only this machine does. */
    private record EmbeddedConnectionDetails(String getJdbcUrl) implements JdbcConnectionDetails {

        @Override
        public String getUsername() {
            return EmbeddedServer.USER;
        }

        @Override
        public String getPassword() {
            return "";
        }
    }
}
