package io.axiswright.engine.design;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Money;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A layout that is there already, on paper or on site, and is not to be changed without need.
 *
 * @param gateways its gateways
 * @param movePrice what it costs to connect one axis to a gateway in another place, over and above new cables: work, drawings,
 *     a stop of the machine. In the currency of the catalogue; if absent, an axis moves for any saving, but never for none
 */
public record KeptLayout(
        @AnyOrder @Count(min = 1, max = 1024) List<KeptGateway> gateways,
        @Nullable Money movePrice) {

    /** Keeps the gateways from being changed. */
    public KeptLayout {
        gateways = List.copyOf(gateways);
    }
}
