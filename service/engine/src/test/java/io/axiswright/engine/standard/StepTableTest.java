package io.axiswright.engine.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** No look-up falls between two rows: what lies between them has the upper row's answer, what lies beyond has none. */
class StepTableTest {

    @ParameterizedTest
    @CsvSource({
        "nec-250-122,device_up_to,size",
        "nfpa-79-8-2-2-3,device_up_to,size",
        "nec-310-15-b-1,ambient_up_to,factor_90",
        "nec-310-15-c-1,conductors_up_to,factor",
        "iec-60204-1-table-d-1,ambient_up_to,factor",
        "iec-60364-5-52-table-b-52-14,ambient_up_to,factor_xlpe_90",
        "iec-60364-5-52-table-e-52-1,share_up_to,factor"
    })
    void betweenTwoRowsTheUpperCounts(String file, String bound, String value) {
        List<TableRow> rows = TableFile.rows(file);
        var table = StepTable.of(rows, _ -> true, bound, r -> Optional.of(r.text(value)));
        double below = Double.NEGATIVE_INFINITY;
        for (TableRow row : rows) {
            double end = row.upTo(bound);
            for (double at : places(below, end)) {
                assertThat(table.at(at).map(Sourced::value))
                        .as(file + " at " + at)
                        .hasValue(row.text(value));
            }
            below = end;
        }
        assertThat(table.at(below * 1.001)).isEqualTo(Double.isInfinite(below) ? table.at(below) : Optional.empty());
    }

    /** Just above the row before, half-way, and the bound itself. */
    private static List<Double> places(double below, double end) {
        var places = new ArrayList<Double>();
        double top = Double.isInfinite(end) ? (below + 1) * 10 : end;
        double bottom = Double.isInfinite(below) ? top / 2 : below;
        places.add(bottom + (top - bottom) * 1e-3);
        places.add((bottom + top) / 2);
        places.add(top);
        return places;
    }

    /** A table whose rows do not ascend would hide one of them. */
    @Test
    void rowsAscend() {
        List<TableRow> rows = TableFile.rows("nec-250-122").reversed();
        assertThatIllegalStateException()
                .isThrownBy(() -> StepTable.of(rows, _ -> true, "device_up_to", r -> Optional.of(r.text("size"))));
    }
}
