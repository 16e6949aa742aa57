package io.axiswright.engine.catalogue;

import io.axiswright.engine.graph.NaturalOrder;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Resistance;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is laid on a way: a cable of fixed length, or two joined where no single one reaches. */
public sealed interface LaidCable permits CableAssembly, CoupledCables {

    /** By price, those with parts on request last; then the shorter; then by ids. */
    Comparator<LaidCable> CHEAPEST = Comparator.comparingInt(LaidCable::onRequest)
            .thenComparing(LaidCable::amount)
            .thenComparing(laid -> laid.length().si())
            .thenComparing(laid -> laid.pieces().getFirst().id(), NaturalOrder.OF_NAMES)
            .thenComparing(laid -> laid.pieces().getLast().id(), NaturalOrder.OF_NAMES);

    /** Length from end to end. */
    Length length();

    /** Size of its 24 V conductors; none if it carries none. */
    @Nullable
    ConductorSize powerConductor();

    /** Contact resistance of its connector pairs together, there and back; none if absent. */
    @Nullable
    Resistance connectorResistance();

    /** Its cables, in the order they are laid. */
    List<CableAssembly> pieces();

    /** All that has to be bought for it. */
    List<Item> items();

    /** What leads on from its first cable; none if that reaches. */
    @Nullable
    CableExtension extension();

    /** What it costs, as far as prices are known. */
    BigDecimal amount();

    /** How many of its items have no price. */
    int onRequest();
}
