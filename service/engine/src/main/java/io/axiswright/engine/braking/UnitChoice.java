package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.BrakingUnit;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Temperature;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest braking unit that holds one bus.
 *
 * @param chosen the trial of the unit that fits; absent if none does
 * @param rejected those tried before it, cheapest first
 */
record UnitChoice(@Nullable UnitTrial chosen, List<RejectedUnit> rejected) {

    /** Cheapest first; without a price last; amounts in different currencies do not compare, so currencies by name. */
    private static final Comparator<Bank> CHEAPEST_FIRST = Comparator.comparing(UnitChoice::currency)
            .thenComparing(UnitChoice::amount)
            .thenComparing(Bank::count)
            .thenComparing(bank -> bank.unit().id());

    /** A number of units alike in parallel. */
    private record Bank(BrakingUnit unit, int count) {}

    /** Tries units, cheapest first, until one fits. */
    static UnitChoice of(List<BrakingUnit> units, Bus bus, GroupLoads loads, Temperature ambient, double stopsPerHour) {
        List<RejectedUnit> rejected = new ArrayList<>();
        List<Bank> banks =
                units.stream().flatMap(UnitChoice::banks).sorted(CHEAPEST_FIRST).toList();
        for (Bank bank : banks) {
            UnitTrial trial = UnitTrial.of(bank.unit(), bank.count(), bus, loads, ambient, stopsPerHour);
            RejectedUnit why = trial.rejected();
            if (why == null) {
                return new UnitChoice(trial, rejected);
            }
            rejected.add(why);
        }
        return new UnitChoice(null, rejected);
    }

    private static Stream<Bank> banks(BrakingUnit unit) {
        int most = unit.maxParallel() == null ? 1 : unit.maxParallel();
        return IntStream.rangeClosed(1, most).mapToObj(count -> new Bank(unit, count));
    }

    private static String currency(Bank bank) {
        Money price = bank.unit().price();
        return price == null ? "~" : price.currency(); // "~" sorts after every currency code
    }

    private static BigDecimal amount(Bank bank) {
        Money price = bank.unit().price();
        return price == null ? BigDecimal.ZERO : price.amount().multiply(BigDecimal.valueOf(bank.count()));
    }
}
