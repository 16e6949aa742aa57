package io.axiswright.app.openapi;

import io.swagger.v3.core.util.Json31;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.examples.Example;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.responses.ApiResponse;
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
 * of the body of the operation sizeDuty, {@code examples/sizeDuty.200.two-axes.json} one of its answer with that status;
 * {@code examples/SizingRequest.request.two-axes.json} is one of every body of that schema. Files with another second part
 * (bodies that are refused) are for tests and readers of the files only.
 */
@Component
@Order(4)
public class Examples implements GlobalOpenApiCustomizer {

    /**
     * An example.
     *
     * @param subject the operation's id, or the name of a body's schema
     * @param part "request", or the status of the answer
     * @param name what the example is called
     * @param json the document
     */
    public record NamedExample(String subject, String part, String name, byte[] json) {}

    private static final String REQUEST = "request";
    private static final String FILES = "classpath*:examples/*.*.*.json";

    private final Map<String, List<NamedExample>> bySubject;

    Examples() {
        bySubject = all().stream().collect(Collectors.groupingBy(NamedExample::subject));
    }

    /** All examples of the class path, by subject, part and name; tests send them. */
    public static List<NamedExample> all() {
        try {
            Resource[] files = new PathMatchingResourcePatternResolver().getResources(FILES);
            return Arrays.stream(files)
                    .map(Examples::read)
                    .sorted(Comparator.comparing(NamedExample::subject)
                            .thenComparing(NamedExample::part)
                            .thenComparing(NamedExample::name))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void customise(OpenAPI document) {
        ExactSchemas.operations(document).forEach(operation -> {
            bySubject
                    .getOrDefault(operation.getOperationId(), List.of())
                    .forEach(example -> add(document, operation, example));
            requests(operation)
                    .forEach(media -> bySubject
                            .getOrDefault(schemaName(media), List.of())
                            .forEach(example -> share(document, media, example)));
        });
    }

    private static NamedExample read(Resource file) {
        String[] parts = Objects.requireNonNull(file.getFilename()).split("\\.");
        try {
            return new NamedExample(parts[0], parts[1], parts[2], file.getContentAsByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void add(OpenAPI document, Operation operation, NamedExample example) {
        media(document, operation, example.part()).forEach(media -> media.addExamples(example.name(), inline(example)));
    }

    /** An example of many bodies stands in the document once. */
    private static void share(OpenAPI document, MediaType media, NamedExample example) {
        if (example.part().equals(REQUEST)) {
            String key = example.subject() + "." + example.name();
            document.getComponents().addExamples(key, inline(example));
            media.addExamples(example.name(), new Example().$ref("#/components/examples/" + key));
        }
    }

    private static Example inline(NamedExample example) {
        try {
            return new Example()
                    .summary(example.name().replace('-', ' '))
                    .value(Json31.mapper().readTree(example.json()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<MediaType> media(OpenAPI document, Operation operation, String part) {
        if (part.equals(REQUEST)) {
            return requests(operation);
        }
        ApiResponse response = ProblemResponses.own(document, operation, part);
        return response == null ? Stream.empty() : media(response.getContent());
    }

    private static Stream<MediaType> requests(Operation operation) {
        return operation.getRequestBody() == null
                ? Stream.empty()
                : media(operation.getRequestBody().getContent());
    }

    private static Stream<MediaType> media(@Nullable Content content) {
        return content == null
                ? Stream.empty()
                : content.entrySet().stream()
                        .filter(entry -> entry.getKey().endsWith("json"))
                        .map(Map.Entry::getValue);
    }

    private static String schemaName(MediaType media) {
        String reference = media.getSchema() == null ? null : media.getSchema().get$ref();
        return reference == null ? "" : reference.substring(reference.lastIndexOf('/') + 1);
    }
}
