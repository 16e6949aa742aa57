package io.axiswright.app.openapi;

import io.axiswright.app.wire.RecordShape;
import io.axiswright.app.wire.RecordShape.Member;
import io.axiswright.app.wire.Shape;
import io.axiswright.app.wire.Shapes;
import io.axiswright.engine.quantity.Dimension;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import io.swagger.v3.oas.models.media.Discriminator;
import io.swagger.v3.oas.models.media.Schema;
import java.lang.reflect.Type;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Writes the named schemas of types and of all they refer to. What a caller sends is closed and bounded as it is read; what
 * we alone write is open, so that it may grow.
 */
final class SchemaWriter {

    private record Todo(Shape shape, boolean input) {}

    private final SchemaNames names;
    private final Map<String, Schema<?>> written = new TreeMap<>();
    private final Deque<Todo> open = new ArrayDeque<>();

    SchemaWriter(SchemaNames names) {
        this.names = names;
    }

    /** Writes the schemas of a type and of all it refers to; a type both sent and answered is written as sent. */
    void write(Type type, boolean input) {
        refer(Shapes.of(type), input);
        while (!open.isEmpty()) {
            Todo next = open.pop();
            writeOne(next.shape(), next.input());
        }
    }

    /** The schemas by name. */
    Map<String, Schema<?>> written() {
        return written;
    }

    private Schema<Object> refer(Shape shape, boolean input) {
        String name = name(shape);
        if (!written.containsKey(name)) {
            written.put(name, Schemas.any());
            open.add(new Todo(shape, input));
        }
        return Schemas.reference(name);
    }

    private String name(Shape shape) {
        return shape instanceof RecordShape record ? names.name(record.genericType()) : names.name(type(shape));
    }

    private static Class<?> type(Shape shape) {
        return switch (shape) {
            case RecordShape record -> record.type();
            case Shape.Choice choice -> choice.type();
            case Shape.Word word -> word.type();
            case Shape.Measure measure -> measureType(measure.dimensions());
            case Shape.Price _ -> Money.class;
            default -> throw new IllegalArgumentException(shape + " has no name");
        };
    }

    private static Class<?> measureType(List<Dimension> dimensions) {
        if (dimensions.size() == 1) {
            return dimensions.getFirst().type();
        }
        if (dimensions.size() == Dimension.values().length) {
            return Quantity.class;
        }
        return dimensions.getFirst().type().getInterfaces()[0];
    }

    private void writeOne(Shape shape, boolean input) {
        Schema<?> schema = switch (shape) {
            case RecordShape record -> object(record, null, null, input);
            case Shape.Choice choice -> choice(choice, input);
            case Shape.Word word -> WordSchemas.of(word);
            case Shape.Measure measure -> measure(measure, input);
            case Shape.Price price -> LeafSchemas.of(price, input);
            default -> throw new IllegalArgumentException(shape + " has no name");
        };
        written.put(name(shape), schema);
    }

    private Schema<Object> measure(Shape.Measure measure, boolean input) {
        if (measure.dimensions().size() == 1) {
            return MeasureSchemas.of(measure.dimensions().getFirst(), input);
        }
        Class<?> type = type(measure);
        Schema<Object> schema = Schemas.any();
        schema.setDescription(Words.of(type));
        var kinds = new ArrayList<Schema>();
        measure.dimensions().forEach(d -> kinds.add(refer(Shapes.of(d.type()), input)));
        // among all dimensions a unit may fit two (K)
        if (measure.dimensions().size() == Dimension.values().length) {
            schema.setAnyOf(kinds);
        } else {
            schema.setOneOf(kinds);
        }
        return schema;
    }

    private Schema<?> choice(Shape.Choice choice, boolean input) {
        if (choice.type().isRecord()) {
            return kind(choice, choice.kinds().firstEntry(), input);
        }
        Schema<Object> schema = Schemas.any();
        schema.setDescription(Words.of(choice.type()));
        var kinds = new ArrayList<Schema>();
        var discriminator = new Discriminator().propertyName(choice.discriminator());
        for (Map.Entry<String, RecordShape> entry : choice.kinds().entrySet()) {
            Schema<Object> reference = refer(Shapes.of(entry.getValue().type()), input);
            kinds.add(reference);
            discriminator.mapping(entry.getKey(), reference.get$ref());
        }
        schema.setOneOf(kinds);
        schema.setDiscriminator(discriminator);
        return schema;
    }

    private Schema<Object> kind(Shape.Choice choice, Map.Entry<String, RecordShape> entry, boolean input) {
        return object(entry.getValue(), choice.discriminator(), entry.getKey(), input);
    }

    private Schema<Object> object(
            RecordShape record, @Nullable String discriminator, @Nullable String kind, boolean input) {
        Schema<Object> schema = Schemas.ofType("object");
        schema.setDescription(Words.of(record.type()));
        if (discriminator != null) {
            Schema<Object> word = Schemas.ofType("string");
            word.setConst(kind);
            schema.addProperty(discriminator, word);
        }
        List<Member> members =
                record.members().stream().filter(Member::onTheWire).toList();
        for (Member member : members) {
            Schema<?> property = value(member.shape(), input);
            property.setDescription(
                    RangeNotes.describe(Words.ofComponent(record.type(), member.name()), member.shape(), input));
            schema.addProperty(member.name(), property);
        }
        List<String> required = Stream.concat(
                        Stream.ofNullable(discriminator),
                        members.stream().filter(m -> isRequired(m, input)).map(Member::name))
                .toList();
        schema.setRequired(required.isEmpty() ? null : required);
        if (input) {
            schema.setAdditionalProperties(false);
        }
        return schema;
    }

    /** We always write truth values and lists; a caller may leave them out, a list only if it may be empty. */
    private static boolean isRequired(Member member, boolean input) {
        return switch (member.presence()) {
            case REQUIRED -> true;
            case NONE -> false;
            case FALSE -> !input;
            case EMPTY -> !input || member.shape() instanceof Shape.Many many && many.min() > 0;
        };
    }

    private Schema<?> value(Shape shape, boolean input) {
        return switch (shape) {
            case RecordShape record -> refer(record, input);
            case Shape.Choice choice -> refer(choice, input);
            case Shape.Price price -> refer(price, input);
            case Shape.Word word when names.has(word.type()) -> refer(Shapes.of(word.type()), input);
            case Shape.Measure measure -> refer(Shapes.of(measureType(measure.dimensions())), input);
            case Shape.Many many -> LeafSchemas.list(value(many.element(), input), many, input);
            case Shape.Table table -> {
                Schema<Object> schema = Schemas.ofType("object");
                schema.setAdditionalProperties(value(table.value(), input));
                yield schema;
            }
            case Shape.Leaf leaf -> LeafSchemas.of(leaf, input);
        };
    }
}
