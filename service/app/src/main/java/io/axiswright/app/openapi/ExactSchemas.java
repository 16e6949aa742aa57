package io.axiswright.app.openapi;

import io.axiswright.app.problem.Problem;
import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.Schema;
import java.lang.reflect.Type;
import java.util.Collection;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springdoc.core.customizers.GlobalOpenApiCustomizer;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Puts the exact schemas of our types into the document: first all that callers send, then what only we write. */
@Component
@Order(1)
class ExactSchemas implements GlobalOpenApiCustomizer {

    private final SchemaNames names;

    ExactSchemas(SchemaNames names) {
        this.names = names;
    }

    @Override
    public void customise(OpenAPI document) {
        var writer = new SchemaWriter(names);
        operations(document)
                .flatMap(operation -> content(
                        operation.getRequestBody() == null
                                ? null
                                : operation.getRequestBody().getContent()))
                .forEach(schema -> write(schema, writer, true));
        operations(document)
                .flatMap(operation -> Optional.ofNullable(operation.getResponses()).stream())
                .flatMap(responses -> responses.values().stream())
                .flatMap(response -> content(response.getContent()))
                .forEach(schema -> write(schema, writer, false));
        writer.write(Problem.class, false);

        var components = Objects.requireNonNullElseGet(document.getComponents(), Components::new);
        var schemas = new TreeMap<String, Schema>();
        if (components.getSchemas() != null) {
            schemas.putAll(components.getSchemas());
        }
        schemas.putAll(writer.written());
        components.setSchemas(schemas);
        document.setComponents(components);
    }

    static Stream<Operation> operations(OpenAPI document) {
        return Optional.ofNullable(document.getPaths()).stream()
                .map(Map::values)
                .flatMap(Collection::stream)
                .map(PathItem::readOperations)
                .flatMap(Collection::stream);
    }

    private static Stream<Schema<?>> content(@Nullable Content content) {
        return content == null
                ? Stream.empty()
                : content.values().stream().flatMap(media -> Stream.<Schema<?>>ofNullable(media.getSchema()));
    }

    private void write(Schema<?> schema, SchemaWriter writer, boolean input) {
        Type type = schema.get$ref() == null ? null : names.type(schema.get$ref());
        if (type != null) {
            writer.write(type, input);
        }
        if (schema.getItems() != null) {
            write(schema.getItems(), writer, input);
        }
    }
}
