package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Money;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Anything else: plugs, terminators, glands, licences, tools.
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit (one metre for bulk cable); on request if absent
 * @param needs what must, may or need not be bought beside it
 */
public record Accessory(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs) implements Item {}
