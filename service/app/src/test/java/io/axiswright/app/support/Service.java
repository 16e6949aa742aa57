package io.axiswright.app.support;

import io.axiswright.app.Axiswright;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The service in a process of its own, with the embedded database: what a test may kill. */
public final class Service implements AutoCloseable {

    private static final Pattern PORT = Pattern.compile("Tomcat started on port (\\d+)");
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    private final Process process;
    private final Path log;

    private Service(Process process, Path log) {
        this.process = process;
        this.log = log;
    }

    /** Starts the service on a data directory, in which it leaves its log, with some options more; does not wait. */
    public static Service launch(Path dataDirectory, String name, String... options) throws IOException {
        Path log = dataDirectory.resolve(name + ".log");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Axiswright.class.getName(),
                "--server.port=0",
                // blank counts as not configured, and outranks the test's own shared database
                "--spring.datasource.url=",
                "--spring.datasource.username=",
                "--axiswright.binaries-directory=" + Path.of("target", "postgres-binaries"),
                "--axiswright.data-directory=" + dataDirectory));
        command.addAll(List.of(options));
        var builder = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(Redirect.to(log.toFile()));
        return new Service(builder.start(), log);
    }

    /** Waits until it serves, and says at which port. */
    public int port() throws IOException, InterruptedException {
        long deadline = System.nanoTime() + PATIENCE.toNanos();
        while (process.isAlive() && System.nanoTime() < deadline) {
            var started = PORT.matcher(log());
            if (started.find()) {
                return Integer.parseInt(started.group(1));
            }
            Thread.sleep(50);
        }
        throw new IllegalStateException("the service did not start:\n" + log());
    }

    /** Waits until it has ended by itself, and says how. */
    public int exitCode() throws InterruptedException {
        return process.waitFor();
    }

    /** What it has printed so far. */
    public String log() throws IOException {
        return Files.readString(log);
    }

    /** Ends it at once, like {@code kill -9}: no hook runs, its database server stays behind. */
    public void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    /** Ends it in order. */
    @Override
    public void close() {
        process.destroy();
        process.onExit().join();
    }
}
