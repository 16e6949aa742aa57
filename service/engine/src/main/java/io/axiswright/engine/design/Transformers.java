package io.axiswright.engine.design;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is fed through transformers by decision, and what is known of them. One transformer stands at the mains panel for each
 * voltage asked for; each feeds a panel of its own there, from which its loads are run.
 *
 * @param axes axes whose drive units and fans get their rated voltage from a transformer, whatever voltage the mains have
 * @param controlSupplies whether the control supplies get theirs from one; not if absent
 * @param earthing how the secondaries are earthed: TN (a point of the secondary is joined to the protective conductor) or IT
 *     (none is); TN if absent
 * @param resistiveVoltage resistive part of their short-circuit voltage, as a fraction of rated voltage: their load losses over
 *     their rated power, at most {@code transformerImpedance}; their voltage drop is not counted if absent
 * @param noLoadLoss what they lose as long as they are switched on, as a fraction of rated power; if absent, as without
 *     {@code resistiveVoltage}, their losses are counted neither as energy nor as heat
 * @param place place of the network in whose enclosure they stand; in none if absent
 */
public record Transformers(
        @AnyOrder @Count(max = 1024) List<String> axes,
        @Nullable Boolean controlSupplies,
        @Nullable SystemEarthing earthing,
        @Bounds(min = 0, max = 0.5) @Nullable Double resistiveVoltage,
        @Bounds(min = 0, max = 0.5) @Nullable Double noLoadLoss,
        @Nullable String place) {

    /** Keeps the list from being changed. */
    public Transformers {
        axes = List.copyOf(axes);
    }

    /** Whether the control supplies are fed through one. */
    public boolean ofControlSupplies() {
        return Boolean.TRUE.equals(controlSupplies);
    }

    /** How the secondaries are earthed. */
    public SystemEarthing secondaryEarthing() {
        return earthing == null ? SystemEarthing.TN : earthing;
    }
}
