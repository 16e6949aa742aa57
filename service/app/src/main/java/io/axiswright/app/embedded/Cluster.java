package io.axiswright.app.embedded;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.UUID;
import org.springframework.util.FileSystemUtils;

/**
 * The server's files: its programs, unpacked once, and under the data directory {@code cluster} (its data) and
 * {@code server.log}. Data appear under that name only once complete, and programs are used only with the mark that
 * they are, so a process killed while it prepares them leaves nothing that the next one could mistake for good.
 *
 * @param directory the data directory
 * @param binaries where the programs are unpacked to
 */
record Cluster(Path directory, Path binaries) {

    private static final String COMPLETE = ".complete";
    private static final String UNFINISHED = "unfinished-";

    /** The server's own data directory. */
    Path data() {
        return directory.resolve("cluster");
    }

    /** Starts the server on the data, which are made first if there are none; clears up after a process killed hard. */
    EmbeddedPostgres start() throws IOException {
        discardUnfinished();
        discardHalfUnpackedBinaries();
        if (Files.exists(data())) {
            Orphans.clear(data());
        } else {
            create();
        }
        EmbeddedPostgres server = start(data());
        Path mark = binaries.resolve(COMPLETE);
        if (Files.exists(binaries) && !Files.exists(mark)) {
            Files.createFile(mark);
        }
        return server;
    }

    private void create() throws IOException {
        Path unfinished = directory.resolve(UNFINISHED + UUID.randomUUID());
        start(unfinished).close();
        Files.move(unfinished, data());
    }

    private void discardUnfinished() throws IOException {
        try (var left = Files.newDirectoryStream(directory, UNFINISHED + "*")) {
            for (Path data : left) {
                Orphans.clear(data);
                FileSystemUtils.deleteRecursively(data);
            }
        }
    }

    private void discardHalfUnpackedBinaries() throws IOException {
        if (Files.exists(binaries) && !Files.exists(binaries.resolve(COMPLETE))) {
            FileSystemUtils.deleteRecursively(binaries);
        }
    }

    private EmbeddedPostgres start(Path data) throws IOException {
        Redirect log = Redirect.appendTo(directory.resolve("server.log").toFile());
        return EmbeddedPostgres.builder()
                .setOverrideWorkingDirectory(binaries.toFile())
                .setDataDirectory(data)
                .setCleanDataDirectory(false)
                // Spring stops the server after the pool; a hook of its own would pull it from under open requests
                .setRegisterShutdownHook(false)
                .setPGStartupWait(Duration.ofMinutes(1))
                .setLocaleConfig("locale", "C")
                .setServerConfig("listen_addresses", "localhost")
                .setServerConfig("unix_socket_directories", "")
                .setServerConfig("max_connections", "100")
                // the library is made for tests and gives durability away; what we acknowledge must stay
                .setServerConfig("fsync", "on")
                .setServerConfig("full_page_writes", "on")
                .setServerConfig("synchronous_commit", "on")
                .setOutputRedirector(log)
                .setErrorRedirector(log)
                .start();
    }
}
