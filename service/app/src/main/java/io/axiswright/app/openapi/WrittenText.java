package io.axiswright.app.openapi;

import io.swagger.v3.core.util.Yaml31;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.ClassPathResource;

/** What people write about the API beside the code: YAML files in the form that OpenAPI gives to their subject. */
final class WrittenText {

    private WrittenText() {}

    /** The head of the document: title, tags, shared headers and parameters. */
    static OpenAPI head() {
        return read("openapi/document.yaml", OpenAPI.class);
    }

    /** What is written about an operation; nothing if there is no file for it. */
    static Optional<Operation> operation(@Nullable String id) {
        String file = "openapi/operations/" + id + ".yaml";
        return new ClassPathResource(file).exists() ? Optional.of(read(file, Operation.class)) : Optional.empty();
    }

    private static <T> T read(String file, Class<T> type) {
        try (var in = new ClassPathResource(file).getInputStream()) {
            return Yaml31.mapper().readValue(in, type);
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }
}
