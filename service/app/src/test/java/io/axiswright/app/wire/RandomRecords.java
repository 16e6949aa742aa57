package io.axiswright.app.wire;

import io.axiswright.app.wire.RecordShape.Member;
import io.axiswright.app.wire.RecordShape.Presence;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Dimension;
import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SplittableRandom;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.JsonNodeFactory;

/** Makes random records of any type within its bounds; the same seed makes the same record. */
public final class RandomRecords {

    private static final String[] SIZES = {"0.75 mm2", "2.5 mm2", "14 AWG", "2/0 AWG", "250 kcmil"};
    private static final String ALPHABET = "abcXYZ 019-_.äß°µ\"\\/<>&~漢😀";

    private final SplittableRandom random;
    private final int longestList;
    private int depth;

    /** Records with short lists. */
    public RandomRecords(long seed) {
        this(seed, 3);
    }

    /** Records whose lists have up to so many elements, or as many as they must have. */
    public RandomRecords(long seed, int longestList) {
        this.random = new SplittableRandom(seed);
        this.longestList = longestList;
    }

    /** A random record. */
    public <T> T next(Class<T> type) {
        return type.cast(value(Shapes.of(type)));
    }

    private Object value(Shape shape) {
        return switch (shape) {
            case RecordShape record -> record(record);
            case Shape.Choice choice -> {
                var kinds = List.copyOf(choice.kinds().values());
                yield record(kinds.get(random.nextInt(kinds.size())));
            }
            case Shape.Many many -> {
                int size = Math.min(many.max(), many.min() + (depth > 8 ? 0 : random.nextInt(longestList + 1)));
                var list = new ArrayList<Object>();
                for (int k = 0; k < size; k++) {
                    list.add(value(many.element()));
                }
                yield List.copyOf(list);
            }
            case Shape.Table table -> {
                var map = new LinkedHashMap<String, Object>();
                for (int k = random.nextInt(3); k > 0; k--) {
                    map.put("key" + k, value(table.value()));
                }
                yield map;
            }
            case Shape.Measure measure -> measure(measure);
            case Shape.Plain plain -> plain(plain);
            case Shape.Text text -> text(text.maxLength());
            case Shape.Token token -> token(token.format());
            case Shape.Truth _ -> random.nextBoolean();
            case Shape.Word word -> {
                var words = List.copyOf(word.words().values());
                yield words.get(random.nextInt(words.size()));
            }
            case Shape.Price _ -> new Money(BigDecimal.valueOf(random.nextLong(10_000_000), random.nextInt(4)), "EUR");
            case Shape.Size _ -> new ConductorSize(SIZES[random.nextInt(SIZES.length)]);
            case Shape.Coefficients _ -> Polynomial.of(random.nextDouble(-9, 9), random.nextDouble(-9, 9), 1);
            case Shape.Any _ -> JsonNodeFactory.instance.stringNode("any");
        };
    }

    /** A record of some types refuses values that are in range one by one; then others are tried. */
    private Object record(RecordShape shape) {
        IllegalArgumentException refusal = new IllegalArgumentException();
        depth++;
        for (int attempt = 0; attempt < 1000; attempt++) {
            try {
                return shape.make(shape.members().stream().map(this::member).toArray());
            } catch (IllegalArgumentException e) {
                refusal = e;
            }
        }
        throw refusal;
    }

    private @Nullable Object member(Member member) {
        boolean absent = !member.onTheWire() || member.presence() == Presence.NONE && random.nextInt(3) == 0;
        return absent ? member.presence().absent() : value(member.shape());
    }

    private Object measure(Shape.Measure measure) {
        Dimension dimension =
                measure.dimensions().get(random.nextInt(measure.dimensions().size()));
        Range range = measure.checked(dimension);
        // temperatures at which things are built: below −100 °C the two scales have no numbers in common
        if (dimension == Dimension.TEMPERATURE) {
            return dimension.of(within(Math.max(range.min(), 200), Math.min(range.max(), 600)));
        }
        return dimension.of(within(range));
    }

    private Object plain(Shape.Plain plain) {
        double value = within(plain.checked());
        return switch (plain.digits()) {
            case REAL -> (Object) value;
            case INTEGER -> (int) Math.ceil(Math.min(value, plain.range().max() - 1));
            case LONG -> (long) Math.ceil(value);
            case DECIMAL -> BigDecimal.valueOf((long) value, 2);
        };
    }

    private double within(Range range) {
        double low = Math.max(Math.max(range.above(), range.min()), -1e4);
        double high = Math.min(range.max(), Math.max(low, 0) + 1e4);
        return within(low, high);
    }

    private double within(double low, double high) {
        return high - (high - low) * random.nextDouble();
    }

    private String text(int maxLength) {
        int length = random.nextInt(1, Math.min(maxLength, 30));
        int[] alphabet = ALPHABET.codePoints().toArray();
        var text = new StringBuilder("t");
        for (int k = 1; k < length; k++) {
            text.appendCodePoint(alphabet[random.nextInt(alphabet.length)]);
        }
        return text.toString();
    }

    private Object token(String format) {
        return switch (format) {
            case "uuid" -> new UUID(random.nextLong(), random.nextLong());
            case "date" -> LocalDate.ofEpochDay(random.nextInt(30_000));
            default -> Instant.ofEpochSecond(random.nextInt());
        };
    }
}
