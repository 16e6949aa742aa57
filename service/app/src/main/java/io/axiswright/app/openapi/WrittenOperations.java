package io.axiswright.app.openapi;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springdoc.core.customizers.GlobalOpenApiCustomizer;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Puts into each operation what is written about it: the code knows its form, the text what it means. */
@Component
@Order(3)
class WrittenOperations implements GlobalOpenApiCustomizer {

    private static final String OK = "200";

    @Override
    public void customise(OpenAPI document) {
        ExactSchemas.operations(document)
                .forEach(operation -> WrittenText.operation(operation.getOperationId())
                        .ifPresent(written -> merge(document, operation, written)));
    }

    private static void merge(OpenAPI document, Operation operation, Operation written) {
        operation.setSummary(written.getSummary());
        operation.setDescription(written.getDescription());
        operation.setTags(written.getTags());
        List<Parameter> parameters = written.getParameters() == null ? List.of() : written.getParameters();
        parameters.forEach(parameter -> merge(document, operation, parameter));
        // a body that is none of our records has no other place to be described
        if (written.getRequestBody() != null) {
            operation.setRequestBody(written.getRequestBody());
        }
        responses(document, operation, written.getResponses());
    }

    /** A shared parameter takes the place of the generated one of its name; of others the text is taken over. */
    private static void merge(OpenAPI document, Operation operation, Parameter written) {
        var parameters = new ArrayList<Parameter>(Objects.requireNonNullElse(operation.getParameters(), List.of()));
        if (written.get$ref() != null) {
            String name = shared(document, written.get$ref()).getName();
            parameters.removeIf(parameter -> name.equals(parameter.getName()));
            parameters.add(written);
        } else {
            Parameter known = parameters.stream()
                    .filter(parameter -> written.getName().equals(parameter.getName()))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException(
                            operation.getOperationId() + " has no parameter " + written.getName()));
            known.setDescription(written.getDescription());
            known.setExample(written.getExample());
        }
        operation.setParameters(parameters);
    }

    private static Parameter shared(OpenAPI document, String reference) {
        String name = reference.substring(reference.lastIndexOf('/') + 1);
        return Objects.requireNonNull(document.getComponents().getParameters().get(name), reference);
    }

    /** Statuses of success are those that are written; what the handler returns is the content of each but 304. */
    private static void responses(OpenAPI document, Operation operation, ApiResponses written) {
        ApiResponse generated = Objects.requireNonNull(operation.getResponses().remove(OK));
        written.forEach((status, text) -> {
            ApiResponse response;
            if (status.startsWith("2")) {
                response = new ApiResponse().content(copy(generated.getContent()));
            } else {
                response = Objects.requireNonNullElseGet(
                        ProblemResponses.own(document, operation, status), ApiResponse::new);
            }
            if (text.getDescription() != null) {
                response.setDescription(text.getDescription());
            }
            if (text.getContent() != null) {
                // a form other than JSON, whose schema the handler's type does not tell
                text.getContent().forEach(response.getContent()::addMediaType);
            }
            response.setHeaders(text.getHeaders());
            operation.getResponses().put(status, response);
        });
    }

    private static @Nullable Content copy(@Nullable Content content) {
        if (content == null) {
            return null;
        }
        var copy = new Content();
        content.forEach((type, media) -> copy.addMediaType(type, new MediaType().schema(media.getSchema())));
        return copy;
    }
}
