package io.axiswright.engine.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.OperatingLife;
import io.axiswright.engine.design.Operation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Time;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Which cable costs least over the life of a machine. */
class LeastCostTest {

    private static final OperatingLife TEN_YEARS = new OperatingLife(10, 0.05, null, null);

    private static Money euro(String amount) {
        return new Money(new BigDecimal(amount), "EUR");
    }

    private static CableOption option(String size, String price, double loss) {
        return new CableOption("cable-" + size, ConductorSize.metric(size), euro(price), new Power(loss));
    }

    private static EnergyResult result(Money price, CableOption... options) {
        return new EnergyBalance()
                .balance(new EnergyRequest(
                        new Operation(new Time(4000 * 3600.0), price, TEN_YEARS),
                        List.of(),
                        List.of(),
                        List.of(),
                        new Power(0),
                        List.of(),
                        List.of(new CableOptions(
                                "C1", "/design/axes/0", new Length(20), options[0].item(), List.of(options)))));
    }

    private static CableEconomy only(EnergyResult result) {
        return Objects.requireNonNull(result.cables()).getFirst();
    }

    /**
     * The coefficient of the worked example of IEC 60287-3-2 Annex A (from memory, not confirmed): 30 years, 2250 h at 60.9e-6
     * $/Wh and 0.003 $/W a year, load 0.5 %, price 2 %, discount 5 % a year, three conductors: F = 9.2341 $/W.
     */
    @Test
    void coefficientOfTheStandardsExample() {
        double factor = LeastCost.factor(new OperatingLife(30, 0.05, 0.02, 0.005));
        assertThat(3 * (2250 * 60.9e-6 + 0.003) * factor).isCloseTo(9.2341, within(5e-4));
    }

    /** The present value of an annuity: ten years at 5 % are 7.7217 times the yearly amount, at 0 % ten times. */
    @Test
    void factorIsThePresentValueOfAnAnnuity() {
        assertThat(LeastCost.factor(TEN_YEARS)).isCloseTo((1 - Math.pow(1.05, -10)) / 0.05, within(1e-12));
        assertThat(LeastCost.factor(TEN_YEARS)).isCloseTo(7.7217, within(5e-5));
        assertThat(LeastCost.factor(new OperatingLife(10, 0, null, null))).isCloseTo(10, within(1e-12));
    }

    /**
     * 4000 h at 0.25 EUR: a watt costs 1 EUR a year, 7.7217 EUR in ten. 2.5 mm²: 20 m · 2 EUR + 8 · 7.7217 = 101.77 EUR; 4 mm²:
     * 60 + 5 · 7.7217 = 98.61 EUR; 6 mm²: 90 + 3.333 · 7.7217 = 115.74 EUR. The saving is 3.16 EUR.
     */
    @Test
    void byHand() {
        EnergyResult result =
                result(euro("0.25"), option("2.5", "2.00", 8), option("4", "3.00", 5), option("6", "4.50", 10 / 3.0));
        CableEconomy cable = only(result);
        assertThat(cable.options())
                .extracting(c -> c.purchase().amount() + " + " + c.losses().amount() + " = "
                        + c.total().amount())
                .containsExactly("40.00 + 61.77 = 101.77", "60.00 + 38.61 = 98.61", "90.00 + 25.74 = 115.74");
        assertThat(cable.cheapest()).isEqualTo("cable-4");
        assertThat(cable.saving()).isEqualTo(euro("3.16"));
        assertThat(result.findings())
                .filteredOn(f -> f.code() == FindingCode.ENERGY_THICKER_CABLE_CHEAPER)
                .singleElement()
                .extracting(Finding::text)
                .asString()
                .contains("C1", "4 mm2", "2.5 mm2");
    }

    @Test
    void theSelectedCableStaysWhereNoneIsCheaper() {
        EnergyResult result = result(euro("0.25"), option("2.5", "2.00", 0.8), option("4", "3.00", 0.5));
        assertThat(only(result).cheapest()).isEqualTo("cable-2.5");
        assertThat(only(result).saving()).isEqualTo(euro("0.00"));
        assertThat(result.findings()).isEmpty();
    }

    @Test
    void dearerEnergyNeverMakesTheCheapestThinner() {
        double last = 0;
        for (String price : List.of("0.01", "0.05", "0.10", "0.20", "0.40", "1.00", "3.00")) {
            CableEconomy cable = only(result(
                    euro(price),
                    option("2.5", "2.00", 8),
                    option("4", "3.00", 5),
                    option("6", "4.50", 10 / 3.0),
                    option("10", "7.00", 2)));
            double area = cable.options().stream()
                    .filter(o -> o.item().equals(cable.cheapest()))
                    .findFirst()
                    .orElseThrow()
                    .size()
                    .area()
                    .si();
            assertThat(area).isGreaterThanOrEqualTo(last);
            last = area;
        }
        assertThat(last).isCloseTo(10e-6, within(1e-12));
    }

    @Test
    void currenciesMustAgree() {
        EnergyResult result =
                result(new Money(new BigDecimal("0.25"), "USD"), option("2.5", "2.00", 8), option("4", "3.00", 5));
        assertThat(result.cables()).isNull();
        assertThat(result.findings()).extracting(Finding::code).containsExactly(FindingCode.ENERGY_CURRENCIES_DIFFER);
    }
}
