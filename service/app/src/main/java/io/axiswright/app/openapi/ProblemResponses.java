package io.axiswright.app.openapi;

import static java.util.stream.Collectors.joining;

import io.axiswright.app.problem.Problem;
import io.axiswright.app.problem.ProblemKind;
import io.swagger.v3.core.util.Json31;
import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.examples.Example;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.responses.ApiResponse;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springdoc.core.customizers.GlobalOpenApiCustomizer;
import org.springdoc.core.customizers.GlobalOperationCustomizer;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.method.HandlerMethod;

/** Gives each operation the problems it may answer with: one shared response a status. */
@Component
@Order(2)
class ProblemResponses implements GlobalOpenApiCustomizer, GlobalOperationCustomizer {

    private static final String REFERENCE = "#/components/responses/";

    @Override
    public Operation customize(Operation operation, HandlerMethod handler) {
        // a parameter that an operation does not have is refused everywhere
        var statuses = new TreeSet<>(List.of(400, 406, 500));
        if (operation.getRequestBody() != null) {
            statuses.addAll(List.of(413, 415, 422));
        }
        if (operation.getParameters() != null
                && operation.getParameters().stream().anyMatch(parameter -> "path".equals(parameter.getIn()))) {
            statuses.add(404);
        }
        Stream.of(
                        handler.getMethodAnnotation(Fails.class),
                        handler.getBeanType().getAnnotation(Fails.class))
                .filter(Objects::nonNull)
                .flatMap(fails -> Arrays.stream(fails.value()))
                .forEach(kind -> statuses.add(kind.status()));
        statuses.forEach(status -> operation
                .getResponses()
                .computeIfAbsent(Integer.toString(status), key -> new ApiResponse().$ref(REFERENCE + name(status))));
        return operation;
    }

    @Override
    public void customise(OpenAPI document) {
        Components components = document.getComponents();
        var responses = new TreeMap<String, ApiResponse>();
        if (components.getResponses() != null) {
            responses.putAll(components.getResponses());
        }
        Stream.of(ProblemKind.values())
                .map(ProblemKind::status)
                .distinct()
                .forEach(status -> responses.put(name(status), response(status)));
        components.setResponses(responses);
    }

    /** The shared response of an operation, made its own so that it can be added to; null if it does not have it. */
    static @Nullable ApiResponse own(OpenAPI document, Operation operation, String status) {
        ApiResponse response = operation.getResponses().get(status);
        if (response == null || response.get$ref() == null) {
            return response;
        }
        ApiResponse shared = Objects.requireNonNull(
                document.getComponents().getResponses().get(response.get$ref().substring(REFERENCE.length())));
        var own = new ApiResponse().description(shared.getDescription()).content(new Content());
        shared.getContent()
                .forEach((type, media) -> own.getContent()
                        .addMediaType(
                                type, new MediaType().schema(media.getSchema()).examples(examples(media))));
        operation.getResponses().put(status, own);
        return own;
    }

    private static Map<String, Example> examples(MediaType media) {
        return new LinkedHashMap<>(media.getExamples());
    }

    private static String name(int status) {
        return "Problem" + status;
    }

    private static ApiResponse response(int status) {
        List<ProblemKind> kinds = Stream.of(ProblemKind.values())
                .filter(kind -> kind.status() == status)
                .toList();
        var media = new MediaType().schema(Schemas.reference(Problem.class.getSimpleName()));
        kinds.forEach(kind -> media.addExamples(kind.slug(), example(kind)));
        return new ApiResponse()
                .description(kinds.stream().map(kind -> kind.title() + ".").collect(joining(" Or: ")))
                .content(new Content().addMediaType("application/problem+json", media));
    }

    private static Example example(ProblemKind kind) {
        var value = Json31.mapper().createObjectNode();
        value.put("type", kind.type());
        value.put("title", kind.title());
        value.put("status", kind.status());
        value.put("detail", kind.description());
        value.put("instance", "/v1/projects");
        value.put("code", kind.name());
        return new Example().summary(kind.title()).value(value);
    }
}
