package io.axiswright.app.report;

/** The media types of a bill beside JSON. */
public final class BillFormats {

    /** One row a line (RFC 4180). */
    public static final String CSV = "text/csv";

    /** A workbook of Office Open XML. */
    public static final String XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    /** An OASIS UBL quotation, which has no media type of its own. */
    public static final String XML = "application/xml";

    private BillFormats() {}
}
