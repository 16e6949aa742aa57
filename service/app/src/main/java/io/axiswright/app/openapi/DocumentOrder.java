package io.axiswright.app.openapi;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Paths;
import io.swagger.v3.oas.models.responses.ApiResponses;
import io.swagger.v3.oas.models.tags.Tag;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springdoc.core.customizers.GlobalOpenApiCustomizer;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Sorts what has no order of its own and drops what nothing refers to, so that the same service always gives the same document. */
@Component
@Order(5)
class DocumentOrder implements GlobalOpenApiCustomizer {

    @Override
    public void customise(OpenAPI document) {
        var paths = new Paths();
        paths.putAll(new TreeMap<>(document.getPaths()));
        document.setPaths(paths);
        if (document.getTags() != null) {
            var tags = new ArrayList<>(document.getTags());
            Set<String> used = ExactSchemas.operations(document)
                    .flatMap(operation -> operation.getTags().stream())
                    .collect(Collectors.toSet());
            Set<String> met = new HashSet<>();
            // those of the head are described; the framework adds others of the same names
            tags.sort(Comparator.comparing(tag -> tag.getDescription() == null));
            tags.removeIf(tag -> !used.contains(tag.getName()) || !met.add(tag.getName()));
            List<String> written =
                    WrittenText.head().getTags().stream().map(Tag::getName).toList();
            tags.sort(Comparator.<Tag>comparingInt(
                            tag -> written.contains(tag.getName()) ? written.indexOf(tag.getName()) : written.size())
                    .thenComparing(Tag::getName));
            document.setTags(tags);
        }
        ExactSchemas.operations(document).forEach(operation -> {
            var responses = new ApiResponses();
            responses.putAll(new TreeMap<>(operation.getResponses()));
            operation.setResponses(responses);
        });
        dropUnused(document);
    }

    private static void dropUnused(OpenAPI document) {
        Set<String> used = ExactSchemas.operations(document)
                .flatMap(operation -> operation.getResponses().values().stream())
                .flatMap(response -> Stream.ofNullable(response.get$ref()))
                .map(reference -> reference.substring(reference.lastIndexOf('/') + 1))
                .collect(Collectors.toSet());
        document.getComponents().getResponses().keySet().retainAll(used);
    }
}
