package io.axiswright.engine.bill;

import io.axiswright.engine.quantity.Bounds;
import java.util.List;

/**
 * The proof that the control network and the 24 V feed are joined up: every port of host, gateways and drive units is used or
 * counted spare, and every host, trunk, spur and control-supply cable on the bill has something at both ends.
 *
 * @param ports ports of host, gateways and drive units
 * @param portsUsed how many of them a cable ends at
 * @param portsSpare how many of them are counted spare
 * @param cables cables of those uses on the bill that the design asks for
 * @param cableEnds ends of the cables that were laid out; two gateways coupled directly count as two ends
 * @param cableEndsMatched how many of them end at a port or terminal that is there and takes them
 * @param gaps what does not close, in words; empty if all is joined up
 */
public record ConnectionCheck(
        @Bounds(min = 0) int ports,
        @Bounds(min = 0) int portsUsed,
        @Bounds(min = 0) int portsSpare,
        @Bounds(min = 0) int cables,
        @Bounds(min = 0) int cableEnds,
        @Bounds(min = 0) int cableEndsMatched,
        List<String> gaps) {

    /** Whether every port is used or spare and every cable has both its ends. */
    public boolean closes() {
        return gaps.isEmpty();
    }
}
