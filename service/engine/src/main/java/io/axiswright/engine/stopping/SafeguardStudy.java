package io.axiswright.engine.stopping;

import io.axiswright.engine.design.BeamGrid;
import io.axiswright.engine.design.InterlockedGuard;
import io.axiswright.engine.design.LightCurtain;
import io.axiswright.engine.design.ParallelField;
import io.axiswright.engine.design.PressureMat;
import io.axiswright.engine.design.Safeguard;
import io.axiswright.engine.design.SafeguardStandard;
import io.axiswright.engine.design.TwoHandControl;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Speed;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.standard.SeparationRule;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * The distance of one safeguard by its edition of ISO 13855.
 *
 * @param safeguard the safeguard
 * @param rule the rule for it
 * @param capability its detection capability, m; 0 where it has none
 * @param height height of its detection zone, m; 0 where it has none
 * @param reach how far one reaches before being noticed, m
 */
record SafeguardStudy(Safeguard safeguard, SeparationRule rule, double capability, double height, double reach) {

    private record Detecting(
            String kind,
            double capability,
            double height,
            @Nullable Length reach) {}

    static SafeguardStudy of(Safeguard safeguard) {
        Detecting what = switch (safeguard.detection()) {
            case LightCurtain c ->
                new Detecting("LIGHT_CURTAIN", c.detectionCapability().si(), 0, safeguard.reachingDistance());
            case BeamGrid _ -> new Detecting("BEAM_GRID", 0, 0, safeguard.reachingDistance());
            case ParallelField f ->
                new Detecting(
                        "PARALLEL_FIELD",
                        f.detectionCapability().si(),
                        f.height().si(),
                        safeguard.reachingDistance());
            case PressureMat m ->
                new Detecting(
                        "PRESSURE_MAT",
                        0,
                        m.stepHeight() == null ? 0 : m.stepHeight().si(),
                        safeguard.reachingDistance());
            case TwoHandControl c ->
                new Detecting(
                        c.shrouded() ? "TWO_HAND_CONTROL_SHROUDED" : "TWO_HAND_CONTROL",
                        0,
                        0,
                        safeguard.reachingDistance());
            case InterlockedGuard g ->
                new Detecting(
                        "INTERLOCKED_GUARD",
                        0,
                        0,
                        safeguard.reachingDistance() == null ? g.openingReach() : safeguard.reachingDistance());
        };
        SeparationRule rule = SeparationRule.of(safeguard.standard(), what.kind(), what.capability());
        double reach = rule.reach(optional(what.reach()), what.capability(), what.height())
                + optional(safeguard.supplement()).orElse(0);
        return new SafeguardStudy(safeguard, rule, what.capability(), what.height(), reach);
    }

    /** The distance; where an axis of the zone never rests there is none. */
    SafeguardDistance distance(@Nullable Time stoppingTime) {
        if (stoppingTime == null) {
            return result(null, slow(), null);
        }
        double time = safeguard.responseTime().si() + stoppingTime.si();
        double near = near() * time + reach;
        if (Double.isNaN(near)) {
            return result(time, slow(), Math.max(rule.leastDistance(), slow() * time + reach));
        }
        return near <= rule.nearLimit()
                ? result(time, near(), Math.max(rule.leastDistance(), near))
                : result(time, slow(), Math.max(rule.nearLimit(), slow() * time + reach));
    }

    /** The least height of its detection zone, m; NaN where there is no rule. */
    double leastHeight() {
        OptionalDouble rising = rule.heightPerCapability();
        return rising.isPresent() ? rising.getAsDouble() * (capability - rule.capabilityFree()) : Double.NaN;
    }

    private double near() {
        return safeguard.approachSpeed() == null ? rule.nearSpeed().orElse(Double.NaN) : Double.NaN;
    }

    /** The approach speed stated, or that of the rule; the check of the design has seen to it that there is one. */
    private double slow() {
        return optional(safeguard.approachSpeed()).orElseGet(() -> rule.speed().orElse(0));
    }

    private SafeguardDistance result(@Nullable Double time, double speed, @Nullable Double least) {
        return new SafeguardDistance(
                safeguard.id(),
                time == null ? null : new Time(time),
                new Speed(speed),
                new Length(reach),
                least == null ? null : new Length(least),
                formula(speed, least),
                rule.source().clause(),
                safeguard.distance());
    }

    private String formula(double speed, @Nullable Double least) {
        String sum = safeguard.standard() == SafeguardStandard.ISO_13855_2010 ? "K·T + C" : "K·T + D_DS + Z";
        double floor = speed < rule.nearSpeed().orElse(0) && safeguard.approachSpeed() == null
                ? rule.nearLimit()
                : rule.leastDistance();
        return least != null && floor > 0 ? "S = max(S_least, " + sum + ")" : "S = " + sum;
    }

    private static OptionalDouble optional(@Nullable Quantity quantity) {
        return quantity == null ? OptionalDouble.empty() : OptionalDouble.of(quantity.si());
    }
}
