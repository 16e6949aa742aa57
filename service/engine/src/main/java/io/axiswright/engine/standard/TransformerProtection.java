package io.axiswright.engine.standard;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.quantity.Current;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The highest devices on both sides of a transformer: NFPA 70 Table 450.3(B), IEC 61558-1. */
public final class TransformerProtection {

    private record Row(
            CodeBasis basis,
            double secondaryBelow,
            OptionalDouble primaryShare,
            double secondaryShare,
            boolean nextSizeUp,
            Source source) {}

    private static final List<Row> TABLE = TableFile.rows("transformer-protection").stream()
            .map(r -> new Row(
                    r.word("basis", CodeBasis.class),
                    r.upTo("secondary_below"),
                    r.optionalNumber("primary_share"),
                    r.number("secondary_share"),
                    Boolean.parseBoolean(r.text("next_size_up")),
                    r.sourced("").source()))
            .toList();

    private final CodeBasis basis;
    private final DeviceKind kind;

    /** The rules of a code basis for devices of a kind. */
    public TransformerProtection(CodeBasis basis, DeviceKind kind) {
        this.basis = basis;
        this.kind = kind;
    }

    /** The highest standard primary device; none where the code sets none, or where not even the smallest is allowed. */
    public Optional<Current> primary(Current ratedPrimary, Current ratedSecondary) {
        var share = row(ratedSecondary).primaryShare();
        return share.isEmpty()
                ? Optional.empty()
                : DeviceRatings.nextDown(basis, kind, new Current(share.getAsDouble() * ratedPrimary.si()))
                        .map(Sourced::value);
    }

    /** The highest standard secondary device; none where not even the smallest is allowed. */
    public Optional<Current> secondary(Current ratedSecondary) {
        var row = row(ratedSecondary);
        var limit = new Current(row.secondaryShare() * ratedSecondary.si());
        return (row.nextSizeUp()
                        ? DeviceRatings.nextUp(basis, kind, limit)
                        : DeviceRatings.nextDown(basis, kind, limit))
                .map(Sourced::value);
    }

    /** Where the rule stands, marked where it is from memory. */
    public String clause(Current ratedSecondary) {
        var source = row(ratedSecondary).source();
        return source.told();
    }

    private Row row(Current ratedSecondary) {
        return TABLE.stream()
                .filter(row -> row.basis == basis && ratedSecondary.si() < row.secondaryBelow)
                .findFirst()
                .orElseThrow();
    }
}
