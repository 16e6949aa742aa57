package io.axiswright.app.apispec;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.openapi.Examples;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The files of api-spec: held against what the service does, or rewritten if the build is told to. */
final class SpecFiles {

    private static final String SWITCH = "axiswright.update-api-spec";
    private static final Path FOLDER = Path.of("..", "..", "api-spec");

    private SpecFiles() {}

    static Path folder() {
        return FOLDER;
    }

    static Path example(String name) {
        return FOLDER.resolve("examples").resolve(name + ".json");
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A request among the examples of the class path. */
    static String request(String name) {
        return Examples.all().stream()
                .filter(example -> name.equals(example.subject() + "." + example.part() + "." + example.name()))
                .map(example -> new String(example.json(), StandardCharsets.UTF_8))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no example " + name));
    }

    /** Fails if the file says something else, unless it is to be updated. */
    static void hold(Path file, String actual) {
        if (Boolean.getBoolean(SWITCH)) {
            write(file, actual);
        }
        assertThat(file)
                .as(
                        "%s is what the service answers. If the change is meant, run the tests of %s with -D%s=true (twice:"
                                + " the document takes up the examples of the run before), and look through the difference.",
                        file, SpecFiles.class.getPackageName(), SWITCH)
                .exists()
                .content()
                .isEqualTo(actual);
    }

    private static void write(Path file, String text) {
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
