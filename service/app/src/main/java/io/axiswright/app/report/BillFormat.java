package io.axiswright.app.report;

import io.axiswright.app.wire.RecordWriter;
import io.axiswright.engine.bill.BillResult;
import java.time.LocalDate;
import java.util.function.BiFunction;
import org.springframework.http.MediaType;

/** The forms a bill can be had in; where the caller asks for nothing, the first. */
enum BillFormat {
    JSON(MediaType.APPLICATION_JSON_VALUE, (bill, _) -> RecordWriter.write(bill)),
    CSV(BillFormats.CSV + ";charset=UTF-8", (bill, _) -> BillCsv.write(bill)),
    XLSX(BillFormats.XLSX, BillWorkbook::write),
    UBL(BillFormats.XML, BillQuotation::write);

    private final MediaType type;
    private final BiFunction<BillResult, LocalDate, byte[]> writing;

    BillFormat(String type, BiFunction<BillResult, LocalDate, byte[]> writing) {
        this.type = MediaType.valueOf(type);
        this.writing = writing;
    }

    MediaType type() {
        return type;
    }

    /** The bill as it is on that day. */
    byte[] write(BillResult bill, LocalDate day) {
        return writing.apply(bill, day);
    }
}
