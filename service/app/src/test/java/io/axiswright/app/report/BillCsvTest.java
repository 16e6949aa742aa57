package io.axiswright.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Texts that begin a formula, at the beginning of a cell or of what some spreadsheets take for one. */
class BillCsvTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "=1+1|'=1+1",
                "+1|'+1",
                "-1+2|'-1+2",
                "@SUM(A1)|'@SUM(A1)",
                " =1|' =1",
                "\uFF1D1|'\uFF1D1",
                "plug;=1+1|plug;'=1+1",
                "plug; =1|plug;' =1",
                "plug, 4-pole|plug, 4-pole",
                "a=b|a=b",
                "x; y|x; y"
            })
    void nothingBeginsAFormula(String text, String cell) {
        assertThat(BillCsv.harmless(text)).isEqualTo(cell);
    }
}
