package io.axiswright.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CurrenciesTest {

    /** The JDK keeps its own table of what each country pays with; countries that share a currency or have none are fewer. */
    @Test
    void takesWhatEveryCountryPaysWith() {
        List<String> paid = Arrays.stream(Locale.getISOCountries())
                .map(country -> Currency.getInstance(Locale.of("", country)))
                .filter(Objects::nonNull)
                .map(Currency::getCurrencyCode)
                .toList();
        assertThat(paid).hasSizeGreaterThan(200).allMatch(Currencies::inUse);
    }

    @Test
    void knowsTheMinorUnitOfEach() {
        assertThat(Currencies.all())
                .hasSize(155)
                .allMatch(code -> Currency.getInstance(code).getDefaultFractionDigits() >= 0);
    }

    /** Withdrawn (ISO 4217 list three), then metals, funds, units of account, test and none (list one). */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "DEM", "FRF", "HRK", "BGN", "ZWL", "SLL", "ANG", "XAU", "XAG", "XPT", "XPD", "CHE", "CLF", "USN", "XDR",
                "XBA", "XSU", "XTS", "XXX", "EURO", "eur", ""
            })
    void refusesWhatIsNoMoneyInUse(String code) {
        assertThat(Currencies.inUse(code)).isFalse();
    }
}
