package io.axiswright.app.wire;

import io.axiswright.app.wire.Json.JsonNull;
import io.axiswright.app.wire.Json.JsonNumber;
import io.axiswright.app.wire.Json.JsonObject;
import io.axiswright.app.wire.Json.JsonText;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.Currencies;
import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads amounts of money; the amount a decimal string, or a number. */
record PriceReading(Faults faults, NumberReading numbers) {

    private static final List<String> NAMES = List.of("amount", "currency");
    private static final Pattern AMOUNT = Pattern.compile("-?\\d{1,30}(\\.\\d{1,30})?");
    private static final String AMOUNT_ACCEPTED =
            "a decimal amount such as \"12.50\", at least 0, at most 15 digits before the point and 6 after it";

    @Nullable
    Object money(Json json, Shape.Price shape, Path path) {
        if (!(json instanceof JsonObject object)) {
            faults.add(path, FaultCode.WRONG_TYPE, "There is " + json.inWords() + ".", Acceptable.of(shape));
            return null;
        }
        int before = faults.count();
        Json[] parts = Parts.of(object, NAMES, path, faults);
        BigDecimal amount = amount(parts[0], path.member("amount"));
        String currency = currency(parts[1], path.member("currency"));
        return faults.count() > before || amount == null || currency == null ? null : new Money(amount, currency);
    }

    private @Nullable BigDecimal amount(Json json, Path path) {
        String literal = switch (json) {
            case JsonNumber number -> number.literal();
            case JsonText text -> text.value();
            default -> null;
        };
        if (literal == null) {
            return wrong(json, "amount", AMOUNT_ACCEPTED, path);
        }
        if (json instanceof JsonText && !AMOUNT.matcher(literal).matches()) {
            faults.add(path, FaultCode.WRONG_TYPE, Excerpt.quoted(literal) + " is no amount.", AMOUNT_ACCEPTED);
            return null;
        }
        BigDecimal amount = numbers.decimal(literal, path, AMOUNT_ACCEPTED);
        if (amount != null && amount.signum() < 0) {
            numbers.outOfRange(literal, AMOUNT_ACCEPTED, path);
            return null;
        }
        return amount;
    }

    private @Nullable String currency(Json json, Path path) {
        if (!(json instanceof JsonText(String code))) {
            return wrong(json, "currency", Currencies.ACCEPTED, path);
        }
        if (!Currencies.inUse(code)) {
            faults.add(
                    path,
                    FaultCode.UNKNOWN_VALUE,
                    Excerpt.quoted(code) + " is no currency in use.",
                    Currencies.ACCEPTED);
            return null;
        }
        return code;
    }

    private <T> @Nullable T wrong(Json json, String name, String accepted, Path path) {
        if (json instanceof JsonNull) {
            faults.add(path, FaultCode.MISSING, "There is no " + name + ".", accepted);
        } else {
            faults.add(path, FaultCode.WRONG_TYPE, "There is " + json.inWords() + ".", accepted);
        }
        return null;
    }
}
