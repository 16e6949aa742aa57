package io.axiswright.app.catalogues;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import java.util.List;
import java.util.regex.Pattern;

/** The names under which catalogues are stored: they stand in addresses, so they keep to characters that may. */
final class CatalogueName {

    private static final Pattern FORM = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ._-]{0,99}");

    private CatalogueName() {}

    /** The fault of a name that cannot be one; none if it can. */
    static List<Fault> faults(String name) {
        return FORM.matcher(name).matches()
                ? List.of()
                : List.of(new Fault(
                        "/name",
                        FaultCode.UNKNOWN_VALUE,
                        "\"" + name + "\" cannot stand in an address.",
                        "1 to 100 letters, digits, spaces, dots, hyphens and underscores, a letter or digit first"));
    }
}
