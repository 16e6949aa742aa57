package io.axiswright.engine.standard;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.quantity.ApparentPower;
import java.util.List;

/** Standard rated powers of transformers: the IEEE series in North America, the R10 series of ISO 3 under IEC. */
public final class TransformerRatings {

    private record Row(CodeBasis basis, Feed feed, Sourced<ApparentPower> rating) {}

    private static final List<Row> TABLE = TableFile.rows("transformer-ratings").stream()
            .map(r -> new Row(
                    r.word("basis", CodeBasis.class),
                    r.word("feed", Feed.class),
                    r.sourced(new ApparentPower(r.number("rating")))))
            .toList();

    private TransformerRatings() {}

    /** All standard ratings for a secondary of that many phases, smallest first; none for DC. */
    public static List<Sourced<ApparentPower>> of(CodeBasis basis, Feed secondary) {
        return TABLE.stream()
                .filter(row -> row.basis == basis && row.feed == secondary)
                .map(Row::rating)
                .toList();
    }
}
