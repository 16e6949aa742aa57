package io.axiswright.engine.bill;

import static io.axiswright.engine.bill.Shop.demand;
import static io.axiswright.engine.bill.Shop.need;
import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.NeedKind;
import io.axiswright.engine.design.ItemKind;
import io.axiswright.engine.design.LineClass;
import io.axiswright.engine.design.MarginRule;
import io.axiswright.engine.design.SpareRule;
import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Sale prices by hand. */
class MarginTest {

    private static final Shop SHOP = new Shop("EUR")
            .foot("foot", "18.00")
            .accessory("drive", "100.00", need("ferrule", 3, NeedKind.REQUIRED), need("tool", 1, NeedKind.OPTIONAL))
            .accessory("ferrule", "0.105")
            .accessory("tool", "30.00")
            .accessory("asked", null);

    private static BillResult bill(MarginRule... margins) {
        var request = new BillRequest(
                SHOP.catalogue(),
                CatalogueSource.SENT,
                List.of(
                        demand("a", "drive", "2", NeedKind.REQUIRED),
                        demand("a", "foot", "1", NeedKind.REQUIRED),
                        demand("a", "asked", "1", NeedKind.REQUIRED),
                        demand("a", "foot", "5", NeedKind.CUSTOMER_SUPPLIED)),
                List.of(new SpareRule(ItemKind.FOOT_KIT, null, 1)));
        return new BillMaking().make(Copies.with(request, "margins", List.of(margins)));
    }

    private static Money eur(String amount) {
        return new Money(new BigDecimal(amount), "EUR");
    }

    private static SalePrice sale(BillSection section, String item) {
        return Objects.requireNonNull(section.lines().stream()
                .filter(line -> line.item().equals(item))
                .findFirst()
                .orElseThrow()
                .sale());
    }

    @Test
    void withoutMarginsNothingIsSold() {
        assertThat(bill().required().sale()).isNull();
        assertThat(bill().required().lines()).allMatch(line -> line.sale() == null);
    }

    /**
     * A quarter on all: 100.00 / 0.75 = 133.33 (two places, as the catalogue's price), twice 266.66; 0.105 / 0.75 = 0.140 (three
     * places), six times 0.84; 18.00 / 0.75 = 24.00. Together 291.50, of which the catalogue's 200.00 + 0.63 + 18.00 = 218.63
     * leave 72.87.
     */
    @Test
    void aMarginIsAShareOfTheSalePrice() {
        var required = bill(new MarginRule(null, null, 0.25)).required();

        assertThat(sale(required, "drive")).isEqualTo(new SalePrice(0.25, eur("133.33"), eur("266.66")));
        assertThat(sale(required, "ferrule")).isEqualTo(new SalePrice(0.25, eur("0.140"), eur("0.84")));
        assertThat(sale(required, "foot")).isEqualTo(new SalePrice(0.25, eur("24.00"), eur("24.00")));
        assertThat(required.total()).isEqualTo(eur("218.63"));
        assertThat(required.sale()).isEqualTo(new SaleTotal(eur("291.50"), eur("72.87")));
        // what has no price is not sold yet
        assertThat(required.lines())
                .filteredOn(line -> line.item().equals("asked"))
                .allMatch(line -> line.sale() == null);
    }

    /** Half of the sale price doubles, a fifth makes 18.00 / 0.8 = 22.50, a tenth 100.00 / 0.9 = 111.11, 30.00 / 0.6 = 50.00. */
    @Test
    void theClosestRuleDecides() {
        var bill = bill(
                new MarginRule(null, null, 0.1),
                new MarginRule(null, LineClass.OPTIONAL, 0.4),
                new MarginRule(ItemKind.FOOT_KIT, null, 0.2),
                new MarginRule(ItemKind.FOOT_KIT, LineClass.SPARE, 0.5));

        assertThat(sale(bill.required(), "drive").unitPrice()).isEqualTo(eur("111.11"));
        assertThat(sale(bill.required(), "foot").unitPrice()).isEqualTo(eur("22.50"));
        assertThat(sale(bill.optional(), "tool").unitPrice()).isEqualTo(eur("50.00"));
        assertThat(sale(bill.spares(), "foot").unitPrice()).isEqualTo(eur("36.00"));
        assertThat(bill.customerSupplied().lines()).allMatch(line -> line.sale() == null);
        assertThat(bill.customerSupplied().sale()).isEqualTo(new SaleTotal(eur("0.00"), eur("0.00")));
    }

    @Test
    void whereNoRuleFitsItIsSoldAsBought() {
        var required = bill(new MarginRule(ItemKind.GATEWAY, null, 0.3)).required();

        assertThat(sale(required, "drive")).isEqualTo(new SalePrice(0, eur("100.00"), eur("200.00")));
        assertThat(required.sale()).isEqualTo(new SaleTotal(required.total(), eur("0.00")));
    }
}
