package io.axiswright.app.report;

import io.axiswright.app.wire.RecordWriter;
import io.axiswright.engine.bill.BillResult;
import java.util.function.Function;
import org.springframework.http.MediaType;

/** The forms a bill can be had in; where the caller asks for nothing, the first. */
enum BillFormat {
    JSON(MediaType.APPLICATION_JSON_VALUE, RecordWriter::write),
    CSV(BillFormats.CSV, BillCsv::write),
    XLSX(BillFormats.XLSX, BillWorkbook::write),
    UBL(BillFormats.XML, BillQuotation::write);

    private final MediaType type;
    private final Function<BillResult, byte[]> writing;

    BillFormat(String type, Function<BillResult, byte[]> writing) {
        this.type = MediaType.valueOf(type);
        this.writing = writing;
    }

    MediaType type() {
        return type;
    }

    byte[] write(BillResult bill) {
        return writing.apply(bill);
    }
}
