package io.axiswright.app.wire;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.app.wire.RecordShape.Member;
import io.axiswright.app.wire.RecordShape.Presence;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.lang.reflect.WildcardType;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Works out, once per class, the shape of a type on the wire. */
public final class Shapes {

    private static final int SHORT_TEXT = 200;
    private static final int LONG_TEXT = 2000;
    private static final Set<String> LONG_TEXTS = Set.of("description", "remark", "reason", "message");
    private static final int MOST_ELEMENTS = 4096;

    private static final Map<Type, Shape> KNOWN = new ConcurrentHashMap<>();

    private Shapes() {}

    /** The shape of a class, or of a record with type arguments. */
    public static Shape of(Type type) {
        return of(type, new Place("", null, null, type));
    }

    /** Whether the class is a record or a sealed choice of records with a shape of its own. */
    public static boolean isComposite(Class<?> type) {
        return LeafShapes.of(type, Range.ANY, SHORT_TEXT) == null && (type.isRecord() || type.isSealed());
    }

    /** The member a record component makes, in a record of the given type. */
    static Member member(RecordComponent component, Type owner) {
        var place = new Place(
                component.getName(),
                component.getAnnotation(Bounds.class),
                component.getAnnotation(Count.class),
                owner);
        if (component.getAccessor().isAnnotationPresent(JsonIgnore.class)) {
            return new Member(component.getName(), new Shape.Any(), presence(component), false);
        }
        return new Member(component.getName(), of(component.getGenericType(), place), presence(component), true);
    }

    private record Place(
            String name, @Nullable Bounds bounds, @Nullable Count count, Type owner) {}

    private static Presence presence(RecordComponent component) {
        if (component.getAnnotatedType().isAnnotationPresent(Nullable.class)) {
            return Presence.NONE;
        }
        if (component.getType() == boolean.class) {
            return Presence.FALSE;
        }
        return component.getType() == List.class ? Presence.EMPTY : Presence.REQUIRED;
    }

    private static Shape of(Type type, Place place) {
        return switch (type) {
            case Class<?> plain -> ofClass(plain, place);
            case ParameterizedType generic -> ofGeneric(generic, place);
            case WildcardType wildcard -> of(wildcard.getUpperBounds()[0], place);
            case TypeVariable<?> variable
            when place.owner() instanceof ParameterizedType owner -> of(argument(owner, variable), place);
            default -> new Shape.Any();
        };
    }

    private static Shape ofGeneric(ParameterizedType generic, Place place) {
        Class<?> raw = (Class<?>) generic.getRawType();
        Type[] arguments = generic.getActualTypeArguments();
        if (Collection.class.isAssignableFrom(raw)) {
            Count count = place.count();
            Shape element = of(arguments[0], place);
            return count == null
                    ? new Shape.Many(element, 0, MOST_ELEMENTS, false)
                    : new Shape.Many(element, count.min(), count.max(), true);
        }
        if (Map.class.isAssignableFrom(raw)) {
            return new Shape.Table(of(arguments[1], place));
        }
        Shape known = KNOWN.get(generic);
        if (known == null) {
            known = new RecordShape(raw, generic, null);
            KNOWN.put(generic, known);
        }
        return known;
    }

    private static Type argument(ParameterizedType owner, TypeVariable<?> variable) {
        TypeVariable<?>[] parameters = ((Class<?>) owner.getRawType()).getTypeParameters();
        return owner.getActualTypeArguments()[Arrays.asList(parameters).indexOf(variable)];
    }

    private static Shape ofClass(Class<?> type, Place place) {
        int maxLength = LONG_TEXTS.contains(place.name()) ? LONG_TEXT : SHORT_TEXT;
        Shape leaf = LeafShapes.of(type, Range.of(place.bounds()), maxLength);
        if (leaf != null) {
            return leaf;
        }
        Shape known = KNOWN.get(type);
        if (known == null) {
            known = composite(type);
            KNOWN.put(type, known);
        }
        return known;
    }

    private static Shape composite(Class<?> type) {
        JsonTypeInfo info = typeInfo(type);
        if (type.isRecord() && info == null) {
            return new RecordShape(type, null);
        }
        if ((type.isRecord() || type.isSealed()) && info != null) {
            var kinds = new LinkedHashMap<String, RecordShape>();
            records(type).forEach(r -> kinds.put(kind(r), new RecordShape(r, info.property())));
            return new Shape.Choice(type, info.property(), kinds);
        }
        throw new IllegalStateException(type + " has no form on the wire");
    }

    /** The member that tells the kind of a record of a choice, and the kind; empty for other records. */
    static Map<String, String> kindMember(Class<?> type) {
        JsonTypeInfo info = typeInfo(type);
        return info == null ? Map.of() : Map.of(info.property(), kind(type));
    }

    private static String kind(Class<?> type) {
        return Objects.requireNonNull(type.getAnnotation(JsonTypeName.class), () -> type + " lacks @JsonTypeName")
                .value();
    }

    private static Stream<Class<?>> records(Class<?> type) {
        return type.isRecord()
                ? Stream.of(type)
                : Stream.of(type.getPermittedSubclasses()).flatMap(Shapes::records);
    }

    private static @Nullable JsonTypeInfo typeInfo(Class<?> type) {
        JsonTypeInfo own = type.getAnnotation(JsonTypeInfo.class);
        if (own != null) {
            return own;
        }
        return Stream.of(type.getInterfaces())
                .map(Shapes::typeInfo)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }
}
