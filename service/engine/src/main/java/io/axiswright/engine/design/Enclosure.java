package io.axiswright.engine.design;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.ThermalResistance;
import io.axiswright.engine.quantity.VolumeFlow;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An enclosure whose heat is to be balanced: the panel at a place of the network, with the control supplies, gateways and
 * transformers that stand there.
 *
 * @param place the place of the network it stands at
 * @param width its width
 * @param height its height
 * @param depth its depth
 * @param rearCovered whether its rear stands against a wall; not if absent
 * @param coveredSides how many of its two sides stand against others; none if absent
 * @param topCovered whether its top is built over; not if absent
 * @param heatTransfer heat its walls pass in W/(m²·K); 5.5 of painted sheet steel if absent
 * @param axes axes whose power electronics stand in it, with the loss they have at any load and, where the
 *     catalogue states {@code ratedLoss}, what their cycle adds to it; none if absent
 * @param otherLosses mean power turned into heat in it by everything else: contactors, reactors, braking resistors, wiring, and
 *     the load's share of electronics whose {@code ratedLoss} is not stated; none if absent
 * @param airFlow flow of outside air that fans blow through it, filters in place; closed if absent
 * @param exchanger thermal resistance of a heat exchanger from the air inside to that outside; none if absent
 */
public record Enclosure(
        String place,
        @Bounds(above = 0, max = 20) Length width,
        @Bounds(above = 0, max = 20) Length height,
        @Bounds(above = 0, max = 20) Length depth,
        boolean rearCovered,
        @Bounds(min = 0, max = 2) @Nullable Integer coveredSides,
        boolean topCovered,
        @Bounds(above = 0, max = 100) @Nullable Double heatTransfer,
        @AnyOrder @Count(max = 1024) List<String> axes,
        @Bounds(min = 0, max = 1e6) @Nullable Power otherLosses,
        @Bounds(above = 0, max = 100) @Nullable VolumeFlow airFlow,
        @Bounds(above = 0, max = 100) @Nullable ThermalResistance exchanger) {

    /** Keeps the list from being changed. */
    public Enclosure {
        axes = List.copyOf(axes);
    }
}
