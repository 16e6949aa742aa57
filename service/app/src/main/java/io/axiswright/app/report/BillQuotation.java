package io.axiswright.app.report;

import io.axiswright.app.wire.RecordWriter;
import io.axiswright.engine.bill.BillLine;
import io.axiswright.engine.bill.BillResult;
import io.axiswright.engine.bill.BillSection;
import io.axiswright.engine.bill.LineKind;
import io.axiswright.engine.bill.SalePrice;
import io.axiswright.engine.bill.SaleTotal;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.Severity;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Time;
import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
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
 * otherwise, all without tax; who offers it, until when and at what tax is for the sender to fill in. Its lines have the ids of the bill's,
 * which are the same in every revision. Its notes begin with what forbids building the system, and with cautions.
 */
final class BillQuotation {

    private static final String UBL = "urn:oasis:names:specification:ubl:schema:xsd:";
    private static final String QUOTATION = UBL + "Quotation-2";
    private static final String AGGREGATE = UBL + "CommonAggregateComponents-2";
    private static final String BASIC = UBL + "CommonBasicComponents-2";
    private static final int ID_DIGITS = 16;
    private static final int SECONDS_A_DAY = 86_400;

    /** UN/CEFACT Recommendation 20 common code of the day. */
    private static final String DAY = "DAY";

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
        amount("TaxExclusiveAmount", total);
        amount("PayableAmount", total);
        close();
        for (BillLine line : lines) {
            line(line);
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
        text("Note", "All prices and the amount payable are without tax.");
        if (!bill.withoutPrice().isEmpty()) {
            text("Note", "The total is short by the items on request: " + String.join(", ", bill.withoutPrice()));
        }
        leftOut(bill.optional(), "optional");
        leftOut(bill.spares(), "of spare parts");
        leftOut(bill.customerSupplied(), "that the customer supplies");
    }

    private void leftOut(BillSection section, String what) throws XMLStreamException {
        int count = section.lines().size();
        if (count > 0) {
            text("Note", "Lines that are not part of this quotation: " + count + " " + what + ".");
        }
    }

    private void line(BillLine line) throws XMLStreamException {
        open("QuotationLine");
        text("ID", line.id());
        open("LineItem");
        text("ID", line.id());
        if (line.kind() == LineKind.NO_CHARGE) {
            text("Note", "without charge");
        } else if (line.linePrice() == null) {
            text("Note", "on request");
        }
        quantity("Quantity", line.orderQuantity(), line.unitCode());
        @Nullable SalePrice sale = line.sale();
        @Nullable Money linePrice = sale == null ? line.linePrice() : sale.linePrice();
        @Nullable Money unitPrice = sale == null ? line.unitPrice() : sale.unitPrice();
        if (linePrice != null) {
            amount("LineExtensionAmount", linePrice);
        }
        if (line.leadTime() != null) {
            open("Delivery");
            open("EstimatedDeliveryPeriod");
            quantity("DurationMeasure", days(line.leadTime()), DAY);
            close();
            close();
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

    /** Whole days, for a part of one is none on a calendar. */
    private static BigDecimal days(Time time) {
        return BigDecimal.valueOf(time.si()).divide(BigDecimal.valueOf(SECONDS_A_DAY), 0, RoundingMode.CEILING);
    }

    private void quantity(String name, BigDecimal value, String unitCode) throws XMLStreamException {
        xml.writeStartElement("cbc", name, BASIC);
        xml.writeAttribute("unitCode", unitCode);
        xml.writeCharacters(value.toPlainString());
        xml.writeEndElement();
    }

    private void amount(String name, Money money) throws XMLStreamException {
        xml.writeStartElement("cbc", name, BASIC);
        xml.writeAttribute("currencyID", money.currency());
        xml.writeCharacters(money.amount().toPlainString());
        xml.writeEndElement();
    }
}
