package io.axiswright.app.embedded;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** A running PostgreSQL server on the loopback whose data outlive the process, even one killed hard. */
final class EmbeddedServer implements AutoCloseable {

    static final String USER = "postgres";

    private static final Logger LOG = LoggerFactory.getLogger(EmbeddedServer.class);
    private static final List<String> DURABILITY = List.of("fsync", "full_page_writes", "synchronous_commit");

    private final DataDirectoryLock lock;
    private final EmbeddedPostgres server;

    private EmbeddedServer(DataDirectoryLock lock, EmbeddedPostgres server) {
        this.lock = lock;
        this.server = server;
    }

    /**
     * Starts the server on a data directory, which is made if it does not exist.
     *
     * @param directory the data directory
     * @param binaries where the server's programs are, or are to be, unpacked
     * @throws DataDirectoryInUse if another running service works on it
     * @throws UncheckedIOException if the server does not start; the directory's {@code server.log} says why
     */
    static EmbeddedServer start(Path directory, Path binaries) {
        Path absolute = directory.toAbsolutePath().normalize();
        try {
            Files.createDirectories(absolute);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot make the data directory " + absolute, e);
        }
        DataDirectoryLock lock = DataDirectoryLock.take(absolute);
        try {
            var started = new EmbeddedServer(lock, new Cluster(absolute, binaries.toAbsolutePath()).start());
            started.requireDurability();
            LOG.info("Embedded PostgreSQL on port {} keeps its data in {}", started.server.getPort(), absolute);
            return started;
        } catch (IOException e) {
            lock.close();
            throw new UncheckedIOException(
                    "embedded PostgreSQL did not start; see " + absolute.resolve("server.log"), e);
        }
    }

    /** Where clients connect. */
    String jdbcUrl() {
        return server.getJdbcUrl(USER, "postgres");
    }

    private void requireDurability() {
        try (var connection = server.getPostgresDatabase().getConnection();
                var query = connection.prepareStatement("select current_setting(?)")) {
            for (String setting : DURABILITY) {
                query.setString(1, setting);
                try (var rows = query.executeQuery()) {
                    if (!rows.next() || !"on".equals(rows.getString(1))) {
                        close();
                        throw new IllegalStateException("embedded PostgreSQL runs without " + setting);
                    }
                }
            }
        } catch (SQLException e) {
            close();
            throw new IllegalStateException("embedded PostgreSQL does not answer", e);
        }
    }

    @Override
    public void close() {
        try {
            server.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            lock.close();
        }
    }
}
