package io.axiswright.engine.finding;

import io.axiswright.engine.quantity.Quantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;

/**
 * Reads the formula of a derivation as somebody with a pocket calculator would, and works it out from the inputs printed beside it;
 * all in SI units. A formula is a row of parts, set apart by commas or semicolons: what is to be worked out comes first
 * ({@code T = a·b}, or the right side alone), after it definitions of what it uses that is no input, and words. An equation in the
 * result itself is held against it.
 */
public final class FormulaReader {

    private final Map<String, Double> values = new HashMap<>();
    private String text = "";
    private int at;

    private FormulaReader() {}

    /** What the formula comes to; empty if it is not closed: words, an integral, or symbols without a value. */
    public static Optional<Double> value(Derivation derivation) {
        var reader = new FormulaReader();
        for (Map.Entry<String, Quantity> input : derivation.inputs().entrySet()) {
            reader.values.put(input.getKey(), input.getValue().si());
        }
        List<String> parts = parts(derivation.formula());
        for (String part : parts.subList(1, parts.size()).reversed()) {
            reader.define(part);
        }
        return reader.solved(parts.getFirst(), derivation);
    }

    private void define(String part) {
        int equals = part.indexOf(" = ");
        String symbol = equals < 0 ? "" : part.substring(0, equals).strip();
        if (!symbol.isEmpty() && !symbol.contains(" ") && !values.containsKey(symbol)) {
            evaluated(part.substring(equals + 3)).ifPresent(value -> values.put(symbol, value));
        }
    }

    private Optional<Double> solved(String first, Derivation derivation) {
        int equals = first.indexOf(" = ");
        if (equals < 0) {
            return evaluated(first);
        }
        String left = first.substring(0, equals).strip();
        String right = first.substring(equals + 3);
        if (left.equals(derivation.symbol()) || !values.containsKey(left) && left.matches("[\\p{L}\\p{N}_',]+")) {
            return evaluated(right);
        }
        double result = derivation.result().si();
        values.put(derivation.symbol(), result);
        Optional<Double> one = evaluated(left);
        Optional<Double> other = evaluated(right);
        return one.isEmpty() || other.isEmpty() ? Optional.empty() : Optional.of(result * one.get() / other.get());
    }

    /** What commas and semicolons outside brackets set apart. */
    private static List<String> parts(String formula) {
        List<String> parts = new ArrayList<>();
        int depth = 0;
        int from = 0;
        for (int k = 0; k < formula.length(); k++) {
            char c = formula.charAt(k);
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            boolean apart = (c == ',' || c == ';') && k + 1 < formula.length() && formula.charAt(k + 1) == ' ';
            if (depth == 0 && apart) {
                parts.add(formula.substring(from, k));
                from = k + 1;
            }
        }
        parts.add(formula.substring(from));
        return parts;
    }

    private Optional<Double> evaluated(String expression) {
        text = expression.strip();
        at = 0;
        try {
            double value = sum();
            skip();
            return at == text.length() ? Optional.of(value) : Optional.empty();
        } catch (NotClosed e) {
            return Optional.empty();
        }
    }

    private double sum() {
        double value = product();
        while (true) {
            if (taken("+")) {
                value += product();
            } else if (taken("−") || taken("-")) {
                value -= product();
            } else {
                return value;
            }
        }
    }

    private double product() {
        double value = power();
        while (true) {
            if (taken("·") || taken("×")) {
                value *= power();
            } else if (taken("/")) {
                value /= power();
            } else {
                return value;
            }
        }
    }

    private double power() {
        if (taken("−") || taken("-")) {
            return -power();
        }
        double base = atom();
        while (true) {
            if (taken("^")) {
                base = Math.pow(base, atom());
            } else if (at < text.length() && "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(text.charAt(at)) >= 0) {
                base = Math.pow(base, superscript());
                unit();
            } else {
                return base;
            }
        }
    }

    private int superscript() {
        int exponent = 0;
        while (at < text.length() && "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(text.charAt(at)) >= 0) {
            exponent = 10 * exponent + "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(text.charAt(at++));
        }
        return exponent;
    }

    private double atom() {
        skip();
        Optional<Map.Entry<String, Double>> known = values.entrySet().stream()
                .filter(one -> text.startsWith(one.getKey(), at)
                        && !runsOn(at + one.getKey().length()))
                .max(Comparator.comparingInt(one -> one.getKey().length()));
        if (known.isPresent()) {
            at += known.get().getKey().length();
            return known.get().getValue();
        }
        if (at < text.length() && Character.isDigit(text.charAt(at))) {
            return number();
        }
        if (taken("½")) {
            return 0.5 * (at < text.length() && text.charAt(at) != '·' ? atom() : 1);
        }
        if (taken("√")) {
            return Math.sqrt(at < text.length() && Character.isDigit(text.charAt(at)) ? number() : atom());
        }
        if (taken("(")) {
            return closed(")", sum());
        }
        if (taken("|")) {
            return Math.abs(closed("|", sum()));
        }
        return function();
    }

    private double function() {
        if (word("sqrt(")) {
            return Math.sqrt(closed(")", sum()));
        }
        if (word("tan(")) {
            return Math.tan(closed(")", sum()));
        }
        if (word("cbrt(")) {
            return Math.cbrt(closed(")", sum()));
        }
        if (word("ln(")) {
            return Math.log(closed(")", sum()));
        }
        if (word("e^")) {
            return Math.exp(atom());
        }
        if (word("min(")) {
            return list(Math::min);
        }
        if (word("max(")) {
            return list(Math::max);
        }
        if (word("pi") || taken("π")) {
            return Math.PI;
        }
        throw new NotClosed();
    }

    private double list(DoubleBinaryOperator choice) {
        double value = sum();
        while (taken(",")) {
            value = choice.applyAsDouble(value, sum());
        }
        return closed(")", value);
    }

    /** A number, with the unit that may stand behind it. */
    private double number() {
        int from = at;
        while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        double value = Double.parseDouble(text.substring(from, at));
        unit();
        return value;
    }

    private void unit() {
        for (String unit : List.of(" m", " s", " K")) {
            if (text.startsWith(unit, at) && !runsOn(at + unit.length())) {
                at += unit.length();
                return;
            }
        }
    }

    private double closed(String bracket, double value) {
        if (!taken(bracket)) {
            throw new NotClosed();
        }
        return value;
    }

    private boolean runsOn(int next) {
        return next < text.length()
                && (Character.isLetterOrDigit(text.charAt(next)) && "²³⁴".indexOf(text.charAt(next)) < 0
                        || "_'".indexOf(text.charAt(next)) >= 0);
    }

    private boolean word(String word) {
        if (text.startsWith(word, at)) {
            at += word.length();
            return true;
        }
        return false;
    }

    private boolean taken(String sign) {
        skip();
        return word(sign);
    }

    private void skip() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
    }

    private static final class NotClosed extends RuntimeException {
        private static final long serialVersionUID = 1;
    }
}
