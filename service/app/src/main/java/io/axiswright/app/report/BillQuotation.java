package io.axiswright.app.report;

import io.axiswright.app.wire.RecordWriter;
import io.axiswright.engine.bill.BillLine;
import io.axiswright.engine.bill.BillResult;
import io.axiswright.engine.bill.SalePrice;
import io.axiswright.engine.bill.SaleTotal;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.Severity;
import io.axiswright.engine.quantity.Money;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.jspecify.annotations.Nullable;

/**
 * A bill as a quotation of OASIS UBL 2.3, with UN/CEFACT Recommendation 20 unit codes. It offers what is bought and what comes
 * along without charge, in the quantities to order, at the sale prices where the design states margins and at the catalogue's prices
 * otherwise; who offers it is for the sender to fill in. Its notes begin with what forbids building the system, and with cautions.
 */
final class BillQuotation {

    private static final String UBL = "urn:oasis:names:specification:ubl:schema:xsd:";
    private static final String QUOTATION = UBL + "Quotation-2";
    private static final String AGGREGATE = UBL + "CommonAggregateComponents-2";
    private static final String BASIC = UBL + "CommonBasicComponents-2";
    private static final int ID_DIGITS = 16;

    private final BillResult bill;
    private final LocalDate issued;
    private final XMLStreamWriter xml;

    private BillQuotation(BillResult bill, LocalDate issued, XMLStreamWriter xml) {
        this.bill = bill;
        this.issued = issued;
        this.xml = xml;
    }

    /** The bill, issued on that day. */
    static byte[] write(BillResult bill, LocalDate issued) {
        var bytes = new ByteArrayOutputStream();
        try {
            XMLStreamWriter xml =
                    XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(bytes, StandardCharsets.UTF_8.name());
            new BillQuotation(bill, issued, xml).document();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return bytes.toByteArray();
    }

    private void document() throws XMLStreamException {
        List<BillLine> lines = Stream.concat(bill.required().lines().stream(), bill.noCharge().lines().stream())
                // what another line of the item leaves of its last piece is not offered twice
                .filter(line -> line.orderQuantity().signum() > 0)
                .toList();
        xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
        xml.writeStartElement("", "Quotation", QUOTATION);
        xml.writeDefaultNamespace(QUOTATION);
        xml.writeNamespace("cac", AGGREGATE);
        xml.writeNamespace("cbc", BASIC);
        text("UBLVersionID", "2.3");
        text("ID", id());
        text("IssueDate", issued.toString());
        notes();
        text("PricingCurrencyCode", bill.currency());
        text("LineCountNumeric", Integer.toString(lines.size()));
        xml.writeEmptyElement("cac", "SellerSupplierParty", AGGREGATE);
        open("QuotedMonetaryTotal");
        @Nullable SaleTotal sale = bill.required().sale();
        Money total = sale == null ? bill.required().total() : sale.total();
        amount("LineExtensionAmount", total);
        amount("PayableAmount", total);
        close();
        for (int k = 0; k < lines.size(); k++) {
            line(k + 1, lines.get(k));
        }
        xml.writeEndDocument();
    }

    /** The same bill has the same id. */
    private String id() {
        return HexFormat.of().formatHex(Digest.sha256(RecordWriter.write(bill))).substring(0, ID_DIGITS);
    }

    private void notes() throws XMLStreamException {
        for (Finding finding : bill.findings()) {
            if (finding.severity() != Severity.NOTE) {
                text("Note", finding.severity() + " " + finding.code().code() + ": " + finding.text());
            }
        }
        if (!bill.withoutPrice().isEmpty()) {
            text("Note", "The total is short by the items on request: " + String.join(", ", bill.withoutPrice()));
        }
        if (!bill.optional().lines().isEmpty()) {
            text("Note", bill.optional().lines().size() + " optional lines are not part of this quotation.");
        }
        if (!bill.spares().lines().isEmpty()) {
            text("Note", bill.spares().lines().size() + " lines of spare parts are not part of this quotation.");
        }
        if (!bill.customerSupplied().lines().isEmpty()) {
            text(
                    "Note",
                    bill.customerSupplied().lines().size()
                            + " lines that the customer supplies are not part of this quotation.");
        }
    }

    private void line(int number, BillLine line) throws XMLStreamException {
        open("QuotationLine");
        text("ID", Integer.toString(number));
        open("LineItem");
        text("ID", Integer.toString(number));
        if (line.linePrice() == null) {
            text("Note", "on request");
        }
        xml.writeStartElement("cbc", "Quantity", BASIC);
        xml.writeAttribute("unitCode", line.unitCode());
        xml.writeCharacters(line.orderQuantity().toPlainString());
        xml.writeEndElement();
        @Nullable SalePrice sale = line.sale();
        @Nullable Money linePrice = sale == null ? line.linePrice() : sale.linePrice();
        @Nullable Money unitPrice = sale == null ? line.unitPrice() : sale.unitPrice();
        if (linePrice != null) {
            amount("LineExtensionAmount", linePrice);
        }
        if (unitPrice != null) {
            open("Price");
            amount("PriceAmount", unitPrice);
            close();
        }
        open("Item");
        text("Name", line.description());
        open("SellersItemIdentification");
        text("ID", line.item());
        close();
        close();
        close();
        close();
    }

    private void open(String name) throws XMLStreamException {
        xml.writeStartElement("cac", name, AGGREGATE);
    }

    private void close() throws XMLStreamException {
        xml.writeEndElement();
    }

    private void text(String name, String value) throws XMLStreamException {
        xml.writeStartElement("cbc", name, BASIC);
        xml.writeCharacters(XmlText.legal(value));
        xml.writeEndElement();
    }

    private void amount(String name, Money money) throws XMLStreamException {
        xml.writeStartElement("cbc", name, BASIC);
        xml.writeAttribute("currencyID", money.currency());
        xml.writeCharacters(money.amount().toPlainString());
        xml.writeEndElement();
    }
}
