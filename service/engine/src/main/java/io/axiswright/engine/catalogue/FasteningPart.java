package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Key, clamp set, adhesive, and what else joins a shaft to a hub.
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit (one metre for bulk cable); on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param kind the fastening it serves
 * @param shaftAbove it fits shafts thicker than this
 * @param shaftUpTo and up to this, inclusive
 * @param keyWidth width of the key, of KEY parts only: it has to be that of the keyway of the shaft; not examined if absent
 */
public record FasteningPart(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs,
        FasteningKind kind,
        @Bounds(min = 0) Length shaftAbove,
        @Bounds(above = 0) Length shaftUpTo,
        @Bounds(above = 0) @Nullable Length keyWidth)
        implements Item {

    /** A part of which no width of a key is stated. */
    public FasteningPart(
            String id,
            String description,
            @Nullable Money price,
            List<Need> needs,
            FasteningKind kind,
            Length shaftAbove,
            Length shaftUpTo) {
        this(id, description, price, needs, kind, shaftAbove, shaftUpTo, null);
    }
}
