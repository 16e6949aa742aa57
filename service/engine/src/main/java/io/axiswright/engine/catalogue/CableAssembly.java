package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Voltage;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Cable of fixed length with its ends on.
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit (one metre for bulk cable); on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param use what it joins
 * @param length its length
 * @param powerConductor size of its 24 V conductors; absent if it carries none
 * @param connectorResistance contact resistance of its connector pairs together, there and back; none if absent
 * @param outerDiameter outer diameter
 * @param ratedVoltage highest voltage it is made for; not examined if absent
 * @param ratedCurrent highest current it carries for ever; not examined if absent
 * @param ends its two ends; whether they pass glands is not examined if absent
 * @param coupler id of the item that joins it to another of its use that names the same one, where a way is longer than any cable; it may
 *     not be joined if absent
 * @param joinedLength longest that it and another may be together: what the interface on it allows over two cables and a coupler. Of host,
 *     trunk and spur cables it must be stated with the coupler; no limit if absent
 */
public record CableAssembly(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs,
        CableUse use,
        @Bounds(above = 0, max = 1000) Length length,
        @Nullable ConductorSize powerConductor,
        @Bounds(min = 0) @Nullable Resistance connectorResistance,
        @Bounds(above = 0) Length outerDiameter,
        @Bounds(above = 0) @Nullable Voltage ratedVoltage,
        @Bounds(above = 0) @Nullable Current ratedCurrent,
        @Count(min = 2, max = 2) @Nullable List<CableEnd> ends,
        @Nullable String coupler,
        @Bounds(above = 0, max = 1000) @Nullable Length joinedLength)
        implements Item, LaidCable {

    /** A cable that may not be joined to another. */
    public CableAssembly(
            String id,
            String description,
            @Nullable Money price,
            List<Need> needs,
            CableUse use,
            Length length,
            @Nullable ConductorSize powerConductor,
            @Nullable Resistance connectorResistance,
            Length outerDiameter,
            @Nullable Voltage ratedVoltage,
            @Nullable Current ratedCurrent,
            @Nullable List<CableEnd> ends) {
        this(
                id,
                description,
                price,
                needs,
                use,
                length,
                powerConductor,
                connectorResistance,
                outerDiameter,
                ratedVoltage,
                ratedCurrent,
                ends,
                null,
                null);
    }

    /** A cable of which neither ratings nor ends are stated. */
    public CableAssembly(
            String id,
            String description,
            @Nullable Money price,
            List<Need> needs,
            CableUse use,
            Length length,
            @Nullable ConductorSize powerConductor,
            @Nullable Resistance connectorResistance,
            Length outerDiameter) {
        this(
                id,
                description,
                price,
                needs,
                use,
                length,
                powerConductor,
                connectorResistance,
                outerDiameter,
                null,
                null,
                null);
    }

    @Override
    public List<CableAssembly> pieces() {
        return List.of(this);
    }

    @Override
    public List<Item> items() {
        return List.of(this);
    }

    @Override
    public BigDecimal amount() {
        return price == null ? BigDecimal.ZERO : price.amount();
    }

    @Override
    public int onRequest() {
        return price == null ? 1 : 0;
    }

    @Override
    public @Nullable CableExtension extension() {
        return null;
    }

    /** Its ends; empty where they are not stated. */
    public List<CableEnd> endList() {
        return ends == null ? List.of() : ends;
    }
}
