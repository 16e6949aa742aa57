package io.axiswright.app.openapi;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import io.axiswright.app.wire.Shapes;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;

/**
 * What our types are called in the document: by their simple names, with the names of package and
 * enclosing types before it where two types have the same; an engine's type yields to no type of the app. Knows all of them from the start, so that no name depends on which type is met first.
 */
@Component
class SchemaNames {

    static final String REFERENCE = "#/components/schemas/";

    private static final String CLASSES = "classpath*:io/axiswright/**/*.class";

    /**
     * One for all application contexts of a process: Swagger keeps converters in a static place, so those of one context work
     * for the others too. The names follow from the class path alone and are the same in all of them.
     */
    private static final Map<String, Type> TYPES = new ConcurrentHashMap<>();

    private final Map<Class<?>, String> names = new HashMap<>();

    SchemaNames() {
        List<Class<?>> all = types();
        Map<String, Long> ofEngine =
                all.stream().filter(SchemaNames::isOfEngine).collect(groupingBy(Class::getSimpleName, counting()));
        Map<String, Long> ofAll = all.stream().collect(groupingBy(Class::getSimpleName, counting()));
        for (Class<?> type : all) {
            Map<String, Long> rivals = isOfEngine(type) ? ofEngine : ofAll;
            boolean alone = rivals.getOrDefault(type.getSimpleName(), 0L) == 1;
            String name = alone ? type.getSimpleName() : qualified(type);
            names.put(type, name);
            TYPES.put(name, type);
        }
    }

    /** Whether the type has a schema of its own. */
    boolean has(Class<?> type) {
        return names.containsKey(type);
    }

    /** The name of a type that has a schema of its own; a page of projects is a ProjectPage. */
    String name(Type type) {
        if (type instanceof ParameterizedType generic) {
            return Stream.of(generic.getActualTypeArguments()).map(this::name).collect(Collectors.joining())
                    + name(generic.getRawType());
        }
        String name = names.get(type);
        if (name == null) {
            throw new IllegalArgumentException(type + " has no schema of its own");
        }
        return name;
    }

    /** Remembers a type with type arguments, which no class alone tells of. */
    void remember(Type generic) {
        TYPES.putIfAbsent(name(generic), generic);
    }

    /** The type a reference to a schema stands for; null if it is none of ours. */
    @Nullable
    Type type(String reference) {
        return reference.startsWith(REFERENCE) ? TYPES.get(reference.substring(REFERENCE.length())) : null;
    }

    private static List<Class<?>> types() {
        try {
            Resource[] found = new PathMatchingResourcePatternResolver().getResources(CLASSES);
            return Stream.of(found)
                    .<Class<?>>map(SchemaNames::load)
                    .filter(SchemaNames::isNamed)
                    .distinct()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isNamed(Class<?> type) {
        boolean document = type.isEnum()
                || type == Money.class
                || Quantity.class.isAssignableFrom(type)
                || Shapes.isComposite(type);
        return document && (!isOfEngine(type) || isPublic(type));
    }

    private static boolean isOfEngine(Class<?> type) {
        return type.getName().startsWith("io.axiswright.engine.");
    }

    /** What the engine keeps to itself never reaches the wire. */
    private static boolean isPublic(Class<?> type) {
        Class<?> enclosing = type.getEnclosingClass();
        return Modifier.isPublic(type.getModifiers()) && (enclosing == null || isPublic(enclosing));
    }

    private static Class<?> load(Resource resource) {
        try {
            String url = resource.getURL().toString();
            String path = url.substring(url.lastIndexOf("io/axiswright/"), url.length() - ".class".length());
            return Class.forName(path.replace('/', '.'), false, SchemaNames.class.getClassLoader());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The last part of the package, and the names of the enclosing types, before the simple name. */
    private static String qualified(Class<?> type) {
        String last = type.getPackageName().substring(type.getPackageName().lastIndexOf('.') + 1);
        String own =
                type.getName().substring(type.getPackageName().length() + 1).replace("$", "");
        return last.substring(0, 1).toUpperCase(Locale.ROOT) + last.substring(1) + own;
    }
}
