package io.axiswright.app.openapi;

import io.axiswright.app.wire.Range;
import io.axiswright.app.wire.Shape;
import io.axiswright.engine.quantity.Money;
import io.swagger.v3.oas.models.media.Schema;
import java.math.BigDecimal;
import java.util.List;

/** The schemas of values that have no name of their own. */
final class LeafSchemas {

    private static final String CONDUCTOR_SIZE =
            "^([0-9]+(\\.[0-9]+)? mm2|[0-9]{1,2} AWG|[1-4]/0 AWG|[0-9]{3,4} kcmil)$";

    private LeafSchemas() {}

    static Schema<?> of(Shape.Leaf leaf, boolean input) {
        return switch (leaf) {
            case Shape.Plain plain -> number(plain, input);
            case Shape.Text text -> text(text, input);
            case Shape.Token token -> {
                Schema<Object> schema = Schemas.ofType("string");
                schema.setFormat(token.format());
                yield schema;
            }
            case Shape.Truth _ -> Schemas.ofType("boolean");
            case Shape.Word word -> WordSchemas.of(word);
            case Shape.Price _ -> price(input);
            case Shape.Size _ -> {
                Schema<Object> schema = Schemas.ofType("string");
                schema.setPattern(CONDUCTOR_SIZE);
                schema.setExamples(List.of("2.5 mm2", "14 AWG", "2/0 AWG", "250 kcmil"));
                yield schema;
            }
            case Shape.Coefficients _ -> {
                Schema<Object> schema = Schemas.ofType("array");
                schema.setItems(Schemas.ofType("number"));
                schema.setMinItems(1);
                yield schema;
            }
            case Shape.Any _ -> Schemas.any();
            case Shape.Measure _ -> throw new IllegalArgumentException("a quantity has a name");
        };
    }

    /** A list; the general limit binds only what a caller sends. */
    static Schema<Object> list(Schema<?> element, Shape.Many many, boolean input) {
        Schema<Object> schema = Schemas.ofType("array");
        schema.setItems(element);
        if (many.min() > 0) {
            schema.setMinItems(many.min());
        }
        if (input || many.stated()) {
            schema.setMaxItems(many.max());
        }
        return schema;
    }

    private static Schema<Object> number(Shape.Plain plain, boolean input) {
        boolean whole = plain.digits() == Shape.Digits.INTEGER || plain.digits() == Shape.Digits.LONG;
        Schema<Object> schema = Schemas.ofType(whole ? "integer" : "number");
        switch (plain.digits()) {
            case INTEGER -> schema.setFormat("int32");
            case LONG -> schema.setFormat("int64");
            case REAL -> schema.setFormat("double");
            case DECIMAL -> schema.setFormat("decimal");
        }
        Range range = input ? plain.checked() : plain.range();
        if (Double.isFinite(range.above())) {
            schema.setExclusiveMinimumValue(exact(range.above()));
        }
        if (Double.isFinite(range.min())) {
            schema.setMinimum(exact(range.min()));
        }
        if (Double.isFinite(range.max())) {
            schema.setMaximum(exact(range.max()));
        }
        return schema;
    }

    private static BigDecimal exact(double bound) {
        return new BigDecimal(BigDecimal.valueOf(bound).stripTrailingZeros().toPlainString());
    }

    private static Schema<Object> text(Shape.Text text, boolean input) {
        Schema<Object> schema = Schemas.ofType("string");
        if (input) {
            schema.setMinLength(1);
            schema.setMaxLength(text.maxLength());
            schema.setPattern("\\S");
        }
        return schema;
    }

    private static Schema<Object> price(boolean input) {
        Schema<Object> amount = Schemas.ofType("string");
        amount.setPattern(input ? "^[0-9]{1,15}(\\.[0-9]{1,6})?$" : "^[0-9]+(\\.[0-9]+)?$");
        Schema<Object> number = Schemas.ofType("number");
        number.setMinimum(BigDecimal.ZERO);
        number.setExclusiveMaximumValue(BigDecimal.TEN.pow(15));
        Schema<Object> currency = Schemas.ofType("string");
        currency.setPattern("^[A-Z]{3}$");
        currency.setDescription("ISO 4217 alphabetic code of a currency in use");
        Schema<Object> schema = Schemas.ofType("object");
        schema.setDescription(Words.of(Money.class));
        if (input) {
            Schema<Object> either = Schemas.any();
            either.setAnyOf(List.of(amount, number));
            amount = either;
            schema.setAdditionalProperties(false);
        }
        amount.setDescription("the amount, decimal");
        schema.addProperty("amount", amount);
        schema.addProperty("currency", currency);
        schema.setRequired(List.of("amount", "currency"));
        return schema;
    }
}
