package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.catalogue.LaidCable;
import java.math.BigDecimal;
import java.util.Comparator;

/**
 * What items cost together; one whose price is on request counts as dearer than any that has one.
 *
 * @param onRequest how many have no price
 * @param amount what the others cost
 */
record Price(int onRequest, BigDecimal amount) implements Comparable<Price> {

    static final Price NOTHING = new Price(0, BigDecimal.ZERO);

    private static final Comparator<Price> ORDER =
            Comparator.comparingInt(Price::onRequest).thenComparing(Price::amount);

    static Price of(Item item) {
        var price = item.price();
        return price == null ? new Price(1, BigDecimal.ZERO) : new Price(0, price.amount());
    }

    static Price of(LaidCable cable) {
        return new Price(cable.onRequest(), cable.amount());
    }

    Price plus(Price other) {
        return new Price(onRequest + other.onRequest, amount.add(other.amount));
    }

    Price times(int count) {
        return new Price(onRequest * count, amount.multiply(BigDecimal.valueOf(count)));
    }

    @Override
    public int compareTo(Price other) {
        return ORDER.compare(this, other);
    }
}
