package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.CableExtension;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * The 24 V feed of one gateway.
 *
 * @param node the gateway fed
 * @param upstream the gateway it is fed from; fed from the control supply if absent
 * @param routeLength length of cable the way needs
 * @param item catalogue id of the cable; absent if none is long enough
 * @param extension what leads on from that cable where no single one reaches; absent if it does
 * @param resistance its loop resistance, of two joined together, hot, connectors included; absent with the cable
 * @param worstCurrent largest current through it; absent where the network has no working point
 * @param worstDrop largest voltage lost along it; absent likewise
 */
public record FeedLink(
        String node,
        @Nullable String upstream,
        Length routeLength,
        @Nullable String item,
        @Nullable CableExtension extension,
        @Nullable Resistance resistance,
        @Nullable Current worstCurrent,
        @Nullable Voltage worstDrop) {}
