package io.axiswright.engine.controlpower;

import java.util.Comparator;
import java.util.List;

/**
 * How good a choice of supplies and cables is; less is better, what stands first counts first.
 *
 * @param overloaded supplies that give too little current
 * @param failing chains some terminal of which has too little voltage, or a gateway of which passes on too much current
 * @param unprotected output circuits whose protection is not good enough
 * @param mismatched supplies rated for another voltage than the mains offers
 * @param price price of supplies and cables
 */
record SupplyCost(int overloaded, int failing, int unprotected, int mismatched, Price price)
        implements Comparable<SupplyCost> {

    static final SupplyCost NOTHING = new SupplyCost(0, 0, 0, 0, Price.NOTHING);

    private static final Comparator<SupplyCost> ORDER = Comparator.comparingInt(SupplyCost::overloaded)
            .thenComparingInt(SupplyCost::failing)
            .thenComparingInt(SupplyCost::unprotected)
            .thenComparingInt(SupplyCost::mismatched)
            .thenComparing(SupplyCost::price);

    SupplyCost plus(SupplyCost other) {
        return new SupplyCost(
                overloaded + other.overloaded,
                failing + other.failing,
                unprotected + other.unprotected,
                mismatched + other.mismatched,
                price.plus(other.price));
    }

    /** The same with the protections of its circuits. */
    SupplyCost with(List<CircuitProtection> protections) {
        return new SupplyCost(
                overloaded,
                failing,
                (int) protections.stream().filter(p -> !p.holds()).count(),
                mismatched,
                protections.stream().map(p -> Price.of(p.device())).reduce(price, Price::plus));
    }

    @Override
    public int compareTo(SupplyCost other) {
        return ORDER.compare(this, other);
    }
}
