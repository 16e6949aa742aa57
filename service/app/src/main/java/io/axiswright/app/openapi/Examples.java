package io.axiswright.app.openapi;

import io.swagger.v3.core.util.Json31;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.examples.Example;
import io.swagger.v3.oas.models.media.Content;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springdoc.core.customizers.GlobalOpenApiCustomizer;
import org.springframework.core.annotation.Order;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;

/**
 * Puts the examples of the class path into the document. A file {@code examples/sizeDuty.request.two-axes.json} is an example
 * of the body of the operation sizeDuty, {@code examples/sizeDuty.200.two-axes.json} one of its answer with that status.
 */
@Component
@Order(3)
public class Examples implements GlobalOpenApiCustomizer {

    /**
     * An example.
     *
     * @param operation the operation's id
     * @param part "request", or the status of the answer
     * @param name what the example is called
     * @param json the document
     */
    public record NamedExample(String operation, String part, String name, byte[] json) {}

    private static final String FILES = "classpath*:examples/*.*.*.json";

    private final Map<String, List<NamedExample>> byOperation;

    Examples() {
        byOperation = all().stream().collect(Collectors.groupingBy(NamedExample::operation));
    }

    /** All examples of the class path, by operation, part and name; tests send them. */
    public static List<NamedExample> all() {
        try {
            Resource[] files = new PathMatchingResourcePatternResolver().getResources(FILES);
            return Arrays.stream(files)
                    .map(Examples::read)
                    .sorted(Comparator.comparing(NamedExample::operation)
                            .thenComparing(NamedExample::part)
                            .thenComparing(NamedExample::name))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void customise(OpenAPI document) {
        ExactSchemas.operations(document)
                .forEach(operation -> byOperation
                        .getOrDefault(operation.getOperationId(), List.of())
                        .forEach(example -> add(operation, example)));
    }

    private static NamedExample read(Resource file) {
        String[] parts = Objects.requireNonNull(file.getFilename()).split("\\.");
        try {
            return new NamedExample(parts[0], parts[1], parts[2], file.getContentAsByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void add(Operation operation, NamedExample example) {
        content(operation, example.part()).flatMap(c -> c.values().stream()).forEach(media -> {
            try {
                media.addExamples(
                        example.name(),
                        new Example()
                                .summary(example.name().replace('-', ' '))
                                .value(Json31.mapper().readTree(example.json())));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    private static Stream<Content> content(Operation operation, String part) {
        @Nullable Content content;
        if (part.equals("request")) {
            content = operation.getRequestBody() == null
                    ? null
                    : operation.getRequestBody().getContent();
        } else {
            var response = operation.getResponses().get(part);
            content = response == null ? null : response.getContent();
        }
        return Stream.ofNullable(content);
    }
}
