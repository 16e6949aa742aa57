package io.axiswright.engine.energy;

import io.axiswright.engine.design.OperatingLife;
import io.axiswright.engine.design.Operation;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Ratio;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The size of each cable that costs least over the life of the machine: price and present value of losses, {@code C = C_I + W_1
 * t p Q/(1+i)} with {@code Q} the sum of {@code r^(n-1)} over the years and {@code r = (1+a)²(1+b)/(1+i)}.
 */
final class LeastCost {

    private static final String CLAUSE = "IEC 60287-3-2 clause 4 (from memory): losses paid at the end of each year";

    private final Money price;
    private final double factor;
    private final Year year;
    private final OperatingLife life;
    private final List<Finding> findings = new ArrayList<>();

    LeastCost(Operation operation) {
        this.price = Objects.requireNonNull(operation.energyPrice());
        this.life = Objects.requireNonNull(operation.life());
        this.factor = factor(life);
        this.year = new Year(operation);
    }

    /** What a first year's cost of 1 comes to over the life in money of today: Q/(1 + i). */
    static double factor(OperatingLife life) {
        double ratio = growth(life.loadGrowth())
                * growth(life.loadGrowth())
                * growth(life.priceGrowth())
                / (1 + life.discountRate());
        double sum = 0;
        double term = 1 / (1 + life.discountRate());
        for (int k = 0; k < life.years(); k++) {
            sum += term;
            term *= ratio;
        }
        return sum;
    }

    private static double growth(@Nullable Double share) {
        return 1 + (share == null ? 0 : share);
    }

    List<CableEconomy> of(List<CableOptions> circuits) {
        return circuits.stream().map(this::of).toList();
    }

    private CableEconomy of(CableOptions circuit) {
        List<CableLifeCost> costs =
                circuit.options().stream().map(o -> cost(o, circuit)).toList();
        CableLifeCost selected = costs.stream()
                .filter(c -> c.item().equals(circuit.selected()))
                .findFirst()
                .orElseThrow();
        CableLifeCost cheapest = costs.stream()
                .min(Comparator.comparing((CableLifeCost c) -> c.total().amount()))
                .filter(c -> c.total().amount().compareTo(selected.total().amount()) < 0)
                .orElse(selected);
        if (!cheapest.equals(selected)) {
            findings.add(FindingCode.ENERGY_THICKER_CABLE_CHEAPER.at(
                    circuit.circuit(),
                    circuit.pointer(),
                    CLAUSE,
                    selected.size().area(),
                    cheapest.size().area()));
        }
        return new CableEconomy(
                circuit.circuit(),
                circuit.length(),
                selected.item(),
                cheapest.item(),
                new Money(selected.total().amount().subtract(cheapest.total().amount()), price.currency()),
                costs);
    }

    private CableLifeCost cost(CableOption option, CableOptions circuit) {
        String currency = price.currency();
        Money purchase = Year.rounded(
                option.price()
                        .amount()
                        .multiply(BigDecimal.valueOf(circuit.length().si())),
                currency);
        Money losses =
                Year.rounded(year.price(price, option.loss().si()).multiply(BigDecimal.valueOf(factor)), currency);
        return new CableLifeCost(option.item(), option.size(), purchase, losses, purchase.plus(losses));
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    Derivation derivation() {
        return new Derivation(
                "cables",
                "F",
                "sum over n = 1 … N of r^(n-1) / (1 + i), r = (1 + a)² (1 + b) / (1 + i)",
                Derivation.inputs(
                        "N", new Ratio(life.years()),
                        "i", new Ratio(life.discountRate()),
                        "a", new Ratio(growth(life.loadGrowth()) - 1),
                        "b", new Ratio(growth(life.priceGrowth()) - 1)),
                CLAUSE,
                new Ratio(factor));
    }
}
