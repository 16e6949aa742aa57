package io.axiswright.engine.quantity;

import java.util.Set;
import java.util.stream.Collectors;

/** The currencies prices may be in: those of ISO 4217 that are money in use, neither withdrawn nor funds, metals or test codes. */
public final class Currencies {

    /** What is accepted, in words. */
    public static final String ACCEPTED =
            "the ISO 4217 code of a currency in use, such as EUR or USD; none that is withdrawn, and no fund, metal or test code";

    private static final Set<String> IN_USE = ResourceTable.rows("/quantity/currencies.csv").stream()
            .map(row -> row.getField("code"))
            .collect(Collectors.toUnmodifiableSet());

    private Currencies() {}

    /** Whether it is the ISO 4217 alphabetic code of a currency in use. */
    public static boolean inUse(String code) {
        return IN_USE.contains(code);
    }

    /** All of them. */
    static Set<String> all() {
        return IN_USE;
    }
}
