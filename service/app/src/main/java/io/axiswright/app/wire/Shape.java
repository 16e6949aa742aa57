package io.axiswright.app.wire;

import io.axiswright.engine.quantity.Dimension;
import io.axiswright.engine.quantity.Unit;
import java.util.List;
import java.util.SequencedMap;
import java.util.function.Function;

/** What a type looks like on the wire. The reader, and the schemas of the API document, both follow from it. */
public sealed interface Shape permits RecordShape, Shape.Leaf, Shape.Choice, Shape.Many, Shape.Table {

    /** A shape without named parts of its own. */
    sealed interface Leaf extends Shape {}

    /** A number with its unit, of one of the given dimensions; with the units by their symbols. */
    record Measure(List<Dimension> dimensions, Range range, SequencedMap<String, Unit> units) implements Leaf {

        /** The range that is checked: the stated one, within what the dimension can be at all. */
        public Range checked(Dimension dimension) {
            return range.within(dimension);
        }
    }

    /** A plain number. */
    record Plain(Digits digits, Range range) implements Leaf {

        /** The range that is checked: the stated one, for fractions within what a ratio can be at all. */
        public Range checked() {
            return digits == Digits.REAL ? range.within(Dimension.RATIO) : range;
        }
    }

    /** What kind of plain number. */
    enum Digits {
        /** Whole, 32 bits. */
        INTEGER,
        /** Whole, 64 bits. */
        LONG,
        /** Binary floating point. */
        REAL,
        /** Decimal. */
        DECIMAL
    }

    /** Words of the caller, with at most so many characters. */
    record Text(int maxLength) implements Leaf {}

    /** A string in a standard form: a time stamp, a UUID. */
    record Token(String format, String accepted, Function<String, Object> parse) implements Leaf {}

    /** True or false. */
    record Truth() implements Leaf {}

    /** A word of a closed list, with the constant it stands for. */
    record Word(Class<?> type, SequencedMap<String, Object> words) implements Leaf {}

    /** An amount of money. */
    record Price() implements Leaf {}

    /** A conductor size as the trade writes it. */
    record Size() implements Leaf {}

    /** The coefficients of a polynomial, lowest power first. */
    record Coefficients() implements Leaf {}

    /** Any JSON. */
    record Any() implements Leaf {}

    /** One of several records, told apart by the word in one member. */
    record Choice(Class<?> type, String discriminator, SequencedMap<String, RecordShape> kinds) implements Shape {}

    /** A list; whether its greatest length is stated or the general one. */
    record Many(Shape element, int min, int max, boolean stated) implements Shape {}

    /** An object whose member names are free. */
    record Table(Shape value) implements Shape {}
}
