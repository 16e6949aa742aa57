package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.HeatCapacity;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.ThermalResistance;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Chopper and resistor that burn off returned energy.
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit (one metre for bulk cable); on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param chopperOn bus voltage at which it switches on
 * @param chopperOff bus voltage at which it switches off again
 * @param resistance resistance of its resistor
 * @param resistanceTolerance tolerance of that resistance, as a fraction
 * @param chopperCurrent highest current of its chopper
 * @param continuousPower power its resistor takes for ever; lowered beforehand by what its maker asks for at the site's
 *     altitude, which is not applied here
 * @param pulseEnergy most energy of one pulse from cold; each run of return of the cycle, each stop and each descent is one, however
 *     long it lasts: for long ones state what the maker's curve allows for their length
 * @param heatCapacity heat capacity of its resistor
 * @param thermalResistance thermal resistance from resistor to ambient
 * @param resistorLimit highest temperature of its resistor
 * @param maxParallel how many, slaved to switch together, may work on one DC bus; 1 if absent
 * @param maxResistorCable longest cable between chopper and resistor; no limit stated if absent
 */
public record BrakingUnit(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs,
        @Bounds(above = 0) Voltage chopperOn,
        @Bounds(above = 0) Voltage chopperOff,
        @Bounds(above = 0) Resistance resistance,
        @Bounds(min = 0, max = 0.5) double resistanceTolerance,
        @Bounds(above = 0) Current chopperCurrent,
        @Bounds(above = 0) Power continuousPower,
        @Bounds(above = 0) Energy pulseEnergy,
        @Bounds(above = 0) HeatCapacity heatCapacity,
        @Bounds(above = 0) ThermalResistance thermalResistance,
        @Bounds(min = 273.15, max = 1773.15) Temperature resistorLimit,
        @Bounds(min = 1, max = 16) @Nullable Integer maxParallel,
        @Bounds(above = 0) @Nullable Length maxResistorCable)
        implements Item {}
