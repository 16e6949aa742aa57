package io.axiswright.engine.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Time;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

@org.jspecify.annotations.NullUnmarked
class ChangeSetsTest {

    private static Difference changed(Object before, Object after, String... path) {
        List<Step> steps = new ArrayList<>();
        for (String step : path) {
            steps.add(step.startsWith("#") ? new Step.Element(step.substring(1), 0) : new Step.Member(step));
        }
        ChangeKind kind = before == null ? ChangeKind.ADDED : after == null ? ChangeKind.REMOVED : ChangeKind.CHANGED;
        return new Difference(steps, kind, before, after);
    }

    private static Money money(int amount, String currency) {
        return new Money(BigDecimal.valueOf(amount), currency);
    }

    private static Difference price(int item, Money before, Money after) {
        return changed(before, after, "catalogue", item % 2 == 0 ? "driveUnits" : "gateways", "#item-" + item, "price");
    }

    private static List<ChangeSet> sets(IntStream items, IntFunction<Difference> change) {
        return ChangeSets.of(items.mapToObj(change).toList());
    }

    @Test
    void aPriceListIsOneChangeAndNinePricesAreNine() {
        assertThat(sets(IntStream.range(0, 10), k -> price(k, money(k, "EUR"), money(k + 7, "EUR"))))
                .extracting(ChangeSet::id, ChangeSet::words)
                .containsExactly(tuple("group-1", "10 prices of the catalogue changed"));
        assertThat(sets(IntStream.range(0, 9), k -> price(k, money(k, "EUR"), money(k + 7, "EUR"))))
                .hasSize(9)
                .noneMatch(ChangeSet::isGroup);
    }

    /** In the catalogue and in the design, in amounts and where the currency alone is named. */
    @Test
    void anotherCurrencyIsOneChangeWhereverItStands() {
        List<Difference> changes = new ArrayList<>();
        changes.add(changed("EUR", "USD", "catalogue", "currency"));
        IntStream.range(0, 9).forEach(k -> changes.add(price(k, money(k, "EUR"), money(k + 1, "USD"))));
        changes.add(changed(new Mass(1), new Mass(2), "design", "axes", "#lift", "mechanism", "load"));
        changes.add(changed(money(1, "EUR"), money(1, "USD"), "design", "operation", "energyPrice"));
        assertThat(ChangeSets.of(changes))
                .extracting(ChangeSet::words)
                .containsExactly(
                        "the currency changed from EUR to USD at 11 places",
                        "load of axis lift changed from 1 kg to 2 kg");
    }

    /** What was chosen place by place is not one change because it bears one name. */
    @Test
    void valuesOfTheDesignAreOneChangeOnlyIfTheyAreTheSame() {
        assertThat(sets(
                        IntStream.range(0, 12),
                        k -> changed(new Mass(40), new Mass(41 + k), "design", "axes", "#a" + k, "mechanism", "load")))
                .hasSize(12);
        assertThat(sets(
                        IntStream.range(0, 12),
                        k -> changed(new Mass(40), new Mass(50), "design", "axes", "#a" + k, "mechanism", "load")))
                .extracting(ChangeSet::words)
                .containsExactly("load at 12 places of the design changed from 40 kg to 50 kg");
    }

    @Test
    void aColumnOrRowsOfACatalogueAreOneChange() {
        assertThat(sets(
                        IntStream.range(0, 11),
                        k -> changed(null, new Time(k), "catalogue", "saleTerms", "#item-" + k, "leadTime")))
                .extracting(ChangeSet::words)
                .containsExactly("11 lead times of the catalogue were added");
        assertThat(sets(
                        IntStream.range(0, 11),
                        k -> changed(new Object(), null, "catalogue", "cableAssemblies", "#item-" + k)))
                .extracting(ChangeSet::words)
                .containsExactly("11 cable assemblies of the catalogue were removed");
    }
}
