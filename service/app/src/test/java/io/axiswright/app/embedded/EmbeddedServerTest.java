package io.axiswright.app.embedded;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EmbeddedServerTest {

    /** Kept between runs: unpacking takes longer than the tests. */
    private static final Path BINARIES = Path.of("target", "postgres-binaries");

    @TempDir
    Path directory;

    @Test
    void keepsItsDataAndItsDirectoryToItself() throws Exception {
        try (var server = EmbeddedServer.start(directory, BINARIES)) {
            assertThat(query(server, "show fsync")).isEqualTo("on");
            assertThat(query(server, "show synchronous_commit")).isEqualTo("on");
            assertThat(query(server, "show listen_addresses")).isEqualTo("localhost");
            assertThat(query(server, "show unix_socket_directories")).isEmpty();
            execute(server, "create table kept as select 42 as number");

            assertThatExceptionOfType(DataDirectoryInUse.class)
                    .isThrownBy(() -> EmbeddedServer.start(directory, BINARIES))
                    .withMessageContaining(directory.toString())
                    .withMessageContaining("process " + ProcessHandle.current().pid());
        }
        // the number of a live process that is no server, as after a restart of the machine
        Files.writeString(
                directory.resolve("cluster/postmaster.pid"),
                ProcessHandle.current().pid() + "\n");
        try (var server = EmbeddedServer.start(directory, BINARIES)) {
            assertThat(query(server, "select number from kept")).isEqualTo("42");
        }
        assertThat(ProcessHandle.current().isAlive()).isTrue();
    }

    private static String query(EmbeddedServer server, String sql) throws SQLException {
        try (var connection = DriverManager.getConnection(server.jdbcUrl());
                var rows = connection.createStatement().executeQuery(sql)) {
            rows.next();
            return rows.getString(1);
        }
    }

    private static void execute(EmbeddedServer server, String sql) throws SQLException {
        try (var connection = DriverManager.getConnection(server.jdbcUrl())) {
            connection.createStatement().execute(sql);
        }
    }
}
