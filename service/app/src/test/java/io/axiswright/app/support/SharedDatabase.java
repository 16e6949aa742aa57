package io.axiswright.app.support;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.EnvironmentPostProcessor;
import org.springframework.boot.SpringApplication;
import org.springframework.core.env.ConfigurableEnvironment;
import org.springframework.core.env.PropertySource;

/**
 * Gives every application started in a test JVM the same PostgreSQL server on a temporary directory, started when the
 * first one asks for it. Durability off: it is thrown away anyway.
 */
public final class SharedDatabase implements EnvironmentPostProcessor {

    private static final String URL = "spring.datasource.url";

    @Override
    public void postProcessEnvironment(ConfigurableEnvironment environment, SpringApplication application) {
        environment.getPropertySources().addLast(new OnDemand());
    }

    private static final class Server {

        private static final EmbeddedPostgres RUNNING = start();

        private static EmbeddedPostgres start() {
            try {
                return EmbeddedPostgres.start();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private static final class OnDemand extends PropertySource<Object> {

        OnDemand() {
            super("shared test database", new Object());
        }

        @Override
        public @Nullable Object getProperty(String name) {
            return switch (name) {
                case URL -> Server.RUNNING.getJdbcUrl("postgres", "postgres");
                case "spring.datasource.username" -> "postgres";
                default -> null;
            };
        }
    }
}
