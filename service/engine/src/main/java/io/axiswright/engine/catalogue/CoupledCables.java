package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Resistance;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Two cables of one use joined by a coupler, for a way that no single one reaches. Both carry 24 V on conductors of one size, or neither
 * does, and together they are no longer than either allows.
 *
 * @param cable the first
 * @param coupler what joins them
 * @param second the other, which may be of the same item
 */
public record CoupledCables(CableAssembly cable, Item coupler, CableAssembly second) implements LaidCable {

    /** Most cables of a catalogue that may name one coupler: every two of them are a pair. */
    static final int MOST = 256;

    /** Why a coupler is bought, in words a buyer understands. */
    public static final String WHY = "joins two cables on a way no single one reaches";

    /** Lengths that differ by less are the same, m. */
    private static final double SAME = 1e-9;

    /**
     * All pairs that may be joined, the cheapest first.
     *
     * @param items the item of an id
     */
    public static List<CoupledCables> of(List<CableAssembly> all, Function<String, Item> items) {
        Map<String, List<CableAssembly>> byCoupler = new LinkedHashMap<>();
        for (CableAssembly cable : all) {
            if (cable.coupler() != null) {
                byCoupler
                        .computeIfAbsent(cable.coupler(), _ -> new ArrayList<>())
                        .add(cable);
            }
        }
        List<CoupledCables> pairs = new ArrayList<>();
        byCoupler.forEach((coupler, cables) -> pair(cables, items.apply(coupler), pairs));
        pairs.sort(CHEAPEST);
        return List.copyOf(pairs);
    }

    private static void pair(List<CableAssembly> cables, Item coupler, List<CoupledCables> pairs) {
        for (int one = 0; one < cables.size(); one++) {
            for (int other = one; other < cables.size(); other++) {
                var pair = new CoupledCables(cables.get(one), coupler, cables.get(other));
                if (pair.isAllowed()) {
                    pairs.add(pair);
                }
            }
        }
    }

    private boolean isAllowed() {
        return cable.use() == second.use()
                && Objects.equals(cable.powerConductor(), second.powerConductor())
                && pieces().stream()
                        .flatMap(piece -> Stream.ofNullable(piece.joinedLength()))
                        .allMatch(most -> length().si() <= most.si() + SAME);
    }

    /** What both are for. */
    public CableUse use() {
        return cable.use();
    }

    @Override
    public Length length() {
        return new Length(cable.length().si() + second.length().si());
    }

    @Override
    public @Nullable ConductorSize powerConductor() {
        return cable.powerConductor();
    }

    /** Each cable has that of its own two ends, of which one is at the coupler. */
    @Override
    public Resistance connectorResistance() {
        return new Resistance(pieces().stream()
                .flatMap(piece -> Stream.ofNullable(piece.connectorResistance()))
                .mapToDouble(Resistance::si)
                .sum());
    }

    @Override
    public List<CableAssembly> pieces() {
        return List.of(cable, second);
    }

    @Override
    public List<Item> items() {
        return List.of(cable, coupler, second);
    }

    @Override
    public BigDecimal amount() {
        return items().stream()
                .map(Item::price)
                .filter(Objects::nonNull)
                .map(Money::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Override
    public int onRequest() {
        return (int) items().stream().filter(item -> item.price() == null).count();
    }

    @Override
    public CableExtension extension() {
        return new CableExtension(coupler.id(), second.id());
    }
}
