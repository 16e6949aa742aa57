package io.axiswright.engine.study;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The engine's version, so that every stored result says what worked it out. */
public final class EngineVersion {

    /** As the build stamped it. */
    public static final String CURRENT = read();

    private EngineVersion() {}

    private static String read() {
        try (var in = Objects.requireNonNull(EngineVersion.class.getResourceAsStream("/study/engine-version.txt"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
