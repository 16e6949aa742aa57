package io.axiswright.app.embedded;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Server processes that outlived the service that started them. Whoever holds the {@link DataDirectoryLock} knows that
 * no service uses them, so they may go: first politely, so that the server writes its checkpoint, then by force.
 */
final class Orphans {

    private static final Logger LOG = LoggerFactory.getLogger(Orphans.class);
    private static final String PID_FILE = "postmaster.pid";

    private Orphans() {}

    /** Ends every server process on the cluster and removes a lock file that no server stands behind. */
    static void clear(Path cluster) {
        // the server's own signals: INT shuts down at once and in order, QUIT without a checkpoint
        for (String signal : List.of("INT", "QUIT", "KILL")) {
            List<ProcessHandle> running = servers(cluster);
            if (running.isEmpty()) {
                break;
            }
            LOG.warn("Stopping orphaned server processes of {} with {}: {}", cluster, signal, running);
            running.forEach(process -> signal(process, signal));
            running.forEach(Orphans::awaitEnd);
        }
        removeStaleLock(cluster);
    }

    /** The running server processes that work in the cluster's directory: the postmaster and, left alone, its children. */
    private static List<ProcessHandle> servers(Path cluster) {
        Optional<ProcessHandle> postmaster =
                recordedPid(cluster).flatMap(ProcessHandle::of).filter(process -> isServerOf(process, cluster));
        return postmaster
                .map(List::of)
                .orElseGet(() -> ProcessHandle.allProcesses()
                        .filter(process -> isServerOf(process, cluster))
                        .toList());
    }

    private static boolean isServerOf(ProcessHandle process, Path cluster) {
        boolean server = process.info()
                .command()
                .map(command -> Objects.requireNonNull(Path.of(command).getFileName())
                        .toString()
                        .startsWith("postgres"))
                .orElse(false);
        if (!server || !process.isAlive()) {
            return false;
        }
        Path workingDirectory = Path.of("/proc", Long.toString(process.pid()), "cwd");
        try {
            return Files.isSameFile(workingDirectory, cluster);
        } catch (IOException e) {
            // no /proc on this system: then the lock file alone names the process
            return !Files.exists(Path.of("/proc/self")) && recordedPid(cluster).equals(Optional.of(process.pid()));
        }
    }

    private static Optional<Long> recordedPid(Path cluster) {
        try (var lines = Files.lines(cluster.resolve(PID_FILE))) {
            return lines.findFirst().map(String::strip).map(Long::valueOf);
        } catch (IOException | NumberFormatException e) {
            return Optional.empty();
        }
    }

    private static void signal(ProcessHandle process, String signal) {
        try {
            // the shell's own kill: small images carry no other
            new ProcessBuilder("/bin/sh", "-c", "kill -" + signal + " " + process.pid())
                    .start()
                    .waitFor();
        } catch (IOException e) {
            process.destroyForcibly();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void awaitEnd(ProcessHandle process) {
        long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(10);
        try {
            while (process.isAlive() && System.nanoTime() < deadline) {
                TimeUnit.MILLISECONDS.sleep(20);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** The number in a left-over lock file may by now belong to any process, which would keep the server from starting. */
    private static void removeStaleLock(Path cluster) {
        try {
            if (Files.deleteIfExists(cluster.resolve(PID_FILE))) {
                LOG.warn("Removed the stale lock file of {}", cluster);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
