package io.axiswright.engine.bill;

import io.axiswright.engine.quantity.Bounds;
import java.util.List;

/**
 * The proof that the machine is joined up: every port of host, gateways and drive units is used or counted spare, and every cable
 * on the bill that the design asks for has something at both ends, be it of the network, the 24 V feed, a DC bus, a braking
 * resistor, a stop demand or the mains.
 *
 * @param ports ports of host, gateways and drive units
 * @param portsUsed how many of them a cable ends at
 * @param portsSpare how many of them are counted spare
 * @param cables cables of fixed length on the bill that the design asks for
 * @param lengths lengths of power cable, each to a load or to the mains panel
 * @param cableEnds ends of the cables and lengths that were laid out; two gateways coupled directly count as two ends
 * @param cableEndsMatched how many of them end at a port or terminal that is there and takes them
 * @param cabling every cable and length with what is at its two ends: network, 24 V feed, buses, resistors and stops, mains
 * @param gaps what does not close, in words; empty if all is joined up
 */
public record ConnectionCheck(
        @Bounds(min = 0) int ports,
        @Bounds(min = 0) int portsUsed,
        @Bounds(min = 0) int portsSpare,
        @Bounds(min = 0) int cables,
        @Bounds(min = 0) int lengths,
        @Bounds(min = 0) int cableEnds,
        @Bounds(min = 0) int cableEndsMatched,
        List<CableLink> cabling,
        List<String> gaps) {

    /** Whether every port is used or spare and every cable has both its ends. */
    public boolean closes() {
        return gaps.isEmpty();
    }
}
