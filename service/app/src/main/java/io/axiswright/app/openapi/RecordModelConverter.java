package io.axiswright.app.openapi;

import com.fasterxml.jackson.databind.JavaType;
import io.axiswright.app.wire.Shapes;
import io.swagger.v3.core.converter.AnnotatedType;
import io.swagger.v3.core.converter.ModelConverter;
import io.swagger.v3.core.converter.ModelConverterContext;
import io.swagger.v3.core.util.Json31;
import io.swagger.v3.oas.models.media.Schema;
import java.util.Iterator;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Stands for each of our records with a reference; {@link ExactSchemas} writes what it refers to. */
@Component
class RecordModelConverter implements ModelConverter {

    private final SchemaNames names;

    RecordModelConverter(SchemaNames names) {
        this.names = names;
    }

    @Override
    public @Nullable Schema<?> resolve(
            AnnotatedType type, ModelConverterContext context, Iterator<ModelConverter> chain) {
        JavaType java = Json31.mapper().constructType(type.getType());
        Class<?> raw = java == null ? Object.class : java.getRawClass();
        if (Shapes.isComposite(raw) && names.has(raw)) {
            String name = names.name(raw);
            context.defineModel(name, Schemas.ofType("object"));
            return Schemas.reference(name);
        }
        return chain.hasNext() ? chain.next().resolve(type, context, chain) : null;
    }
}
