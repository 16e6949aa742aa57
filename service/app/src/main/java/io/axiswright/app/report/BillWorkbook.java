package io.axiswright.app.report;

import io.axiswright.engine.bill.BillResult;
import io.axiswright.engine.bill.BillSection;
import io.axiswright.engine.bill.SaleTotal;
import io.axiswright.engine.finding.Finding;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.jspecify.annotations.Nullable;

/** A bill as a workbook: its lines, totals and findings on a sheet each; numbers are numbers, texts are never formulas. */
final class BillWorkbook {

    /** In characters: one asker is seen whole, a hundred of them do not push the next columns out of sight. */
    private static final int ASKERS_WIDTH = 40;

    private BillWorkbook() {}

    /** The bill, in a workbook made on that day. */
    static byte[] write(BillResult bill, LocalDate day) {
        var bytes = new ByteArrayOutputStream();
        try {
            try (var workbook = new Workbook(bytes, "Axiswright", null)) {
                lines(workbook.newWorksheet("Lines"), bill);
                totals(workbook.newWorksheet("Totals"), bill);
                findings(workbook.newWorksheet("Findings"), bill);
            }
            return WorkbookDay.set(bytes.toByteArray(), day);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void lines(Worksheet sheet, BillResult bill) {
        headings(sheet, BillTable.headings());
        sheet.width(BillTable.headings().indexOf("askers"), ASKERS_WIDTH);
        List<@Nullable Object[]> rows = BillTable.rows(bill).toList();
        for (int r = 0; r < rows.size(); r++) {
            @Nullable Object[] row = rows.get(r);
            for (int c = 0; c < row.length; c++) {
                put(sheet, r + 1, c, row[c]);
            }
        }
    }

    private static void totals(Worksheet sheet, BillResult bill) {
        headings(
                sheet,
                List.of(
                        "section",
                        "total",
                        "currency",
                        "massKilograms",
                        "linesWithoutMass",
                        "saleTotal",
                        "marginTotal"));
        Map<String, BillSection> sections = new LinkedHashMap<>();
        sections.put("required", bill.required());
        sections.put("optional", bill.optional());
        sections.put("spares", bill.spares());
        int row = 1;
        for (var section : sections.entrySet()) {
            put(sheet, row, 0, section.getKey());
            put(sheet, row, 1, section.getValue().total().amount());
            put(sheet, row, 2, bill.currency());
            put(sheet, row, 3, BigDecimal.valueOf(section.getValue().mass().si()));
            put(sheet, row, 4, BigDecimal.valueOf(section.getValue().linesWithoutMass()));
            @Nullable SaleTotal sale = section.getValue().sale();
            put(sheet, row, 5, sale == null ? null : sale.total().amount());
            put(sheet, row, 6, sale == null ? null : sale.margin().amount());
            row++;
        }
    }

    private static void findings(Worksheet sheet, BillResult bill) {
        headings(sheet, List.of("severity", "code", "subject", "text", "remedy"));
        for (int row = 0; row < bill.findings().size(); row++) {
            Finding finding = bill.findings().get(row);
            put(sheet, row + 1, 0, finding.severity().name());
            put(sheet, row + 1, 1, finding.code().code());
            put(sheet, row + 1, 2, finding.subject());
            put(sheet, row + 1, 3, finding.text());
            put(sheet, row + 1, 4, finding.remedy());
        }
    }

    private static void headings(Worksheet sheet, List<String> headings) {
        for (int c = 0; c < headings.size(); c++) {
            sheet.value(0, c, headings.get(c));
            sheet.style(0, c).bold().set();
        }
        sheet.freezePane(0, 1);
    }

    /** Shown with the places it has, as money is written. */
    private static void number(Worksheet sheet, int row, int column, BigDecimal number) {
        sheet.value(row, column, number);
        if (number.scale() > 0) {
            sheet.style(row, column).format("0." + "0".repeat(number.scale())).set();
        }
    }

    private static void put(Worksheet sheet, int row, int column, @Nullable Object value) {
        switch (value) {
            case null -> {}
            case BigDecimal number -> number(sheet, row, column, number);
            default -> sheet.value(row, column, XmlText.legal(value.toString()));
        }
    }
}
