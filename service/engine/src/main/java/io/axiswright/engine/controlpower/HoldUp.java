package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * How long a terminal keeps enough voltage after mains is lost: the loads as with outputs on until the last stop on its
 * control supply is over, then as in standby.
 *
 * @param subject id of the gateway, the axis or the field device
 * @param terminal what it is
 * @param supply the control supply, by its name in this result
 * @param inBand how long it has the voltage it needs, without its brake; 0 if it never has
 * @param needed how long it has to: until its stop zone is at rest and its brake holds, and for as long as it has to keep its
 *     position; a gateway as long as anything behind it. Absent if nothing is asked
 */
public record HoldUp(
        String subject,
        TerminalKind terminal,
        String supply,
        Time inBand,
        @Nullable Time needed) {}
