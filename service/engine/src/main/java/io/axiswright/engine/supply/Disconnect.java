package io.axiswright.engine.supply;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Voltage;

/**
 * The device that disconnects the machine from its supply, at the supply terminals. The feeder's circuit-breaker can be it if
 * it isolates and locks.
 *
 * @param poles poles: every line, and under IEC practice neutral with them
 * @param voltage nominal voltage it isolates
 * @param ratedCurrent least rated current: the full-load currents by the code's factor, and not below the feeder's device
 * @param breakingCurrent least current it must break on load: all loads at their rated currents, as their converters limit
 *     what a stalled motor draws
 */
public record Disconnect(
        @Bounds(min = 1, max = 4) int poles, Voltage voltage, Current ratedCurrent, Current breakingCurrent) {

    static Disconnect of(SupplyRequest request, Feeder feeder) {
        boolean neutral = feeder.neutral() && request.codeBasis() == CodeBasis.IEC_60204_1;
        double factor = Rule.DISCONNECT_FACTOR.under(request.codeBasis()).value();
        var device = feeder.deviceRating();
        return new Disconnect(
                feeder.lines().size() + (neutral ? 1 : 0),
                feeder.voltage(),
                new Current(Math.max(factor * feeder.current().si(), device == null ? 0 : device.si())),
                feeder.current());
    }

    /** What it must be; whether the catalogue has one, the bill says. */
    Finding finding(CodeBasis basis) {
        return FindingCode.SUPPLY_DISCONNECT_NEEDED.at(
                "the machine",
                Feeder.POINTER,
                Rule.DISCONNECT_FACTOR.under(basis).clause(),
                ratedCurrent,
                breakingCurrent);
    }

    Derivation derivation(CodeBasis basis) {
        var rule = Rule.DISCONNECT_FACTOR.under(basis);
        return new Derivation(
                "supply disconnecting device",
                "I_n",
                "max(k sum(I), I_n,feeder)",
                Derivation.inputs("k", new Ratio(rule.value()), "sum(I)", breakingCurrent),
                rule.clause(),
                ratedCurrent);
    }
}
