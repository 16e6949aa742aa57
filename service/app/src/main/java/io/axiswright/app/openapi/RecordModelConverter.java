package io.axiswright.app.openapi;

import com.fasterxml.jackson.databind.JavaType;
import io.axiswright.app.wire.Shapes;
import io.swagger.v3.core.converter.AnnotatedType;
import io.swagger.v3.core.converter.ModelConverter;
import io.swagger.v3.core.converter.ModelConverterContext;
import io.swagger.v3.core.util.Json31;
import io.swagger.v3.oas.models.media.Schema;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
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
        // a type that describes itself by an annotation is a parameter, not a document
        boolean described = raw.isAnnotationPresent(io.swagger.v3.oas.annotations.media.Schema.class);
        if (java != null && Shapes.isComposite(raw) && names.has(raw) && !described) {
            Type generic = generic(java);
            String name = names.name(generic);
            names.remember(generic);
            context.defineModel(name, Schemas.ofType("object"));
            return Schemas.reference(name);
        }
        return chain.hasNext() ? chain.next().resolve(type, context, chain) : null;
    }

    /** The type as reflection gives it. */
    private static Type generic(JavaType java) {
        return java.containedTypeCount() == 0
                ? java.getRawClass()
                : new Generic(
                        java.getRawClass(),
                        java.getBindings().getTypeParameters().stream()
                                .map(RecordModelConverter::generic)
                                .toArray(Type[]::new));
    }

    private record Generic(Class<?> getRawType, Type[] getActualTypeArguments) implements ParameterizedType {

        @Override
        public @Nullable Type getOwnerType() {
            return getRawType.getDeclaringClass();
        }
    }
}
