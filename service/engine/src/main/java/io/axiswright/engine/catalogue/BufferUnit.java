package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Buffer at the output of a control supply, which feeds on after the mains is lost.
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit; on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param kind what keeps the energy
 * @param storedEnergy energy it gives at its terminals from full charge, new and at room temperature: of a capacitor without
 *     regulated output ½ C V² at the supply's output voltage
 * @param usableShare share of it left at the end of its life at the lowest temperature
 * @param heldVoltage output voltage it holds while it feeds; if absent, it is a capacitor straight on the output, whose voltage
 *     falls as it gives its charge
 * @param ratedCurrent most current it gives
 * @param maxParallel how many may feed one output together
 */
public record BufferUnit(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs,
        BufferKind kind,
        @Bounds(above = 0) Energy storedEnergy,
        @Bounds(above = 0, max = 1) double usableShare,
        @Bounds(above = 0, max = 60) @Nullable Voltage heldVoltage,
        @Bounds(above = 0) Current ratedCurrent,
        @Bounds(min = 1, max = 64) int maxParallel)
        implements Item {}
