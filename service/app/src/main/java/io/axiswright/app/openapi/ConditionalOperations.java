package io.axiswright.app.openapi;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.responses.ApiResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springdoc.core.customizers.GlobalOpenApiCustomizer;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;

/** Says of every GET that its answer has an entity tag, that who holds it is answered 304, and that others must ask again. */
@Component
@Order(4)
class ConditionalOperations implements GlobalOpenApiCustomizer {

    private static final String IF_NONE_MATCH = "#/components/parameters/IfNoneMatch";
    private static final String ETAG = "ETag";

    @Override
    public void customise(OpenAPI document) {
        document.getPaths().values().stream()
                .map(PathItem::getGet)
                .filter(Objects::nonNull)
                .forEach(ConditionalOperations::describe);
    }

    private static void describe(Operation read) {
        List<Parameter> parameters =
                new ArrayList<>(Objects.requireNonNullElse(read.getParameters(), List.<Parameter>of()));
        parameters.add(new Parameter().$ref(IF_NONE_MATCH));
        read.setParameters(parameters);
        ApiResponse found = Objects.requireNonNull(read.getResponses().get("200"));
        found.setHeaders(tagged(found.getHeaders()));
        read.getResponses()
                .addApiResponse(
                        "304",
                        new ApiResponse()
                                .description("The caller holds the present state already.")
                                .headers(new LinkedHashMap<>(found.getHeaders())));
    }

    private static Map<String, Header> tagged(@Nullable Map<String, Header> others) {
        var headers = new LinkedHashMap<String, Header>();
        headers.put(ETAG, new Header().$ref("#/components/headers/ETag"));
        if (others != null) {
            others.forEach(headers::putIfAbsent);
        }
        headers.putIfAbsent(HttpHeaders.CACHE_CONTROL, new Header().$ref("#/components/headers/Revalidated"));
        return headers;
    }
}
