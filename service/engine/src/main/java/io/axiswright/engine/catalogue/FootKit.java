package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Feet that turn a face-mounted drive unit into a foot-mounted one.
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit (one metre for bulk cable); on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param frameSize frame size it fits
 * @param shaftHeight shaft centre above the foot plane
 */
public record FootKit(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs,
        String frameSize,
        @Bounds(above = 0) Length shaftHeight)
        implements Item {}
