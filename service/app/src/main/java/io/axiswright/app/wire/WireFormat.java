package io.axiswright.app.wire;

import com.fasterxml.jackson.annotation.JsonInclude;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.json.JsonMapper;

/** Writes records: components in their order, nothing for null, quantities with units, money as decimal strings. */
public final class WireFormat {

    private static final JsonMapper MAPPER = apply(JsonMapper.builder()).build();

    private WireFormat() {}

    /** The mapper, for use outside a request; writes the same bytes as an answer. */
    public static JsonMapper mapper() {
        return MAPPER;
    }

    /** Gives a mapper under construction the form of the wire. */
    static JsonMapper.Builder apply(JsonMapper.Builder builder) {
        return builder.addModule(new WireModule())
                .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                .changeDefaultPropertyInclusion(
                        inclusion -> inclusion.withValueInclusion(JsonInclude.Include.NON_NULL));
    }
}
