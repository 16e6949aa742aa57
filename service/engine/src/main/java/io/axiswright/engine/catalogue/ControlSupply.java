package io.axiswright.engine.catalogue;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * 24 V DC supply.
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit (one metre for bulk cable); on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param feed what it is fed from
 * @param ratedVoltage rated input voltage
 * @param outputVoltage output voltage at the terminals
 * @param regulation how far the output may fall, as a fraction
 * @param ratedCurrent rated output current
 * @param efficiency efficiency at rated load
 * @param powerFactor power factor of its input
 * @param derateFrom ambient from which its current is derated
 * @param deratePerKelvin fraction of rated current lost per kelvin above
 * @param maxProtectiveDevice highest rating of the protective device ahead
 * @param holdUpTime time the output stays up after mains is lost, at rated load
 * @param altitude what it loses of its rated current at altitude; nothing if absent
 * @param overload what it gives beyond its rating for a short time; only its rated current if absent
 * @param inputInrush peak of its input current when it is switched on; not known if absent
 * @param maxParallel how many may feed one output together, decoupled or sharing by themselves; 1 if absent
 */
public record ControlSupply(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs,
        Feed feed,
        @Bounds(above = 0) Voltage ratedVoltage,
        @Bounds(above = 0, max = 60) Voltage outputVoltage,
        @Bounds(min = 0, max = 0.2) double regulation,
        @Bounds(above = 0) Current ratedCurrent,
        @Bounds(above = 0, max = 1) double efficiency,
        @Bounds(above = 0, max = 1) double powerFactor,
        @Bounds(min = 223.15, max = 373.15) Temperature derateFrom,
        @Bounds(min = 0, max = 1) double deratePerKelvin,
        @Bounds(above = 0) Current maxProtectiveDevice,
        @Bounds(min = 0, max = 1000000) Time holdUpTime,
        @Nullable AltitudeRule altitude,
        @Nullable OverloadCurrent overload,
        @Bounds(above = 0) @Nullable Current inputInrush,
        @Bounds(min = 1, max = 16) @Nullable Integer maxParallel)
        implements Item {

    /** A supply that stands alone, gives its rated current at any altitude and no more. */
    public ControlSupply(
            String id,
            String description,
            @Nullable Money price,
            List<Need> needs,
            Feed feed,
            Voltage ratedVoltage,
            Voltage outputVoltage,
            double regulation,
            Current ratedCurrent,
            double efficiency,
            double powerFactor,
            Temperature derateFrom,
            double deratePerKelvin,
            Current maxProtectiveDevice,
            Time holdUpTime) {
        this(
                id,
                description,
                price,
                needs,
                feed,
                ratedVoltage,
                outputVoltage,
                regulation,
                ratedCurrent,
                efficiency,
                powerFactor,
                derateFrom,
                deratePerKelvin,
                maxProtectiveDevice,
                holdUpTime,
                null,
                null,
                null,
                null);
    }

    /** How many may feed one output together. */
    public int mostParallel() {
        return maxParallel == null ? 1 : maxParallel;
    }
}
