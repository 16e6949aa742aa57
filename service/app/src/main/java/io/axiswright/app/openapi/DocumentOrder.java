package io.axiswright.app.openapi;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Paths;
import io.swagger.v3.oas.models.responses.ApiResponses;
import io.swagger.v3.oas.models.tags.Tag;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springdoc.core.customizers.GlobalOpenApiCustomizer;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Sorts what has no order of its own, so that the same service always gives the same document. */
@Component
@Order(4)
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
            tags.removeIf(tag -> !used.contains(tag.getName()));
            tags.sort(Comparator.comparing(Tag::getName));
            document.setTags(tags);
        }
        ExactSchemas.operations(document).forEach(operation -> {
            var responses = new ApiResponses();
            responses.putAll(new TreeMap<>(operation.getResponses()));
            operation.setResponses(responses);
        });
    }
}
