package io.axiswright.app.wire;

import io.axiswright.app.wire.Json.JsonArray;
import io.axiswright.app.wire.Json.JsonText;
import io.axiswright.app.wire.Json.JsonTruth;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.ConductorSize;
import java.time.DateTimeException;
import org.jspecify.annotations.Nullable;

/** Reads what is not taken apart into members. */
final class LeafReading {

    private final Faults faults;
    private final NumberReading numbers;
    private final MeasureReading measures;
    private final PriceReading prices;
    private final JsonNodes nodes;

    LeafReading(Faults faults) {
        this.faults = faults;
        this.numbers = new NumberReading(faults);
        this.measures = new MeasureReading(faults, numbers);
        this.prices = new PriceReading(faults, numbers);
        this.nodes = new JsonNodes(faults);
    }

    @Nullable
    Object leaf(Json json, Shape.Leaf leaf, Path path) {
        return switch (leaf) {
            case Shape.Measure measure -> measures.quantity(json, measure, path);
            case Shape.Plain plain -> numbers.number(json, plain, path);
            case Shape.Price price -> prices.money(json, price, path);
            case Shape.Text text -> text(json, text, path);
            case Shape.Truth truth -> json instanceof JsonTruth(boolean is) ? is : wrongType(json, truth, path);
            case Shape.Word word -> word(json, word, path);
            case Shape.Token token -> token(json, token, path);
            case Shape.Size size -> size(json, size, path);
            case Shape.Coefficients coefficients -> polynomial(json, coefficients, path);
            case Shape.Any _ -> nodes.node(json, path);
        };
    }

    private @Nullable Object text(Json json, Shape.Text shape, Path path) {
        if (!(json instanceof JsonText(String text))) {
            return wrongType(json, shape, path);
        }
        int length = text.codePointCount(0, text.length());
        if (text.isBlank()) {
            faults.add(path, FaultCode.WRONG_COUNT, "The text is empty.", Acceptable.of(shape));
            return null;
        }
        if (length > shape.maxLength()) {
            faults.add(path, FaultCode.WRONG_COUNT, "The text has " + length + " characters.", Acceptable.of(shape));
            return null;
        }
        if (!Excerpt.isPrintable(text)) {
            faults.add(
                    path,
                    FaultCode.OUT_OF_RANGE,
                    "The text " + Excerpt.quoted(text) + " holds a control character.",
                    "printable characters");
            return null;
        }
        return text;
    }

    private @Nullable Object word(Json json, Shape.Word shape, Path path) {
        if (!(json instanceof JsonText(String word))) {
            return wrongType(json, shape, path);
        }
        Object constant = shape.words().get(word);
        return constant != null ? constant : unknown(word, shape, path);
    }

    private @Nullable Object token(Json json, Shape.Token shape, Path path) {
        if (!(json instanceof JsonText(String text))) {
            return wrongType(json, shape, path);
        }
        try {
            return shape.parse().apply(text);
        } catch (DateTimeException | IllegalArgumentException _) {
            return unknown(text, shape, path);
        }
    }

    private @Nullable Object size(Json json, Shape shape, Path path) {
        if (!(json instanceof JsonText(String label))) {
            return wrongType(json, shape, path);
        }
        try {
            return new ConductorSize(label);
        } catch (IllegalArgumentException _) {
            return unknown(label, shape, path);
        }
    }

    private @Nullable Object polynomial(Json json, Shape shape, Path path) {
        if (!(json instanceof JsonArray(var elements)) || elements.isEmpty()) {
            return wrongType(json, shape, path);
        }
        int before = faults.count();
        double[] coefficients = new double[elements.size()];
        for (int k = 0; k < coefficients.length; k++) {
            coefficients[k] = numbers.real(elements.get(k), Range.ANY, path.element(k));
        }
        return faults.count() == before ? Polynomial.of(coefficients) : null;
    }

    private @Nullable Object unknown(String word, Shape shape, Path path) {
        faults.add(path, FaultCode.UNKNOWN_VALUE, "Unknown: " + Excerpt.quoted(word) + ".", Acceptable.of(shape));
        return null;
    }

    private @Nullable Object wrongType(Json json, Shape shape, Path path) {
        faults.add(path, FaultCode.WRONG_TYPE, "There is " + json.inWords() + ".", Acceptable.of(shape));
        return null;
    }
}
