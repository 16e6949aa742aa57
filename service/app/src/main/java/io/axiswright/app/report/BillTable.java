package io.axiswright.app.report;

import io.axiswright.engine.bill.BillLine;
import io.axiswright.engine.bill.BillResult;
import io.axiswright.engine.bill.BillSection;
import io.axiswright.engine.bill.LineDemand;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A bill as a table with one row for each line, all sections one after the other. */
final class BillTable {

    /** A column: its heading, and what stands in it, a text or a number. */
    enum Column {
        SECTION("section", row -> row.section),
        ID("id", row -> row.line.id()),
        ITEM("item", row -> row.line.item()),
        DESCRIPTION("description", row -> row.line.description()),
        QUANTITY("quantity", row -> row.line.quantity()),
        ORDER_QUANTITY("orderQuantity", row -> row.line.orderQuantity()),
        UNIT("unit", row -> row.line.unit().name()),
        UNIT_CODE("unitCode", row -> row.line.unitCode()),
        UNIT_PRICE("unitPrice", row -> amount(row.line.unitPrice())),
        LINE_PRICE("linePrice", row -> amount(row.line.linePrice())),
        CURRENCY("currency", row -> row.currency),
        ASKERS("askers", row -> askers(row.line)),
        MASS("massKilograms", row -> number(row.line.mass(), 1)),
        LEAD_TIME("leadTimeDays", row -> number(row.line.leadTime(), SECONDS_A_DAY)),
        MARGIN(
                "margin",
                row -> row.line.sale() == null
                        ? null
                        : BigDecimal.valueOf(row.line.sale().margin())),
        SALE_UNIT_PRICE(
                "saleUnitPrice",
                row -> row.line.sale() == null ? null : amount(row.line.sale().unitPrice())),
        SALE_LINE_PRICE(
                "saleLinePrice",
                row -> row.line.sale() == null ? null : amount(row.line.sale().linePrice()));

        private final String heading;
        private final Function<Row, @Nullable Object> cell;

        Column(String heading, Function<Row, @Nullable Object> cell) {
            this.heading = heading;
            this.cell = cell;
        }
    }

    private static final double SECONDS_A_DAY = 86_400;

    private record Row(String section, BillLine line, String currency) {}

    private BillTable() {}

    static List<String> headings() {
        return Arrays.stream(Column.values()).map(column -> column.heading).toList();
    }

    /** The rows: a cell is a String, a BigDecimal, or null where there is nothing to say. */
    static Stream<@Nullable Object[]> rows(BillResult bill) {
        return Stream.of(
                        rows("required", bill.required(), bill.currency()),
                        rows("optional", bill.optional(), bill.currency()),
                        rows("customerSupplied", bill.customerSupplied(), bill.currency()),
                        rows("noCharge", bill.noCharge(), bill.currency()),
                        rows("spares", bill.spares(), bill.currency()))
                .flatMap(Function.identity());
    }

    private static Stream<@Nullable Object[]> rows(String name, BillSection section, String currency) {
        return section.lines().stream()
                .map(line -> new Row(name, line, currency))
                .map(row -> Arrays.stream(Column.values())
                        .map(column -> column.cell.apply(row))
                        .toArray());
    }

    private static @Nullable BigDecimal amount(@Nullable Money money) {
        return money == null ? null : money.amount();
    }

    private static @Nullable BigDecimal number(@Nullable Quantity quantity, double unit) {
        return quantity == null ? null : BigDecimal.valueOf(quantity.si() / unit);
    }

    private static String askers(BillLine line) {
        return line.demands().stream().map(LineDemand::asker).distinct().collect(Collectors.joining("; "));
    }
}
